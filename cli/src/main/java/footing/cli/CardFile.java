package footing.cli;

import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.io.card.FittingCard;
import footing.io.card.VisorCard;
import footing.io.paper.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Writes cards. What prints is loaded here, and by nobody who prints nothing. */
final class CardFile {
    private CardFile() {}

    /** Prints the whole card, then writes it at once. */
    static void write(Case stated, Case.WheelPackage wheels, SetUp setUp, Paper paper, Path to) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        FittingCard.write(stated, wheels, setUp, paper, pdf);
        Files.write(to, pdf.toByteArray());
    }

    /** The same of a visor card. */
    static void write(Optional<Case> stated, Paper paper, Path to) throws IOException {
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        VisorCard.write(stated, paper, pdf);
        Files.write(to, pdf.toByteArray());
    }
}
