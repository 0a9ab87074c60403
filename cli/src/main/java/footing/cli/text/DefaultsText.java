package footing.cli.text;

import footing.core.fleet.Case;
import footing.io.casefile.Defaults;
import footing.io.words.Origins;

/** The numbers of a case that nobody stated, each with where it comes from. */
public final class DefaultsText {
    private DefaultsText() {}

    public static String of(Case stated, Letters letters) {
        Lines lines = new Lines(letters);
        lines.paragraph("In force because nobody stated them; write your own at the place named:")
                .blank();
        for (Defaults.Line line : Defaults.list(stated)) {
            lines.hanging("", line.path() + ": " + line.value());
            lines.hanging("    ", line.why());
        }
        lines.blank()
                .paragraph(Origins.told(Origins.inForce(
                        stated, stated.machines().stream().map(Case.Machine::id).toList())));
        return lines.toString();
    }
}
