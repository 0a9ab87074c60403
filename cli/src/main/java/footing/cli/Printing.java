package footing.cli;

import footing.core.answer.Answer;
import footing.io.drawing.SvgDrawer;
import footing.io.proposal.Proposal;
import footing.io.proposal.Tables;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes proposals. What prints is loaded here, and by nobody who prints nothing. */
final class Printing {
    private final Terminal terminal;
    private final PrintWriter err;

    Printing(Terminal terminal, PrintWriter err) {
        this.terminal = terminal;
        this.err = err;
    }

    int mostWhole() {
        return Proposal.MOST_WHOLE;
    }

    /** Prints the whole document, then writes it at once; false if that was stopped. */
    boolean print(Proposal.Printed what, Path file) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        try (Progress progress = new Progress(err, terminal, System::nanoTime)) {
            if (!Proposal.write(what, new SvgDrawer(), progress, pdf)) {
                return false;
            }
        }
        Files.write(file, pdf.toByteArray());
        return true;
    }

    /** Writes every table into a folder; how many there are. */
    int tables(Answer answer, Path folder, boolean force) throws IOException, BadInput {
        Files.createDirectories(folder);
        if (!force) {
            for (String name : Tables.names(answer)) {
                if (Files.exists(folder.resolve(name))) {
                    throw new BadInput(folder.resolve(name)
                            + " is there already; name another folder, or write over it with" + " --force");
                }
            }
        }
        return Tables.write(answer, folder).size();
    }
}
