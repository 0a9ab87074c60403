package footing.core.trial;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Two one-sided tests: the difference lies above minus the margin, and it lies below the margin. Both shown, the two
 * things are alike within it; so what differs by the margin is called alike in at most one trial in twenty.
 *
 * <p>With a margin that is a share θ of the mean m = (a + b)/2, the sums a − b ± θ·m are tested against zero, which
 * allows for m being measured as well.
 *
 * <p>Sources: D. J. Schuirmann, J. Pharmacokinetics and Biopharmaceutics 15 (1987); D. Hauschke, M. Kieser, E. Diletti,
 * L. Hothorn, Statistics in Medicine 18 (1999) for the share (from memory).
 *
 * @param above of the differences plus the margin
 * @param below of the differences less the margin
 */
public record Equivalence(PairedTest above, PairedTest below) {
    public static Equivalence of(List<Pair> pairs, Margin margin) {
        return new Equivalence(
                test(pairs, p -> p.difference() + margin.at(p.mean())),
                test(pairs, p -> p.difference() - margin.at(p.mean())));
    }

    /** From a test of the differences and a margin in their unit. */
    public static Equivalence of(PairedTest difference, double margin) {
        return new Equivalence(
                new PairedTest(difference.pairs(), difference.mean() + margin, difference.spread()),
                new PairedTest(difference.pairs(), difference.mean() - margin, difference.spread()));
    }

    private static PairedTest test(List<Pair> pairs, ToDoubleFunction<Pair> of) {
        return PairedTest.of(pairs.stream().mapToDouble(of).toArray());
    }

    /** The larger of the two chances; below 0.05 the two things are alike. */
    public double p() {
        return Math.max(above.chanceAbove(), below.chanceBelow());
    }
}
