package footing.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.ReferenceValue;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DeckPlaneTest {
    private static final double MM = 1000;

    static Stream<ReferenceValue> published() {
        return ReferenceValue.read(DeckPlaneTest.class, "deck.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void published(ReferenceValue row) {
        double[] x = row.from(0);
        DeckPlane deck = new DeckPlane(x[0], x[1], x[2]);
        row.check(
                switch (row.function()) {
                    case "rise" -> MM * deck.rise(x[3]);
                    case "pitch" -> Math.toDegrees(deck.pitch());
                    case "exactDifference" -> MM * exactDifference(x);
                    default -> tips(row.function(), x, deck);
                });
    }

    private static double tips(String function, double[] x, DeckPlane deck) {
        DeckPlane.Plane before = new DeckPlane.Plane(x[3], x[4], (x[5] + x[6]) / 2, x[5] - x[6]);
        return switch (function) {
            case "rearTip" -> MM * deck.moved(before).at(x[3]);
            case "frontTip" -> MM * deck.moved(before).at(x[4]);
            case "rakeBefore" -> MM * before.rake();
            case "rakeAfter" -> MM * deck.moved(before).rake();
            case "turns" -> deck.turns(x[7], before, before, new DeckPlane.Hanger(x[8], 1));
            default -> throw new IllegalArgumentException(function);
        };
    }

    /** The rigid frame turned about its axle, with the deck as far below the rail as the reference values allow. */
    private static double exactDifference(double[] x) {
        double worst = 0;
        DeckPlane deck = new DeckPlane(x[0], x[1], x[2]);
        double sine = (x[2] - x[1]) / x[0];
        double cosine = Math.sqrt(1 - sine * sine);
        for (double below : new double[] {-0.14, -0.18}) {
            for (int i = 3; i < x.length; i++) {
                double exact = x[1] + x[i] * sine + below * (cosine - 1);
                worst = Math.max(worst, Math.abs(exact - deck.rise(x[i])));
            }
        }
        return worst;
    }

    @Test
    void turns_addedUp_restoreHeightAndRakeExactly() {
        for (long seed = 1; seed <= 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double wheelbase = 1 + random.nextDouble();
            double rearTip = 0.2 + 0.2 * random.nextDouble();
            double frontTip = rearTip + 0.3 + 0.3 * random.nextDouble();
            double rearHanger = rearTip + 0.05 * random.nextDouble();
            double frontHanger = frontTip - 0.05 * random.nextDouble();
            DeckPlane deck =
                    new DeckPlane(wheelbase, 0.03 * (random.nextDouble() - 0.5), 0.03 * (random.nextDouble() - 0.5));
            var before = new DeckPlane.Plane(rearTip, frontTip, 0.08, 0.005);
            var wanted = new DeckPlane.Plane(rearTip, frontTip, 0.07 + 0.02 * random.nextDouble(), 0.004);
            var hanger = new DeckPlane.Hanger(0.0015, 0.5 + random.nextDouble());

            double rear = hanger.moved(deck.turns(rearHanger, before, wanted, hanger));
            double front = hanger.moved(deck.turns(frontHanger, before, wanted, hanger));

            double slope = (front - rear) / (frontHanger - rearHanger);
            for (double x : new double[] {rearTip, (rearTip + frontTip) / 2, frontTip}) {
                double lowered = rear + slope * (x - rearHanger);
                assertThat(deck.moved(before).at(x) - lowered)
                        .as("seed %s", seed)
                        .isCloseTo(wanted.at(x), within(1e-12));
            }
        }
    }

    @Test
    void turns_bothAxlesAlike_areAlike() {
        DeckPlane deck = new DeckPlane(1.25, 0.006, 0.006);
        var before = new DeckPlane.Plane(0.33, 0.87, 0.08, 0.003);
        var hanger = new DeckPlane.Hanger(0.0015, 1);

        assertThat(deck.pitch()).isZero();
        assertThat(deck.turns(0.35, before, before, hanger)).isCloseTo(4, within(1e-9));
        assertThat(deck.turns(0.85, before, before, hanger)).isCloseTo(4, within(1e-9));
    }

    @Test
    void deck_impossible_isRefused() {
        assertThatThrownBy(() -> new DeckPlane(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DeckPlane(1, Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DeckPlane.Plane(0.9, 0.3, 0.1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DeckPlane.Hanger(0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
