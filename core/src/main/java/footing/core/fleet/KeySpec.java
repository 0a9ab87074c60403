package footing.core.fleet;

import footing.core.chance.Spread;
import org.jspecify.annotations.Nullable;

/** How a key is declared, for {@link Key} alone. */
final class KeySpec {
    private static final String PRACTICE = "common practice, no source";

    final Place place;
    final String name;
    final Dimension dimension;
    final Range range;
    final String label;
    Chance chance = Chance.NONE;

    @Nullable
    Default fallback;

    Default.@Nullable Rule elsewhere;

    @Nullable
    Range ordinary;

    private KeySpec(Place place, String name, Dimension dimension, Range range, String label) {
        this.place = place;
        this.name = name;
        this.dimension = dimension;
        this.range = range;
        this.label = label;
    }

    static KeySpec share(Place place, String name, double most, String label) {
        return new KeySpec(place, name, Dimension.SHARE, Range.of(0, most), label);
    }

    static KeySpec rate(Place place, String name, double least, String label) {
        return new KeySpec(place, name, Dimension.SHARE, Range.of(least, 1), label);
    }

    static KeySpec money(Place place, String name, String label) {
        return new KeySpec(place, name, Dimension.MONEY, Range.of(0, 1e6), label);
    }

    static KeySpec count(Place place, String name, Range range, String label) {
        return new KeySpec(place, name, Dimension.COUNT, range, label);
    }

    static KeySpec time(Place place, String name, Range range, String label) {
        return new KeySpec(place, name, Dimension.TIME, range, label);
    }

    static KeySpec meter(String name, Range range, String label) {
        return new KeySpec(Place.MACHINE, name, Dimension.METER_HOURS, range, label);
    }

    static KeySpec positiveShare(Place place, String name, String label) {
        return new KeySpec(place, name, Dimension.SHARE, Range.above(0, 1), label);
    }

    static KeySpec life(String name, String label) {
        return new KeySpec(Place.ASSEMBLY, name, Dimension.METER_HOURS, Range.above(0, 1e6), label);
    }

    /** May be a three-point that is one draw for a whole future. */
    KeySpec unknown() {
        chance = Chance.UNKNOWN;
        return this;
    }

    /** May be a three-point that is a fresh draw each time. */
    KeySpec varies() {
        chance = Chance.VARIES;
        return this;
    }

    /** A habit of the trade that nobody measured. */
    KeySpec practice(double value) {
        return orElse(PRACTICE, beside -> Spread.of(value));
    }

    KeySpec practice(String rule, Default.Rule value) {
        return orElse(rule + " (" + PRACTICE + ")", value);
    }

    KeySpec orElse(String why, double value) {
        return orElse(why, beside -> Spread.of(value));
    }

    KeySpec orElse(String why, Default.Rule value) {
        fallback = new Default(value, why);
        return this;
    }

    /**
     * What it may well be where the default says there is none of it: a share of nothing is nothing, so a fifth more
     * or less would never show what the guess can do. A habit of the trade that nobody measured.
     */
    KeySpec elsewhere(Default.Rule value) {
        elsewhere = value;
        return this;
    }

    KeySpec elsewhere(double value) {
        return elsewhere(beside -> Spread.of(value));
    }

    /** What is seldom left in ordinary operation, so that a slip of the pen is noticed. Common practice, no source. */
    KeySpec ordinary(double least, double most) {
        ordinary = Range.of(least, most);
        return this;
    }
}
