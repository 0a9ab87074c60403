package footing.core.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Shares the difference between two states among the things that differ. A state is a bit mask: bit i is set where thing
 * i is as in the second version.
 *
 * <p>Up to {@value #MOST_EXACT} things: the Shapley value, which is what a thing changes when it is replaced, averaged
 * over all orders in which the things can be replaced: φ_i = Σ over the sets S without i of |S|! (n − |S| − 1)! / n! ·
 * (v(S ∪ i) − v(S)). It is the only sharing that adds up to the whole, gives nothing to what changes nothing, and equal
 * parts to things that are interchangeable, whatever the function (Shapley 1953). Beyond that the average over two
 * orders only, the given one and its reverse: it still adds up, and gives nothing to what changes nothing.
 */
final class Sharing {
    static final int MOST_EXACT = 8;

    /** A bit mask holds no more. */
    static final int MOST = 30;

    private Sharing() {}

    /** The states whose values are needed; the first is 0, the last has all bits set. */
    static List<Integer> states(int things) {
        List<Integer> states = new ArrayList<>();
        int all = (1 << things) - 1;
        if (things <= MOST_EXACT) {
            for (int s = 0; s <= all; s++) {
                states.add(s);
            }
            return states;
        }
        states.add(0);
        for (int i = 1; i < things; i++) {
            int first = (1 << i) - 1;
            states.add(first);
            states.add(all & ~first);
        }
        states.add(all);
        return states;
    }

    static double[] share(int things, IntToDoubleFunction value) {
        double[] shares = new double[things];
        for (int i = 0; i < things; i++) {
            shares[i] = things <= MOST_EXACT ? overAllOrders(i, things, value) : overTwoOrders(i, things, value);
        }
        return shares;
    }

    private static double overAllOrders(int i, int things, IntToDoubleFunction value) {
        double sum = 0;
        for (int s = 0; s < 1 << things; s++) {
            if ((s >> i & 1) == 0) {
                double change = value.applyAsDouble(s | 1 << i) - value.applyAsDouble(s);
                sum += change * weight(Integer.bitCount(s), things);
            }
        }
        return sum;
    }

    /** |S|! (n − |S| − 1)! / n!, as 1 / (n · C(n − 1, |S|)). */
    private static double weight(int size, int things) {
        double choices = 1;
        for (int k = 0; k < size; k++) {
            choices = choices * (things - 1 - k) / (k + 1);
        }
        return 1 / (things * choices);
    }

    private static double overTwoOrders(int i, int things, IntToDoubleFunction value) {
        int before = (1 << i) - 1;
        int behind = (1 << things) - 1 & ~(before | 1 << i);
        double forward = value.applyAsDouble(before | 1 << i) - value.applyAsDouble(before);
        double backward = value.applyAsDouble(behind | 1 << i) - value.applyAsDouble(behind);
        return (forward + backward) / 2;
    }
}
