package footing.io.form;

import static footing.core.chance.Metalog.LEAST_POSITION;
import static footing.core.chance.Metalog.MOST_POSITION;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import java.math.RoundingMode;
import java.util.Arrays;

/**
 * Says what is wrong with three values and which would work. With L, M, H the values after the transform, a metalog
 * needs p = (M − L)/(H − L) within 0.1666–0.8334; each value's limits follow from the other two: M = L + p (H − L),
 * L = M − p/(1 − p) (H − M), H = L + (M − L)/p.
 */
record ThreePointAdvice(double low, double likely, double high, Bounds bounds, Amount like) {
    private static final int MOST_DIGITS = 15;

    String fault() {
        if (low == likely || likely == high) {
            return "two of the three values are the same";
        }
        if (!(low < likely && likely < high)) {
            return "low, likely and high are out of order";
        }
        if (low <= 0) {
            return "a low of 0 leaves no way to spread the values";
        }
        if (bounds == Bounds.SHARE && high >= 1) {
            return "a high of 100 % leaves no way to spread the values";
        }
        double position = Metalog.position(low, likely, high, bounds);
        if (position >= LEAST_POSITION && position <= MOST_POSITION) {
            return "";
        }
        return position < LEAST_POSITION
                ? "likely is too close to low for a spread this wide"
                : "likely is too close to high for a spread this wide";
    }

    String wouldFit() {
        if (low == high) {
            return "try: one value, " + like.write(low);
        }
        boolean fromZero = low <= 0;
        boolean toOne = bounds == Bounds.SHARE && high >= 1;
        if (!(low <= likely && likely <= high)) {
            return sorted();
        }
        if ((fromZero && (toOne || likely == low)) || (toOne && likely == high)) {
            return "try: values above 0" + (bounds == Bounds.SHARE ? " % and below 100 %" : "") + ", each greater than"
                    + " the one before";
        }
        if (fromZero) {
            return likely == high
                    ? "try: a low above 0 and a high above " + like.write(likely)
                    : "try: low " + between(at(1 - 1 / (1 - MOST_POSITION)), at(1 - 1 / (1 - LEAST_POSITION)));
        }
        if (toOne) {
            return likely == low
                    ? "try: a low below " + like.write(likely) + " and a high below 100 %"
                    : "try: high " + between(beyond(1 / MOST_POSITION), beyond(1 / LEAST_POSITION));
        }
        double least = Metalog.valueAt(LEAST_POSITION, low, high, bounds);
        double most = Metalog.valueAt(MOST_POSITION, low, high, bounds);
        return "try: likely " + between(least, most);
    }

    private double at(double position) {
        return Metalog.valueAt(position, likely, high, bounds);
    }

    private double beyond(double position) {
        return Metalog.valueAt(position, low, likely, bounds);
    }

    private String sorted() {
        double[] x = {low, likely, high};
        Arrays.sort(x);
        return "try: {low: " + like.write(x[0]) + ", likely: " + like.write(x[1]) + ", high: " + like.write(x[2]) + "}";
    }

    /** Rounded inward, so that every value named does work; three digits unless the range is narrower. */
    private String between(double least, double most) {
        for (int digits = 3; digits <= MOST_DIGITS; digits++) {
            String from = Written.coarse(like.inUnit(least), digits, RoundingMode.CEILING);
            String to = Written.coarse(like.inUnit(most), digits, RoundingMode.FLOOR);
            if (Double.parseDouble(from) < Double.parseDouble(to)) {
                return "from " + like.write(from) + " to " + like.write(to);
            }
        }
        return "a little away from its neighbors";
    }
}
