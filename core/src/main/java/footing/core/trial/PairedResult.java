package footing.core.trial;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What pairs of runs show. Alike goes before more: a difference may be clear of zero and yet too small to matter.
 *
 * <p>Where all differences are the same to the last digit, the instrument is too coarse for a t-test. Then six pairs
 * are asked for, the fewest of which a sign test could say the same.
 *
 * @param stated the margin as it was stated
 * @param usualSpread of one run, as a share of the mean; serves until there are two pairs
 * @param test null with fewer than two pairs
 * @param equivalence null with fewer than two pairs
 */
public record PairedResult(
        List<Pair> pairs,
        Margin stated,
        double usualSpread,
        @Nullable PairedTest test,
        @Nullable Equivalence equivalence) {
    private static final int FEWEST = 3;
    private static final int FEWEST_COARSE = 6;
    private static final double CONFIDENCE = 0.95;
    private static final long SEED = 1;

    public PairedResult {
        pairs = List.copyOf(pairs);
    }

    /** Judges pairs against a margin. */
    public static PairedResult of(List<Pair> pairs, Margin margin, double usualSpread) {
        if (pairs.size() < 2) {
            return new PairedResult(pairs, margin, usualSpread, null, null);
        }
        PairedTest test =
                PairedTest.of(pairs.stream().mapToDouble(Pair::difference).toArray());
        return new PairedResult(pairs, margin, usualSpread, test, Equivalence.of(pairs, margin));
    }

    public Verdict verdict() {
        if (test == null || equivalence == null || test.pairs() < (test.spread() > 0 ? FEWEST : FEWEST_COARSE)) {
            return Verdict.NOT_ENOUGH;
        }
        if (equivalence.p() < Power.ALPHA) {
            return Verdict.ALIKE;
        }
        if (test.p() < Power.ALPHA) {
            return test.mean() > 0 ? Verdict.A_MORE : Verdict.B_MORE;
        }
        return Verdict.NOT_ENOUGH;
    }

    /** The margin in the unit of the runs. */
    public double margin() {
        return stated.at(mean());
    }

    /**
     * How many more pairs would tell, four times in five; 0 if it is told. As many as show two alike things to be alike;
     * where there are more already, as many as show a difference of the measured size.
     */
    public int furtherPairs() {
        if (verdict() != Verdict.NOT_ENOUGH) {
            return 0;
        }
        if (test == null) {
            return Math.max(1, withoutSpread() - pairs.size());
        }
        if (!(test.spread() > 0)) {
            return FEWEST_COARSE - test.pairs();
        }
        double margin = margin();
        int alike =
                margin > 0 ? Power.pairsForAlike(margin / test.spread(), Power.USUAL, Power.ALPHA) : Power.MOST_PAIRS;
        if (alike > test.pairs()) {
            return alike - test.pairs();
        }
        double effect = Math.max(Math.abs(test.mean()), margin / 2) / test.spread();
        int difference = (int) Math.ceil(Power.pairsForDifference(effect, Power.USUAL, Power.ALPHA));
        return Math.max(1, difference - test.pairs());
    }

    private int withoutSpread() {
        double ofPair = Math.sqrt(2) * usualSpread;
        double mean = Math.abs(mean());
        double share = stated.share() || mean == 0 ? stated.size() : stated.size() / mean;
        return Power.pairsForAlike(share / ofPair, Power.USUAL, Power.ALPHA);
    }

    private double mean() {
        return pairs.stream().mapToDouble(Pair::mean).average().orElse(0);
    }

    public double meanOf(Side side) {
        return pairs.stream()
                .mapToDouble(p -> side == Side.A ? p.a().value() : p.b().value())
                .average()
                .orElse(Double.NaN);
    }

    /** The 95 % interval of A less B; null with fewer than two pairs. */
    public @Nullable Interval interval() {
        return test == null ? null : test.interval(CONFIDENCE);
    }

    /** The 95 % interval of A less B by drawing pairs again; null with fewer than two pairs. Decides nothing. */
    public @Nullable Interval resampled() {
        return pairs.size() < 2
                ? null
                : Resampled.of(pairs.stream().mapToDouble(Pair::difference).toArray(), SEED)
                        .interval(CONFIDENCE);
    }
}
