package footing.io.interview;

import footing.io.casefile.CaseFile;
import java.time.LocalDate;

/** Writes the case file. */
final class CaseText {
    private final Given given;
    private final LocalDate today;
    private final int guesses;
    private final CaseLines lines = new CaseLines();

    CaseText(Given given, LocalDate today, int guesses) {
        this.given = given;
        this.today = today;
        this.guesses = guesses;
    }

    String write() {
        Packages packages = Packages.of(given);
        writeHeading();
        lines.blank();
        new CrewText(given, lines).write();
        lines.blank();
        new WheelsText(given, lines, packages).write();
        lines.blank();
        new MachinesText(given, lines, packages).write();
        return lines.toString();
    }

    private void writeHeading() {
        lines.comment(0, "A case for Footing, written from its eight questions. Change it with any text editor.");
        lines.comment(
                0,
                "Each value says whose it is: 'yours' was answered, 'guess' is what nobody could say. Better numbers go"
                        + " right over the guesses. A key with # before it is switched off, since Footing takes that"
                        + " value anyway; take the # away to state your own.");
        lines.blank();
        lines.line(0, "format: " + CaseFile.FORMAT);
        lines.line(0, "title: " + CaseLines.quoted(given.text("title")), Remark.of(given, "title"));
        if (guesses > 0) {
            lines.line(0, "note: From the eight questions, with " + guesses + " of the answers a guess.");
        }
        lines.line(0, "asOf: " + today, "the day all prices and hours count from");
        String currency = "currency: " + given.text("currency");
        if (given.isYours("currency")) {
            String guessed = given.is("currency", "USD") ? "" : "; guessed amounts are US dollars taken as they stand";
            lines.line(0, currency, Remark.YOURS + guessed);
        } else {
            lines.off(0, currency, Remark.of(given, "currency"));
        }
        String days = "first cut: " + Remark.of(given, "firstCut") + "; last cut: " + Remark.of(given, "lastCut");
        String both = given.isYours("firstCut") && given.isYours("lastCut") ? Remark.YOURS : days;
        lines.line(0, "season: {start: " + given.text("firstCut") + ", end: " + given.text("lastCut") + "}", both);
    }
}
