package footing.cli.text;

import footing.core.fleet.Case;
import footing.core.ground.MachineGround;
import footing.io.trial.TrialQuote;
import footing.io.words.GroundTables;
import footing.io.words.Lacking;
import footing.io.words.SlopeCaution;
import java.util.List;

/** A machine on the ground under each of its packages, side by side, as a page for the terminal. */
public final class GroundText {
    private GroundText() {}

    public static String of(Case stated, MachineGround ground, List<TrialQuote> trials, Letters letters) {
        Lines lines = new Lines(letters);
        Case.Machine machine = stated.machine(ground.machine().id());
        lines.paragraph(machine.id() + (machine.kind().isEmpty() ? "" : " (" + machine.kind() + ")")
                + " on the ground; it carries " + machine.carries().id() + ".");
        Lacking lacking = new Lacking();
        new GroundTables(ground, stated.heading().si(), lacking).all().forEach(b -> print(b, lines));
        if (!lacking.told().isEmpty()) {
            lines.head("Not told, because it is not measured or not known to hold");
            lacking.told().forEach(lines::item);
        }
        lines.blank().paragraph(SlopeCaution.of(ground));
        return lines + (trials.isEmpty() ? "" : TrialQuoteText.of(TrialQuoteText.BEFORE_MODELS, trials, letters));
    }

    private static void print(GroundTables.Block block, Lines lines) {
        lines.head(block.title());
        if (!block.rows().isEmpty()) {
            Table table = new Table(block.heads().toArray(String[]::new));
            block.rows().forEach(r -> table.row(r.name(), r.cells()));
            table.print(lines);
        }
        block.notes().forEach(lines::item);
    }
}
