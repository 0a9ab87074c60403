package footing.cli.text;

import footing.core.fitting.Finding;
import footing.core.fitting.Fit;
import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.io.words.FitWords;
import footing.io.words.Lacking;
import footing.io.words.SetUpWords;
import footing.io.words.SlopeCaution;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a package fits, what it changes and what restores the deck, as a page for the terminal. */
public final class FitText {
    private static final int LABEL = 24;

    private final Case stated;
    private final Fit fit;
    private final SetUp setUp;
    private final List<Measured.Judgment> measured;
    private final FitWords words;
    private final Lines lines;

    private FitText(Case stated, Fit fit, SetUp setUp, List<Measured.Judgment> measured, Letters letters) {
        this.stated = stated;
        this.fit = fit;
        this.setUp = setUp;
        this.measured = measured;
        words = new FitWords(stated.heading().si());
        lines = new Lines(letters);
    }

    /** {@code measured} is empty if nothing was measured afterwards. */
    public static String of(Case stated, Fit fit, SetUp setUp, List<Measured.Judgment> measured, Letters letters) {
        return new FitText(stated, fit, setUp, measured, letters).page();
    }

    private String page() {
        Case.Machine machine = stated.machine(setUp.machine());
        lines.paragraph(fit.wheels() + " on " + machine.id()
                + (machine.kind().isEmpty() ? "" : " (" + machine.kind() + ")") + ": "
                + FitWords.verdict(fit.verdict()) + ".");
        tests("Drive wheels: " + setUp.change().after().drive().id(), Position.DRIVE);
        tests("Casters: " + setUp.change().after().caster().id(), Position.CASTER);
        tests("The machine on them", null);
        open();
        change();
        judged();
        cautions();
        return lines.toString();
    }

    private void tests(String head, @Nullable Position position) {
        List<Finding> some =
                fit.findings().stream().filter(f -> f.position() == position).toList();
        if (some.isEmpty()) {
            return;
        }
        lines.head(head);
        Table table = new Table("compared", "to spare", "");
        some.forEach(f -> table.row(
                FitWords.aspect(f.aspect()),
                List.of(words.numbers(f), words.margin(f), FitWords.verdict(f.verdict()))));
        table.print(lines);
    }

    private void open() {
        if (fit.open().isEmpty()) {
            return;
        }
        lines.head("Left to find out");
        fit.open().forEach(o -> lines.item(FitWords.act(o)));
    }

    private void change() {
        Lacking lacking = new Lacking();
        SetUpWords words = new SetUpWords(stated.heading().si(), lacking);
        List<SetUpWords.Line> changes = words.changes(setUp);
        List<SetUpWords.Line> turns = words.turns(setUp);
        if (!changes.isEmpty()) {
            lines.head("What changes on the machine");
            changes.forEach(this::line);
        }
        if (!turns.isEmpty()) {
            lines.head(setUp.target() == null ? "To bring the deck back to where it was" : "To reach the target");
            turns.forEach(this::line);
        }
        if (!lacking.told().isEmpty()) {
            lines.head("Not told, because it is not measured or not known to hold");
            lacking.told().forEach(lines::item);
        }
    }

    private void judged() {
        if (measured.isEmpty()) {
            return;
        }
        lines.head("What was measured");
        SetUpWords words = new SetUpWords(stated.heading().si(), new Lacking());
        measured.forEach(j -> line(words.judged(j)));
    }

    private void line(SetUpWords.Line line) {
        lines.hanging(Lines.left("  " + line.label(), LABEL), line.words());
    }

    private void cautions() {
        lines.blank()
                .paragraph("Block and support the machine before lifting a wheel, and take the torque of the lug nuts"
                        + " from the operator's manual: it comes before anything said here. Tighten again after about"
                        + " 2 h and 10 h (common practice, no source). Tires are mounted and inflated by whoever is"
                        + " trained for it.");
        lines.paragraph(SlopeCaution.TEXT);
    }
}
