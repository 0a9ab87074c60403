package footing.io.casefile;

import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.form.Written;

/**
 * What a crew is paid against what it is billed. Whatever the currency, a shop bills its crew's hour at more than it
 * pays for it, and at less than {@value #MOST} times as much: common practice, no source.
 */
final class CrewPay {
    private static final double MOST = 8;

    private CrewPay() {}

    /** Asks about a wage and a billing of which one must be a slip of the pen; nothing billed is a case of its own. */
    static void check(Found crew, Numbers numbers, Problems problems) {
        double paid = likely(numbers, Key.WAGE) * likely(numbers, Key.PEOPLE);
        double billed = likely(numbers, Key.BILLING);
        if (!(paid > 0) || !(billed > 0)) {
            return;
        }
        String both = Written.number(paid) + " an hour is paid to the crew and " + Written.number(billed) + " billed";
        if (paid > billed) {
            problems.warn(
                    crew.get("wage").at(),
                    Written.number(likely(numbers, Key.WAGE)),
                    "unusual: " + both,
                    "the wage is for one person, the billing for the whole crew; if both are right, leave them");
        } else if (billed > MOST * paid) {
            problems.warn(
                    crew.get("billing").at(),
                    Written.number(billed),
                    "unusual: " + both,
                    "the billing is for an hour of the whole crew; if both are right, leave them");
        }
    }

    private static double likely(Numbers numbers, Key key) {
        return numbers.get(key).map(s -> s.likely()).orElse(Double.NaN);
    }
}
