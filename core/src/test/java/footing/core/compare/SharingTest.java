package footing.core.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharingTest {
    private static final double EXACT = 1e-12;

    private static double[] values(int things, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return random.doubles(1L << things, -100, 100).toArray();
    }

    /** The definition itself: replace in every order and average. */
    private static double[] overAllOrders(int things, IntToDoubleFunction value) {
        double[] sums = new double[things];
        List<List<Integer>> orders = orders(things);
        for (List<Integer> order : orders) {
            int state = 0;
            for (int i : order) {
                sums[i] += value.applyAsDouble(state | 1 << i) - value.applyAsDouble(state);
                state |= 1 << i;
            }
        }
        return Arrays.stream(sums).map(x -> x / orders.size()).toArray();
    }

    private static List<List<Integer>> orders(int things) {
        List<List<Integer>> orders = new ArrayList<>(List.of(List.of()));
        for (int thing = 0; thing < things; thing++) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> order : orders) {
                for (int at = 0; at <= order.size(); at++) {
                    List<Integer> with = new ArrayList<>(order);
                    with.add(at, thing);
                    longer.add(with);
                }
            }
            orders = longer;
        }
        return orders;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 6})
    void share_anyFunction_isTheMeanOverAllOrders(int things) {
        double[] v = values(things, things);

        assertThat(Sharing.share(things, s -> v[s])).containsExactly(overAllOrders(things, s -> v[s]), within(1e-10));
    }

    /** Two hold a left glove, one a right glove, a pair is worth 1: by the six orders 1/6, 1/6, 2/3. */
    @Test
    void share_threeGloves_asReckonedByHand() {
        double[] shares = Sharing.share(3, s -> (s & 3) != 0 && (s & 4) != 0 ? 1 : 0);

        assertThat(shares).containsExactly(new double[] {1 / 6.0, 1 / 6.0, 2 / 3.0}, within(EXACT));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4, 8, 9, 12})
    void share_anyFunction_addsUpToTheWhole(int things) {
        double[] v = values(things, 7L * things);

        double whole = v[v.length - 1] - v[0];

        assertThat(Arrays.stream(Sharing.share(things, s -> v[s])).sum()).isCloseTo(whole, within(1e-10));
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 8, 9, 12})
    void share_thingThatChangesNothing_getsNothing(int things) {
        double[] v = values(things, 11L * things);
        int idle = 1 << 2;

        assertThat(Sharing.share(things, s -> v[s & ~idle])[2]).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 8, 9, 12})
    void states_cover_whatIsAskedFor(int things) {
        List<Integer> states = Sharing.states(things);
        double[] unused = Sharing.share(things, s -> {
            assertThat(states).contains(s);
            return s;
        });

        assertThat(states).doesNotHaveDuplicates().startsWith(0).endsWith((1 << things) - 1);
        assertThat(states).hasSizeLessThanOrEqualTo(Math.max(1 << Sharing.MOST_EXACT, 2 * things));
        assertThat(unused).hasSize(things);
    }

    @Test
    void states_ofNothing_isOne() {
        assertThat(Sharing.states(0)).containsExactly(0);
        assertThat(Sharing.share(0, s -> 1)).isEmpty();
    }
}
