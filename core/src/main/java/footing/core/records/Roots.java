package footing.core.records;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Root finding as this package needs it: inside a bracket, or outward from where the sign is known. */
final class Roots {
    private static final double ACCURACY = 1e-14;
    private static final int MOST_EVALUATIONS = 500;
    private static final int MOST_STEPS = 60;

    private Roots() {}

    /** The root between two points of opposite signs. */
    static double between(DoubleUnaryOperator f, double low, double high) {
        double atLow = f.applyAsDouble(low);
        double atHigh = f.applyAsDouble(high);
        if (atLow == 0 || atHigh == 0) {
            return atLow == 0 ? low : high;
        }
        if (!(atLow * atHigh < 0)) {
            throw new IllegalArgumentException("no change of sign from " + low + " to " + high);
        }
        return new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, ACCURACY * 1e-3, 5)
                .solve(MOST_EVALUATIONS, f::applyAsDouble, low, high, AllowedSolution.ANY_SIDE);
    }

    /**
     * The first change of sign met by growing steps from a start, so that each is half as long again as the last;
     * empty if there is none within {@code farthest} of it.
     */
    static OptionalDouble outward(DoubleUnaryOperator f, double start, double step, double farthest) {
        double before = start;
        double sign = Math.signum(f.applyAsDouble(start));
        double length = step;
        for (int i = 0; i < MOST_STEPS && Math.abs(before - start) < farthest; i++) {
            double next = before + length;
            double there = f.applyAsDouble(next);
            if (Double.isNaN(there)) {
                return OptionalDouble.empty();
            }
            if (Math.signum(there) != sign) {
                return OptionalDouble.of(between(f, Math.min(before, next), Math.max(before, next)));
            }
            before = next;
            length *= 1.5;
        }
        return OptionalDouble.empty();
    }
}
