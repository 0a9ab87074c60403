package footing.io.follow;

import footing.io.form.At;
import footing.io.form.FileText;
import footing.io.form.Found;
import footing.io.form.Node;
import footing.io.form.Problems;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** The records a case file names. */
public final class LinkedRecords {
    private LinkedRecords() {}

    /**
     * The records' file; empty if the case names none beside or below itself.
     *
     * @throws IOException if the case can't be read
     */
    public static Optional<Path> of(Path caseFile) throws IOException {
        Problems problems = new Problems("");
        String text = FileText.read(caseFile, problems);
        Node root = text == null ? null : FileText.tree(text, problems);
        String name = root == null ? null : new Found(root, At.TOP).text("records");
        Path folder = caseFile.toAbsolutePath().normalize().getParent();
        if (name == null || folder == null) {
            return Optional.empty();
        }
        try {
            Path file = folder.resolve(name).normalize();
            return file.startsWith(folder) ? Optional.of(file) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
