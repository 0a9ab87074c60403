package footing.io.trial;

import footing.core.trial.TrialKind;
import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.Found;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads a trial: YAML or JSON of the format {@value TrialForm#FORMAT}, or a sheet with one row a run (a file whose name
 * ends in csv, tsv or txt). Whatever a file holds, reading it ends in a {@link TrialReading}.
 */
public final class TrialFile {
    public static final String FORMAT = TrialForm.FORMAT;

    private TrialFile() {}

    /** The name of a kind as files write it. */
    public static String word(TrialKind kind) {
        return TrialForm.word(kind);
    }

    /**
     * Reads a file and the logs beside it that it names.
     *
     * @throws IOException if the trial file can't be opened or read
     */
    public static TrialReading read(Path file) throws IOException {
        Path last = file.getFileName();
        String name = (last == null ? file : last).toString();
        Problems problems = new Problems(name);
        String text = FileText.read(file, problems);
        return text == null
                ? new TrialReading.Refused(problems.errors())
                : read(text, name, problems, file.toAbsolutePath().getParent());
    }

    /** Reads a text; it may name no logs, since there is nothing beside it. */
    public static TrialReading read(String text, String name) {
        return read(text, name, new Problems(name), null);
    }

    private static TrialReading read(String text, String name, Problems problems, @Nullable Path folder) {
        Node root = isSheet(name) ? new SheetRows(problems).read(text, title(name)) : FileText.tree(text, problems);
        if (root == null) {
            return new TrialReading.Refused(problems.errors());
        }
        new TrialForm().check(root, At.TOP, problems);
        if (problems.isTooLarge()) {
            return new TrialReading.Refused(problems.errors());
        }
        StatedTrial stated = new TrialReader(new Found(root, At.TOP), folder, problems).read();
        return stated == null || problems.hasErrors()
                ? new TrialReading.Refused(problems.errors())
                : new TrialReading.Accepted(stated, problems.warnings());
    }

    private static boolean isSheet(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".csv") || lower.endsWith(".tsv") || lower.endsWith(".txt");
    }

    private static String title(String name) {
        int dot = name.lastIndexOf('.');
        String words =
                name.substring(0, dot).replace('-', ' ').replace('_', ' ').strip();
        return words.isEmpty() ? "A trial sheet" : "Trial sheet: " + words;
    }
}
