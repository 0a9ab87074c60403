package footing.cli;

import footing.core.fleet.Case;
import footing.io.paper.Paper;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Paper to print on, and whether a file may be written over. */
final class PaperFile {
    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "letter or a4; without it by the units of the case, us or si.")
    private @Nullable String paper;

    @Option(names = "--force", description = "Write over files of these names.")
    private boolean force;

    boolean force() {
        return force;
    }

    Paper size(Case stated) throws BadInput {
        return size(stated.heading().si());
    }

    Paper size(boolean metric) throws BadInput {
        if (paper == null) {
            return Paper.usual(metric);
        }
        return Paper.named(paper).orElseThrow(() -> new BadInput("--paper " + paper + ": letter or a4 would fit"));
    }

    static Path path(Terminal terminal, String name) throws BadInput {
        try {
            return terminal.folder().resolve(name);
        } catch (InvalidPathException e) {
            throw new BadInput("'" + name + "' is not the name of a file");
        }
    }

    /** The file to write, looked at before anything is worked out, so that nobody waits in vain. */
    Path free(Terminal terminal, String name) throws BadInput {
        Path file = path(terminal, name);
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file)) {
            throw new BadInput(name + " is a folder; name a file in it");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BadInput("there is no folder " + folder + "; make it first, or name a file elsewhere");
        }
        if (Files.exists(file) && !force) {
            throw new BadInput(name + " is there already; name another file, or write over it with --force");
        }
        return file;
    }
}
