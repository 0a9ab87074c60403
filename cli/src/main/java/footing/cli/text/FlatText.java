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
            output(a, lines);
            lines.item(ClockedFlat.told(fix) + " " + Figures.money(ClockedFlat.total(fix)) + " in all, on average.");
        });
    }

    /** Why an hour of the machine isn't an hour of the crew. */
    private static void output(Advice a, Lines lines) {
        double share = a.machine().machine().crewOutput();
        if (share < 1) {
            lines.item(a.id() + " does " + Figures.percent(share) + " of the crew's mowing: only that stops with it.");
        }
    }

    /** Every fix. */
    static void all(Advice a, Lines lines) {
        MachineAnswer.CostPerFlat cost = a.machine().costPerFlat();
        if (cost == null) {
            return;
        }
        lines.head("A flat on " + a.id() + " as it is now, told by the clock (averages)");
        output(a, lines);
        cost.fixes().stream().filter(f -> f.flats() > 0).forEach(f -> lines.item(ClockedFlat.told(f)));
        lines.item(ClockedFlat.average(cost));
    }
}
