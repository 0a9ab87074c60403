package footing.io.casefile;

import footing.core.fleet.Case;
import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.Found;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Reads case files: YAML or JSON of the format {@value #FORMAT}, UTF-8, up to {@value FileText#MOST_BYTES} bytes.
 * Whatever a file holds, reading it ends in a {@link Reading}.
 */
public final class CaseFile {
    public static final String FORMAT = "footing-case/1";

    /** What is warned of where a case names records and takes no value from them. */
    public static final String NOTHING_LEARNED = "no value is learned from these records, so they change nothing";

    private CaseFile() {}

    /**
     * Reads a file, and the catalog beside it if the case names one.
     *
     * @throws IOException if the case file can't be opened or read
     */
    public static Reading read(Path file) throws IOException {
        Path name = file.getFileName();
        Problems problems = new Problems((name == null ? file : name).toString());
        String text = FileText.read(file, problems);
        return text == null
                ? new Reading.Refused(problems.errors(), problems.warnings())
                : read(text, problems, file.toAbsolutePath().getParent());
    }

    /** Reads a text. It may name the starter catalog, but no file: there is none beside it. */
    public static Reading read(String text, String fileName) {
        return read(text, fileName, null);
    }

    /**
     * Reads a text that stands for a file in a folder.
     *
     * @param folder where the files lie that it names; null if there are none
     */
    public static Reading read(String text, String fileName, @Nullable Path folder) {
        return read(text, new Problems(fileName), folder);
    }

    private static Reading read(String text, Problems problems, @Nullable Path folder) {
        Node root = FileText.tree(text, problems);
        if (root != null) {
            CaseForm.CASE.check(root, At.TOP, problems);
        }
        if (root == null || problems.isTooLarge()) {
            return new Reading.Refused(problems.errors(), problems.warnings());
        }
        CaseReader reader = new CaseReader(new Found(root, At.TOP), folder, problems);
        Case stated = reader.read();
        return problems.hasErrors()
                ? new Reading.Refused(problems.errors(), problems.warnings())
                : new Reading.Accepted(stated, problems.warnings(), reader.trials());
    }
}
