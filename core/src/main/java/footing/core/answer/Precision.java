package footing.core.answer;

import footing.core.future.MachineFutures;

/**
 * How many futures an answer needs: until every saving's standard error is at most the larger of 0.5 % of what the
 * carried package costs and 1 % of the start cost, and, where a chance lies within 3 points of 50 % or of the
 * threshold, its standard error is at most 0.5 points.
 */
final class Precision {
    static final int LEAST = 4096;
    static final int MOST = 200_000;

    private static final double OF_CARRIED = 0.005;
    private static final double OF_START = 0.01;
    private static final double NEAR = 0.03;
    private static final double CHANCE_ERROR = 0.005;
    private static final double MARGIN = 1.05;

    private Precision() {}

    /** Futures a machine's answer needs, judged by those it has; no more than it has if they are enough. */
    static double needed(MachineFutures futures, double threshold) {
        return needed(new Comparison(futures, threshold));
    }

    static double needed(Comparison comparison) {
        double threshold = comparison.threshold();
        double have = comparison.costs(0).length;
        double carried = Math.abs(comparison.mean(0));
        double needed = 0;
        for (int e = 1; e < comparison.entries(); e++) {
            Comparison.Step saving = comparison.step(0, e);
            double wanted = Math.max(OF_CARRIED * carried, OF_START * Math.abs(comparison.start(e)));
            if (saving.standardError() > wanted) {
                needed = Math.max(needed, have * Math.pow(saving.standardError() / wanted, 2) * MARGIN);
            }
            Comparison.Step next = comparison.overNext(e);
            needed = Math.max(needed, neededForChance(saving.chance(), threshold));
            needed = Math.max(needed, next == null ? 0 : neededForChance(next.chance(), threshold));
        }
        return needed;
    }

    private static double neededForChance(double chance, double threshold) {
        boolean near = Math.abs(chance - 0.5) <= NEAR || Math.abs(chance - threshold) <= NEAR;
        return near ? chance * (1 - chance) / (CHANCE_ERROR * CHANCE_ERROR) : 0;
    }
}
