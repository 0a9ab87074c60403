package footing.core.trial;

import footing.core.money.ReferenceValue;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReferenceTest {
    static Stream<ReferenceValue> values() {
        return ReferenceValue.read(ReferenceTest.class, "trial.tsv");
    }

    @ParameterizedTest
    @MethodSource("values")
    void function_publishedInputs_givesPublishedValue(ReferenceValue value) {
        value.check(computed(value));
    }

    private static double computed(ReferenceValue v) {
        String[] name = v.function().split("\\.", -1);
        return switch (name[0]) {
            case "summary" -> ofSummary(name[1], v);
            case "paired" -> ofTest(name[1], PairedTest.of(differences(v, 0)));
            case "alike" -> ofEquivalence(name[1], Equivalence.of(PairedTest.of(differences(v, 1)), v.number(0)));
            case "pairs" -> pairs(name[1], v);
            case "power" -> Power.ofAlike(v.number(0), 0, v.whole(1), Power.ALPHA);
            case "sign" ->
                name[1].equals("p")
                        ? new SignTest(v.whole(0), v.whole(1), v.whole(2)).p()
                        : SignTest.needed(v.number(0), Power.ALPHA, v.number(1));
            default -> throw new IllegalArgumentException(v.function());
        };
    }

    private static double ofSummary(String what, ReferenceValue v) {
        double[] x = v.from(1);
        double spread = Math.sqrt(x[2] * x[2] + x[3] * x[3] - 2 * x[4] * x[2] * x[3]);
        PairedTest test = new PairedTest(v.whole(0), x[0] - x[1], spread);
        return what.endsWith("Above") || what.endsWith("Below")
                ? ofEquivalence(what, Equivalence.of(test, x[5]))
                : ofTest(what, test);
    }

    private static double ofTest(String what, PairedTest test) {
        return switch (what) {
            case "mean" -> test.mean();
            case "spread" -> test.spread();
            case "error" -> test.error();
            case "t" -> test.t();
            case "p" -> test.p();
            case "low90" -> test.interval(0.90).low();
            case "high90" -> test.interval(0.90).high();
            case "low95" -> test.interval(0.95).low();
            case "high95" -> test.interval(0.95).high();
            default -> throw new IllegalArgumentException(what);
        };
    }

    private static double ofEquivalence(String what, Equivalence e) {
        return switch (what) {
            case "tAbove" -> e.above().t();
            case "pAbove" -> e.above().chanceAbove();
            case "tBelow" -> e.below().t();
            case "pBelow" -> e.below().chanceBelow();
            case "p" -> e.p();
            default -> throw new IllegalArgumentException(what);
        };
    }

    private static double pairs(String what, ReferenceValue v) {
        return switch (what) {
            case "find" -> Power.pairsForDifference(v.number(0), v.number(1), Power.ALPHA);
            case "alikeRoughly" -> Power.pairsForAlikeRoughly(v.number(0), v.number(1), Power.ALPHA);
            case "alike" -> Power.pairsForAlike(v.number(0), v.number(1), Power.ALPHA);
            default -> throw new IllegalArgumentException(what);
        };
    }

    private static double[] differences(ReferenceValue v, int first) {
        int n = v.whole(first);
        double[] x = v.from(first + 1);
        double[] d = new double[n];
        Arrays.setAll(d, i -> x[i] - x[n + i]);
        return d;
    }
}
