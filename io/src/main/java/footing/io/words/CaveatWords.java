package footing.io.words;

import footing.core.trial.Caveat;
import footing.core.trial.Condition;
import footing.core.trial.Side;
import footing.core.trial.Trial;

/** What a skeptic would hold against a trial, in words. */
public final class CaveatWords {
    private static final double PSI = 6894.757293168361;
    private static final double POUND = 0.45359237;
    private static final double INCH = 0.0254;
    private static final double MILE_PER_HOUR = 0.44704;
    private static final double KM_PER_HOUR = 3.6;

    private CaveatWords() {}

    public static String of(Caveat caveat, Trial trial, boolean metric) {
        String a = trial.a().name();
        String b = trial.b().name();
        if (caveat instanceof Caveat.Uneven c) {
            boolean less = c.b() < c.a();
            return Lists.capital(b) + " ran " + amount(c.condition(), Math.abs(c.a() - c.b()), metric)
                    + (less ? " less " : " more ") + name(c.condition()) + ": the two differ in that as well.";
        }
        if (caveat instanceof Caveat.OneSided c) {
            return Lists.capital(name(c.condition())) + " went with the side: mostly " + c.a() + " with " + a + ", "
                    + c.b() + " with " + b + ".";
        }
        if (caveat instanceof Caveat.SameOrder c) {
            return Lists.capital(trial.of(c.first()).name())
                    + " went first in every pair: what changes with time counts for the second.";
        }
        if (caveat instanceof Caveat.Apart c) {
            return Lists.capital(Figures.counted(c.pairs(), "pair")) + (c.pairs() == 1 ? " was" : " were")
                    + " made with other runs in between; the ground may have changed.";
        }
        if (caveat instanceof Caveat.Unpaired c) {
            return Lists.capital(Figures.counted(c.runs(), "run")) + (c.runs() == 1 ? " has" : " have")
                    + " no partner and " + (c.runs() == 1 ? "counts" : "count") + " for nothing.";
        }
        if (caveat instanceof Caveat.UsedLane c) {
            return "Lane " + c.lane() + " was driven " + Figures.word(c.runs())
                    + " times; every run should have a fresh lane.";
        }
        if (caveat instanceof Caveat.NotNoted c) {
            Side side = c.side();
            String whose = side == null
                    ? " of both sides is not noted"
                    : " of " + trial.of(side).name() + " is not noted";
            return Lists.capital(name(c.condition())) + whose + "; opposed pulls are unfair unless it is equal.";
        }
        return "The surfaces disagree about the difference: look at each by itself.";
    }

    private static String amount(Condition condition, double si, boolean metric) {
        return switch (condition) {
            case PRESSURE -> Shown.digits(metric ? si / 1000 : si / PSI) + (metric ? " kPa" : " psi");
            case MOISTURE -> Shown.digits(100 * si) + " percent points";
            case SPEED -> Shown.digits(metric ? si * KM_PER_HOUR : si / MILE_PER_HOUR) + (metric ? " km/h" : " mph");
            case MASS -> Shown.digits(metric ? si : si / POUND) + (metric ? " kg" : " lb");
            case TREAD -> Shown.digits(metric ? 1000 * si : si / INCH) + (metric ? " mm" : " in");
            case OPERATOR, MACHINE, DIRECTION, DAY -> Shown.digits(si);
        };
    }

    private static String name(Condition condition) {
        return switch (condition) {
            case PRESSURE -> "tire pressure";
            case MOISTURE -> "soil moisture";
            case SPEED -> "speed";
            case MASS -> "mass";
            case TREAD -> "tread depth";
            case OPERATOR -> "operator";
            case MACHINE -> "machine";
            case DIRECTION -> "direction";
            case DAY -> "day";
        };
    }
}
