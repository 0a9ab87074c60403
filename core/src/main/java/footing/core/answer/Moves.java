package footing.core.answer;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Chance;
import footing.core.fleet.InForce;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import java.util.EnumSet;
import java.util.Set;

/**
 * How far an input is moved to see what it does: what nobody knows to its stated low and high, everything else to 80 %
 * and 120 % of itself. Counts, shares of fixes and the hour meter are not moved.
 */
record Moves(Spread low, Spread high) {
    private static final double DOWN = 0.8;
    private static final double UP = 1.2;
    private static final Set<Key> NOT_MOVED = EnumSet.of(
            Key.FIX_SHARE,
            Key.COUNT_DRIVE,
            Key.COUNT_CASTER,
            Key.PEOPLE,
            Key.LOAN_MONTHS,
            Key.HOURS_NOW,
            Key.FLATS_AT_CASTER);

    static boolean apply(Key key) {
        return !NOT_MOVED.contains(key);
    }

    static Moves of(InForce input, Numbers machine) {
        Key key = input.input().key();
        if (input.value() instanceof Metalog m) {
            return key.chance() == Chance.UNKNOWN || m.bounds() == Bounds.SHARE
                    ? new Moves(Spread.of(m.low()), Spread.of(m.high()))
                    : new Moves(m.times(DOWN), m.times(UP));
        }
        double value = input.value().likely();
        double least = key == Key.KEEP_UNTIL
                ? (machine.get(Key.HOURS_NOW).map(Spread::likely).orElse(0.0) + value) / 2
                : Double.NEGATIVE_INFINITY;
        double down = Math.max(key.range().clamp(value * DOWN), least);
        double up = key.range().clamp(value * UP);
        return new Moves(Spread.of(Math.min(down, up)), Spread.of(Math.max(down, up)));
    }
}
