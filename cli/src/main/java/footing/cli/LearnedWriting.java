package footing.cli;

import footing.core.fleet.Case;
import footing.core.records.Learned;
import footing.io.edit.LearnedEdit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Puts what records teach into a case file, and the link to them. */
final class LearnedWriting {
    private final Path file;
    private final Case stated;
    private final Path records;
    private final Learned learned;

    LearnedWriting(Path file, Case stated, Path records, Learned learned) {
        this.file = file;
        this.stated = stated;
        this.records = records;
        this.learned = learned;
    }

    /** Writes, and says what was replaced by what. */
    List<String> write() throws BadInput, IOException {
        LearnedEdit.Result result = LearnedEdit.write(Files.readString(file), stated, learned, link())
                .orElseThrow(() -> new BadInput("can't link the records to " + file));
        Files.writeString(file, result.text());
        return result.told();
    }

    private String link() throws BadInput {
        Path from = file.toAbsolutePath().normalize().getParent();
        Path to = records.toAbsolutePath().normalize();
        if (from == null || !to.startsWith(from)) {
            throw new BadInput("a case reads records beside or below itself: put " + records + " beside " + file);
        }
        return from.relativize(to).toString().replace('\\', '/');
    }
}
