package footing.io.words;

import footing.core.answer.MachineAnswer;
import footing.core.future.FixOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One flat told by the clock: how long, what it pushed out of its place, what that cost. */
public final class ClockedFlat {
    private static final int MINUTES = 60;

    private ClockedFlat() {}

    /** The fix that costs a machine most over its life; empty if it never goes flat. */
    public static Optional<FixOutcome> dearest(MachineAnswer machine) {
        MachineAnswer.CostPerFlat cost = machine.costPerFlat();
        return cost == null
                ? Optional.empty()
                : cost.fixes().stream().max(Comparator.comparingDouble(f -> f.flats() * total(f)));
    }

    /** How many of the flats are mended so: 'Tire ruined, 13 in 100 flats'. */
    private static String named(List<FixOutcome> all, FixOutcome fix) {
        double flats = all.stream().mapToDouble(FixOutcome::flats).sum();
        return Lists.capital(fix.name())
                + (flats > 0 ? ", " + Figures.money(100 * fix.flats() / flats) + " in 100 flats" : "");
    }

    /**
     * 'To the yard, 26 in 100 flats, 115 min: 46 crew-minutes pushed back. It costs 84 in wages to make them up, 46 in
     * work lost, 31 in parts.'
     */
    public static String told(List<FixOutcome> all, FixOutcome fix) {
        List<String> money = new ArrayList<>();
        if (Figures.shows(fix.paid())) {
            money.add(Figures.money(fix.paid()) + " in wages to make them up");
        }
        if (Figures.shows(fix.lost())) {
            money.add(Figures.money(fix.lost()) + " in work lost");
        }
        if (Figures.shows(fix.cash())) {
            money.add(Figures.money(fix.cash()) + " in parts");
        }
        String minutes = Figures.money(MINUTES * fix.displaced()) + " crew-minutes pushed back";
        return named(all, fix) + ", " + Figures.time(fix.delay()) + ": " + minutes + "."
                + (money.isEmpty() ? "" : " It costs " + Lists.and(money) + ".");
    }

    /** Why an hour of the machine isn't an hour of the crew; empty where it is. */
    public static Optional<String> output(Advice advice) {
        double share = advice.machine().machine().crewOutput();
        return share < 1
                ? Optional.of(advice.id() + " does " + Figures.percent(share)
                        + " of the crew's mowing: only that stops with it.")
                : Optional.empty();
    }

    /** 'The average flat costs 128: 50 for parts, 51 paid to make up time, 28 of work lost.' */
    public static String average(MachineAnswer machine) {
        MachineAnswer.CostPerFlat cost = machine.costPerFlat();
        return cost == null
                ? "On what it has now it never goes flat."
                : "The average flat costs " + Figures.money(cost.total()) + ": " + Figures.money(cost.cash())
                        + " for parts, " + Figures.money(cost.paid()) + " paid to make up time, "
                        + Figures.money(cost.lost()) + " of work lost.";
    }

    /** What it costs in all. */
    public static double total(FixOutcome fix) {
        return fix.cash() + fix.paid() + fix.lost();
    }
}
