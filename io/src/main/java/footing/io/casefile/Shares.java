package footing.io.casefile;

import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.form.Written;
import java.util.List;

/** Shares that belong together. */
final class Shares {
    /** A hundredth of a percentage point, for thirds written to two digits. */
    static final double TOLERANCE = 1.0001e-4;

    private Shares() {}

    static void checkWhole(String what, double sum, Found at, Problems problems) {
        if (Math.abs(sum - 1) > TOLERANCE) {
            String rest = Written.number(Math.abs(sum - 1) * 100) + " %";
            problems.error(
                    at.at(),
                    percent(sum),
                    what + " add up to 100 %",
                    sum < 1 ? rest + " is missing" : rest + " is too much");
        }
    }

    static void checkSchedule(List<Double> shares, Found at, Problems problems) {
        double sum = shares.stream().mapToDouble(x -> x).sum();
        if (sum > 1 + TOLERANCE) {
            problems.error(
                    at.at(),
                    percent(sum),
                    "more is deducted than was paid",
                    "the shares of all tax years together make at most 100 %");
        } else if (!shares.isEmpty() && sum < 1 - TOLERANCE) {
            problems.warn(
                    at.at(), percent(sum), "part of what was paid is never deducted", "the shares usually make 100 %");
        }
    }

    static String percent(double share) {
        return Written.number(Math.rint(share * 1e8) / 1e6) + " %";
    }
}
