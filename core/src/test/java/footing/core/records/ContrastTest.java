package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Two kinds of sets, and the machines of a crew, side by side. */
class ContrastTest {
    static Stream<ReferenceValue> references() {
        return ReferenceValue.read(ContrastTest.class, "contrasts.tsv");
    }

    @ParameterizedTest
    @MethodSource("references")
    void of_referenceData_givesTheReferenceValue(ReferenceValue r) {
        r.check(
                switch (r.function()) {
                    case "logRank" -> kinds(r, true).logRank();
                    case "expected" -> kinds(r, true).expected();
                    case "breslow" -> kinds(r, false).logRatio();
                    case "breslowError" -> kinds(r, false).error();
                    case "efron" -> kinds(r, true).logRatio();
                    case "efronError" -> kinds(r, true).error();
                    case "deviance" -> pumps(r).deviance();
                    case "pearson" -> pumps(r).pearson();
                    case "rate" -> pumps(r).rate();
                    default -> throw new AssertionError(r.function());
                });
    }

    private static LifeContrast kinds(ReferenceValue r, boolean efron) {
        return LifeContrast.of(
                        DataSet.lives(r.inputs().get(0)),
                        DataSet.lives(r.inputs().get(1)),
                        efron)
                .orElseThrow();
    }

    private static CrewContrast pumps(ReferenceValue r) {
        String[] row = DataSet.row("pumps-data.tsv", r.inputs().get(0));
        double[] events = DataSet.numbers(row[1]);
        double[] hours = DataSet.numbers(row[2]);
        return CrewContrast.of(IntStream.range(0, events.length)
                .mapToObj(i -> new CrewRates.Counted(events[i], hours[i]))
                .toList());
    }

    @Test
    void differs_tenPumps_isSaidAndMachinesAlikeAreNot() {
        CrewContrast alike = CrewContrast.of(List.of(
                new CrewRates.Counted(6, 1000), new CrewRates.Counted(5, 1000), new CrewRates.Counted(7, 1000)));
        assertThat(alike.differs()).isFalse();
        assertThat(alike.tooFew()).isFalse();
        CrewContrast unlike = CrewContrast.of(List.of(
                new CrewRates.Counted(16, 1000), new CrewRates.Counted(5, 1000), new CrewRates.Counted(3, 1000)));
        assertThat(unlike.differs()).isTrue();
    }

    @Test
    void differs_tooFewFlatsOrOneMachine_isNeverSaid() {
        assertThat(CrewContrast.of(List.of(new CrewRates.Counted(50, 10))).differs())
                .isFalse();
        CrewContrast few = CrewContrast.of(
                List.of(new CrewRates.Counted(2, 10), new CrewRates.Counted(0, 5000), new CrewRates.Counted(0, 5000)));
        assertThat(few.tooFew()).isTrue();
        assertThat(few.differs()).isFalse();
        assertThat(CrewContrast.of(List.of()).differs()).isFalse();
    }

    @Test
    void ratioLimits_turnedRound_areTheirInverse() {
        List<Life> one = DataSet.lives("leukemia");
        List<Life> other = DataSet.lives("leukemia-control");
        Limits there = LifeContrast.of(one, other).orElseThrow().ratioLimits(0.8);
        Limits back = LifeContrast.of(other, one).orElseThrow().ratioLimits(0.8);
        assertThat(there.low() * back.high()).isCloseTo(1, within(1e-9));
        assertThat(there.high() * back.low()).isCloseTo(1, within(1e-9));
        assertThat(there.high()).isLessThan(1);
    }

    /** The limits against a search over a fine grid of ratios, the partial likelihood written out once more. */
    @Test
    void ratioLimits_slowSearch_findsTheSame() {
        List<Life> one = List.of(new Life(0, 300, true), new Life(100, 500, true), new Life(0, 700, false));
        List<Life> other = List.of(new Life(0, 200, true), new Life(0, 450, true), new Life(250, 400, false));
        double best = Double.NEGATIVE_INFINITY;
        for (double b = -6; b < 6; b += 1e-4) {
            best = Math.max(best, partial(b, one, other));
        }
        Limits limits = LifeContrast.of(one, other).orElseThrow().ratioLimits(0.95);
        double drop = 3.841458820694124 / 2;
        assertThat(partial(Math.log(limits.low()), one, other)).isCloseTo(best - drop, within(1e-6));
        assertThat(partial(Math.log(limits.high()), one, other)).isCloseTo(best - drop, within(1e-6));
    }

    private static double partial(double b, List<Life> one, List<Life> other) {
        List<Life> all = new ArrayList<>(one);
        all.addAll(other);
        double log = 0;
        for (Life worn : all) {
            if (worn.wornOut()) {
                double sum = 0;
                for (Life l : all) {
                    boolean atRisk = l.entry() < worn.exit() && l.exit() >= worn.exit();
                    sum += atRisk ? (one.contains(l) ? Math.exp(b) : 1) : 0;
                }
                log += (one.contains(worn) ? b : 0) - Math.log(sum);
            }
        }
        return log;
    }

    /** All of one kind gone before the first of the other: no ratio is the best, but it is great. */
    @Test
    void of_oneKindGoneBeforeTheOther_boundsTheRatioAtOneEnd() {
        List<Life> brief =
                IntStream.range(0, 5).mapToObj(i -> new Life(0, 300 + i, true)).toList();
        List<Life> lasting =
                IntStream.range(0, 5).mapToObj(i -> new Life(0, 500 + i, true)).toList();
        LifeContrast contrast = LifeContrast.of(brief, lasting).orElseThrow();
        assertThat(contrast.isFinite()).isFalse();
        Limits limits = contrast.ratioLimits(0.95);
        assertThat(limits.low()).isGreaterThan(1.5);
        assertThat(limits.high()).isInfinite();
        // With ratio r the part that depends on it is the product of (5 - i)r/((5 - i)r + 5), whose supremum is 1.
        double log = 0;
        for (int i = 0; i < 5; i++) {
            log -= Math.log1p(5 / ((5 - i) * limits.low()));
        }
        assertThat(log).isCloseTo(-3.841458820694124 / 2, within(1e-9));
        Limits back = LifeContrast.of(lasting, brief).orElseThrow().ratioLimits(0.95);
        assertThat(back.low()).isZero();
        assertThat(back.high()).isCloseTo(1 / limits.low(), within(1e-9));
    }

    @Test
    void of_oneSetWornOutOfTwo_cantTell() {
        List<Life> worn = List.of(new Life(0, 300, true));
        List<Life> fine = List.of(new Life(0, 600, false));
        assertThat(contrast(worn, fine).lasts()).isEqualTo(Learned.Contrast.Lasts.CANT_TELL);
        assertThat(LifeContrast.of(fine, fine)).isEmpty();
        assertThat(LifeContrast.of(List.of(), worn)).isEmpty();
    }

    /** Foam against air in one log: same ages at risk, foam half as often. */
    @Test
    void lasts_kindsThatDiffer_isLongerAndKindsAlikeCantTell() {
        List<Life> air = IntStream.range(0, 20)
                .mapToObj(i -> new Life(0, 400 + 10 * i, true))
                .toList();
        List<Life> foam = IntStream.range(0, 20)
                .mapToObj(i -> new Life(0, 520 + 14 * i, true))
                .toList();
        assertThat(contrast(foam, air).lasts()).isEqualTo(Learned.Contrast.Lasts.LONGER);
        assertThat(contrast(air, foam).lasts()).isEqualTo(Learned.Contrast.Lasts.SHORTER);
        assertThat(contrast(foam.subList(0, 2), air.subList(9, 12)).lasts())
                .isEqualTo(Learned.Contrast.Lasts.CANT_TELL);
        assertThat(contrast(air, air).ratio().orElseThrow().logRatio()).isCloseTo(0, within(1e-9));
    }

    private static Learned.Contrast contrast(List<Life> one, List<Life> other) {
        return Learned.Contrast.of("one", "other", one, other);
    }

    /** Three before three: one of the twenty ways to share out six lives, and its mirror. */
    @Test
    void chance_threeGoneBeforeThree_isTwoInTwenty() {
        List<Life> brief =
                IntStream.range(0, 3).mapToObj(i -> new Life(0, 300 + i, true)).toList();
        List<Life> lasting =
                IntStream.range(0, 3).mapToObj(i -> new Life(0, 500 + i, true)).toList();
        assertThat(contrast(brief, lasting).chance()).isCloseTo(0.1, within(1e-12));
        assertThat(contrast(brief, lasting).lasts()).isEqualTo(Learned.Contrast.Lasts.CANT_TELL);
    }
}
