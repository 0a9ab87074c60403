package footing.io.trial;

import footing.core.trial.Goal;
import footing.core.trial.TrialKind;
import footing.io.form.Quantity;
import footing.io.words.Shown;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a run gives. The first of a kind is the one judged unless the file says otherwise. */
public enum Measure {
    STEADY(TrialKind.PULL, "steady", "steady pull", Goal.MORE, Quantity.FORCE, "lbf", "N"),
    PEAK(TrialKind.PULL, "peak", "peak pull", Goal.MORE, Quantity.FORCE, "lbf", "N"),
    DRIFT(TrialKind.SIDE_HILL, "drift", "downhill drift", Goal.LESS, Quantity.LENGTH, "in", "cm"),
    FIRST_SLIP(TrialKind.SIDE_HILL, "angle", "angle at first slip", Goal.MORE, Quantity.ANGLE, "deg", "deg"),
    TORN(TrialKind.PIVOT, "torn", "torn share of the ring", Goal.LESS, null, "%", "%"),
    AREA(TrialKind.PRINT, "area", "print area", Goal.NEITHER, Quantity.AREA, "in2", "cm2"),
    LONG(TrialKind.PRINT, "length", "print length", Goal.NEITHER, Quantity.LENGTH, "in", "mm"),
    WIDE(TrialKind.PRINT, "width", "print width", Goal.NEITHER, Quantity.LENGTH, "in", "mm"),
    SHAPE(TrialKind.PRINT, "exponent", "shape exponent", Goal.NEITHER, null, "", ""),
    VERTICAL(TrialKind.RIDE, "z", "vertical shaking", Goal.LESS, Quantity.ACCELERATION, "m/s2", "m/s2"),
    ALL_AXES(TrialKind.RIDE, "total", "shaking of all axes", Goal.LESS, Quantity.ACCELERATION, "m/s2", "m/s2"),
    FORE_AND_AFT(TrialKind.RIDE, "x", "fore-and-aft shaking", Goal.LESS, Quantity.ACCELERATION, "m/s2", "m/s2"),
    SIDEWAYS(TrialKind.RIDE, "y", "sideways shaking", Goal.LESS, Quantity.ACCELERATION, "m/s2", "m/s2"),
    RATING(TrialKind.RIDE, "rating", "operator's rating", Goal.MORE, null, "", ""),
    DISTANCE(TrialKind.STOP, "distance", "stopping distance", Goal.LESS, Quantity.LENGTH, "ft", "m"),
    HEIGHT(TrialKind.HEIGHT, "height", "height", Goal.NEITHER, Quantity.LENGTH, "in", "mm"),
    STRAGGLERS(TrialKind.CUT, "stragglers", "blades left standing", Goal.LESS, null, "", ""),
    SPEED(TrialKind.SPEED, "rate", "ground speed", Goal.MORE, Quantity.SPEED, "mph", "km/h");

    private final TrialKind kind;
    private final String key;
    private final String words;
    private final Goal goal;
    private final @Nullable Quantity quantity;
    private final String us;
    private final String si;

    Measure(TrialKind kind, String key, String words, Goal goal, @Nullable Quantity quantity, String us, String si) {
        this.kind = kind;
        this.key = key;
        this.words = words;
        this.goal = goal;
        this.quantity = quantity;
        this.us = us;
        this.si = si;
    }

    static List<Measure> of(TrialKind kind) {
        return Arrays.stream(values()).filter(m -> m.kind == kind).toList();
    }

    public TrialKind kind() {
        return kind;
    }

    /** The key of a run in a file. */
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    Goal goal() {
        return goal;
    }

    /** Null for a count or a share. */
    @Nullable
    Quantity quantity() {
        return quantity;
    }

    boolean isShare() {
        return us.equals("%");
    }

    /** How values of it are shown to a reader. */
    public Shown shown(boolean metric) {
        String unit = metric ? si : us;
        if (isShare()) {
            return new Shown(words, 100, unit);
        }
        double factor = quantity == null
                ? 1
                : quantity.unit(unit).map(u -> u.fromOwn(1)).orElseThrow();
        return new Shown(words, factor, unit);
    }
}
