package footing.core.future;

import footing.core.chance.Draws;
import footing.core.chance.Spread;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Draws that machines of one case, and moved versions of one machine, have in common: what is unknown of an assembly or
 * a crew in a run of futures, worked out once. It only remembers; who finds nothing draws the same values anew.
 */
public final class SharedDraws {
    /** Columns remembered at most, 2 MB: those of the runs of futures at work, with room for a moved one or two. */
    private static final int MOST = 128;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private final Map<Column, double[]> known = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Column, double[]> eldest) {
            return size() > MOST;
        }
    };

    private record Column(long key, Object of, int from, int to) {}

    /** What is drawn of a quantity in futures {@code from} to {@code to}; the caller must not change it. */
    double[] of(Spread spread, long key, int from, int to) {
        return column(new Column(key, spread, from, to), spread.isFixed() ? u -> spread.likely() : spread::draw);
    }

    /** The same of a factor whose logarithm is normal around 0 with a standard deviation. */
    double[] ofFactor(double deviation, long key, int from, int to) {
        return column(
                new Column(key, deviation, from, to),
                u -> Math.exp(deviation * NORMAL.inverseCumulativeProbability(u)));
    }

    private double[] column(Column column, DoubleUnaryOperator quantile) {
        synchronized (known) {
            double[] found = known.get(column);
            if (found != null) {
                return found;
            }
        }
        double[] drawn = new double[column.to - column.from];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = quantile.applyAsDouble(Draws.uniform(Draws.future(column.key, column.from + i), 0));
        }
        synchronized (known) {
            known.put(column, drawn);
        }
        return drawn;
    }
}
