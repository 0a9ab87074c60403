package footing.cli.text;

import footing.core.answer.MachineAnswer;
import footing.io.words.Advice;
import footing.io.words.ClockedFlat;
import footing.io.words.Figures;

/** Flats told by the clock. */
final class FlatText {
    private FlatText() {}

    /** The fix that costs a machine most. */
    static void dearest(Advice a, Lines lines) {
        ClockedFlat.dearest(a.machine()).ifPresent(fix -> {
            lines.head("One flat on " + a.id() + " as it is now, told by the clock");
            ClockedFlat.output(a).ifPresent(lines::item);
            lines.item(ClockedFlat.told(fix) + " " + Figures.money(ClockedFlat.total(fix)) + " in all, on average.");
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
        cost.fixes().stream().filter(f -> f.flats() > 0).forEach(f -> lines.item(ClockedFlat.told(f)));
        lines.item(ClockedFlat.average(a.machine()));
    }
}
