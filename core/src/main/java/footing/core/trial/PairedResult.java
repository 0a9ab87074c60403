package footing.core.trial;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What pairs of runs show. Alike goes before more: a difference may be clear of zero and yet too small to matter.
 *
 * <p>Where all differences are the same to the last digit, the instrument is too coarse for a t-test. Then six pairs
 * are asked for, the fewest of which a sign test could say the same.
 *
 * @param test null with fewer than two pairs
 * @param equivalence null with fewer than two pairs
 * @param margin in the unit of the runs
 * @param furtherPairs how many more would tell, four times in five; 0 if it is told
 */
public record PairedResult(
        List<Pair> pairs,
        @Nullable PairedTest test,
        @Nullable Equivalence equivalence,
        double margin,
        Verdict verdict,
        int furtherPairs) {
    private static final int FEWEST = 3;
    private static final int FEWEST_COARSE = 6;
    private static final double CONFIDENCE = 0.95;

    public PairedResult {
        pairs = List.copyOf(pairs);
    }

    /** Judges pairs against a margin; {@code usualSpread} of one run, as a share of the mean, serves until there is one. */
    public static PairedResult of(List<Pair> pairs, Margin margin, double usualSpread) {
        double mean = pairs.stream().mapToDouble(Pair::mean).average().orElse(0);
        double size = margin.at(mean);
        if (pairs.size() < 2) {
            int needed = spreadless(margin, mean, usualSpread);
            return new PairedResult(pairs, null, null, size, Verdict.NOT_ENOUGH, Math.max(1, needed - pairs.size()));
        }
        PairedTest test =
                PairedTest.of(pairs.stream().mapToDouble(Pair::difference).toArray());
        Equivalence equivalence = Equivalence.of(pairs, margin);
        Verdict verdict = verdict(test, equivalence);
        int further = verdict == Verdict.NOT_ENOUGH ? further(test, size) : 0;
        return new PairedResult(pairs, test, equivalence, size, verdict, further);
    }

    private static int spreadless(Margin margin, double mean, double usualSpread) {
        double ofPair = Math.sqrt(2) * usualSpread;
        double asShare = margin.share() ? margin.size() : mean == 0 ? margin.size() : margin.size() / Math.abs(mean);
        return Power.pairsForAlike(asShare / ofPair, Power.USUAL, Power.ALPHA);
    }

    private static Verdict verdict(PairedTest test, Equivalence equivalence) {
        if (test.pairs() < (test.spread() > 0 ? FEWEST : FEWEST_COARSE)) {
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

    /** Further pairs to see a difference of the measured size or, if there is none, to see that there is none. */
    private static int further(PairedTest test, double margin) {
        if (!(test.spread() > 0)) {
            return FEWEST_COARSE - test.pairs();
        }
        int alike =
                margin > 0 ? Power.pairsForAlike(margin / test.spread(), Power.USUAL, Power.ALPHA) : Power.MOST_PAIRS;
        if (alike > test.pairs()) {
            return alike - test.pairs();
        }
        double effect = Math.max(Math.abs(test.mean()), margin / 2) / test.spread();
        int difference = (int) Math.ceil(Power.pairsForDifference(effect, Power.USUAL, Power.ALPHA));
        return Math.max(1, difference - test.pairs());
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
}
