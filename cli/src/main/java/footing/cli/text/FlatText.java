package footing.cli.text;

import footing.core.answer.MachineAnswer;
import footing.core.future.FixOutcome;
import footing.io.words.Advice;
import footing.io.words.ClockedFlat;
import footing.io.words.Figures;
import java.util.List;

/** Flats told by the clock. */
final class FlatText {
    private FlatText() {}

    /** The fix that costs a machine most. */
    static void dearest(Advice a, Lines lines) {
        ClockedFlat.dearest(a.machine()).ifPresent(fix -> {
            lines.head("One flat on " + a.id() + " as it is now, told by the clock");
            ClockedFlat.output(a).ifPresent(lines::item);
            lines.item(ClockedFlat.told(fixes(a.machine()), fix) + " " + Figures.money(ClockedFlat.total(fix))
                    + " in all, on average. " + ClockedFlat.average(a.machine()));
        });
    }

    /** Every fix. */
    static void all(Advice a, Lines lines) {
        MachineAnswer.CostPerFlat cost = a.machine().costPerFlat();
        if (cost == null) {
            return;
        }
        lines.head("A flat on " + a.id() + " as it is now, told by the clock (averages)");
        ClockedFlat.output(a).ifPresent(lines::item);
        cost.fixes().stream().filter(f -> f.flats() > 0).forEach(f -> lines.item(ClockedFlat.told(cost.fixes(), f)));
        lines.item(ClockedFlat.average(a.machine()));
    }

    private static List<FixOutcome> fixes(MachineAnswer machine) {
        MachineAnswer.CostPerFlat cost = machine.costPerFlat();
        return cost == null ? List.of() : cost.fixes();
    }
}
