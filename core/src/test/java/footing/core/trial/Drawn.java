package footing.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Drawn trials of known truth. */
final class Drawn {
    private final Random random;

    Drawn(long seed) {
        random = new Random(seed);
    }

    /** Runs in the order A B B A of normal values around two means, one lane each. */
    List<Run> runs(int pairs, double meanA, double meanB, double spread) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < 2 * pairs; i++) {
            Side side = i % 4 == 0 || i % 4 == 3 ? Side.A : Side.B;
            double value = (side == Side.A ? meanA : meanB) + spread * random.nextGaussian();
            runs.add(run(i + 1, side, value, ""));
        }
        return runs;
    }

    static Run run(int order, Side side, double value, String surface) {
        return new Run(order, side, value, surface, null, Conditions.NONE);
    }

    static Trial trial(TrialKind kind, List<Run> runs) {
        Question question = new Question(kind, kind.goal(), Margin.USUAL, List.of());
        return new Trial(question, thing("air"), thing("airless"), runs, List.of());
    }

    static Contender thing(String name) {
        return new Contender(name, Conditions.NONE);
    }
}
