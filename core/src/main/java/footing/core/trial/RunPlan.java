package footing.core.trial;

import footing.core.chance.Draws;
import java.util.ArrayList;
import java.util.List;

/**
 * A randomized order of runs. Each two pairs on a surface are A B B A or B A A B by the toss of a coin, so that neither
 * side gains from the day drying out; a last odd pair is tossed for by itself. Every run gets a fresh lane.
 */
public record RunPlan(List<Planned> runs) {
    private static final int MOST_RUNS = 4000;

    public RunPlan {
        runs = List.copyOf(runs);
    }

    /** One run to make. */
    public record Planned(int order, String surface, int pair, Side side, int lane, boolean outward) {}

    /**
     * A plan by the toss of a seeded coin.
     *
     * @param pairs on each surface, at least 1
     * @param surfaces an empty name if there is only one
     * @param seed the same seed gives the same plan
     */
    public static RunPlan of(int pairs, List<String> surfaces, long seed) {
        if (pairs < 1 || surfaces.isEmpty() || 2L * pairs * surfaces.size() > MOST_RUNS) {
            throw new IllegalArgumentException("no plan of " + pairs + " pairs on " + surfaces.size() + " surfaces");
        }
        List<Planned> runs = new ArrayList<>();
        for (String surface : surfaces) {
            long key = Draws.key(seed, "trial.plan", surface);
            for (int pair = 0; pair < pairs; pair++) {
                boolean tossed = Draws.uniform(key, pair / 2) < 0.5;
                Side first = tossed == (pair % 2 == 0) ? Side.A : Side.B;
                for (Side side : List.of(first, first.other())) {
                    int order = runs.size() + 1;
                    // Two runs of a pair go the same way, the next pair comes back.
                    runs.add(new Planned(order, surface, pair + 1, side, lane(runs, surface), pair % 2 == 0));
                }
            }
        }
        return new RunPlan(runs);
    }

    private static int lane(List<Planned> runs, String surface) {
        return 1 + (int) runs.stream().filter(r -> r.surface().equals(surface)).count();
    }
}
