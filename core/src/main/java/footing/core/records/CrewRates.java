package footing.core.records;

import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * The flats' rates of the machines of one crew, which share their ground: machine i had x of them in t hours, its rate
 * is drawn from a gamma distribution common to the crew, and that one's shape and rate are themselves unknown.
 *
 * <p>Full Bayes: the two are summed over on a grid, not fixed at their best guess, since with few machines the plug-in
 * forgets how unsure they are. Machines with few hours lean on the rest of the crew; one with many speaks for itself.
 * A machine without hours gets what the crew says of any machine; with no hours at all that is the prior.
 *
 * <p>Source: E. I. George, U. E. Makov, A. F. M. Smith, "Conjugate Likelihood Distributions", Scandinavian Journal of
 * Statistics 20 (1993) 147–156 (the model); the grid is ours.
 */
public final class CrewRates {
    /** Bounds of what is thinkable: a flat in an hour to one in a million hours; machines alike to all different. */
    private static final Grid.Box WIDEST = new Grid.Box(Math.log(1e-6), Math.log(1e3), Math.log(0.02), Math.log(5e3));

    private static final double NEGLIGIBLE = 1e-6;
    private static final int POINTS = 400;

    private final List<Counted> machines;
    private final List<Grid.Cell> cells;
    private final Grid grid;

    /** So many events in so many hours; neither needs to be whole, since doubtful counts weigh less. */
    public record Counted(double events, double hours) {
        public Counted {
            if (!(events >= 0 && hours >= 0 && events < 1e9 && hours < 1e12)) {
                throw new IllegalArgumentException(events + " events in " + hours + " hours: neither may be below 0");
            }
            if (events > 0 && hours == 0) {
                throw new IllegalArgumentException(events + " events in no hours");
            }
        }
    }

    /** What is held of the crew's gamma distribution before its records. */
    @FunctionalInterface
    public interface Prior {
        /** Log density over (ln shape, ln rate), up to a constant. */
        double log(double shape, double rate);
    }

    private CrewRates(List<Counted> machines, Prior prior) {
        this.machines = List.copyOf(machines);
        // u = ln(shape/rate), the crew's mean, and v = ln(shape): the change of coordinates keeps areas.
        grid = Grid.of(
                (u, v) -> {
                    double shape = Math.exp(v);
                    double rate = Math.exp(v - u);
                    return prior.log(shape, rate) + logLikelihood(this.machines, shape, rate);
                },
                WIDEST);
        cells = grid.cells(NEGLIGIBLE);
    }

    public static CrewRates of(List<Counted> machines, Prior prior) {
        return new CrewRates(machines, prior);
    }

    /** Log chance of the counts if the crew's distribution were known: negative binomial, constants included. */
    static double logLikelihood(List<Counted> machines, double shape, double rate) {
        double log = 0;
        for (Counted m : machines) {
            if (m.hours > 0) {
                log += shape * Math.log(rate / (rate + m.hours));
            }
            if (m.events > 0) {
                log += Gamma.logGamma(shape + m.events)
                        - Gamma.logGamma(shape)
                        - Gamma.logGamma(m.events + 1)
                        + m.events * Math.log(m.hours / (rate + m.hours));
            }
        }
        return log;
    }

    public double meanShape() {
        return grid.mean((u, v) -> Math.exp(v));
    }

    /** Posterior mean of the crew's gamma rate, in hours. */
    public double meanRate() {
        return grid.mean((u, v) -> Math.exp(v - u));
    }

    /** Posterior mean of a machine's rate, events per hour. */
    public double mean(int machine) {
        Counted m = machines.get(machine);
        return grid.mean((u, v) -> (Math.exp(v) + m.events) / (Math.exp(v - u) + m.hours));
    }

    /** Posterior standard deviation of a machine's rate. */
    public double deviation(int machine) {
        Counted m = machines.get(machine);
        double mean = mean(machine);
        return Math.sqrt(grid.mean((u, v) -> {
            double rate = Math.exp(v - u) + m.hours;
            double own = (Math.exp(v) + m.events) / rate;
            return own / rate + (own - mean) * (own - mean);
        }));
    }

    /** What is known of a machine's rate, events per hour. */
    public Posterior rate(int machine) {
        return mixture(machines.get(machine));
    }

    private Posterior mixture(Counted m) {
        int n = cells.size();
        double[] shapes = new double[n];
        double[] rates = new double[n];
        double[] constants = new double[n];
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            Grid.Cell c = cells.get(i);
            double a = Math.exp(c.v()) + m.events;
            double b = Math.exp(c.v() - c.u()) + m.hours;
            shapes[i] = a;
            rates[i] = b;
            constants[i] = Math.log(c.weight()) + a * Math.log(b) - Gamma.logGamma(a);
            if (c.weight() > 1e-4) {
                low = Math.min(low, Math.max(lowEnd(a), -60) - Math.log(b));
                high = Math.max(high, Math.log(a + 6 * Math.sqrt(a) + 12) - Math.log(b));
            }
        }
        double[] density = new double[POINTS];
        for (int k = 0; k < POINTS; k++) {
            double z = low + (high - low) * k / (POINTS - 1);
            double x = Math.exp(z);
            for (int i = 0; i < n; i++) {
                density[k] += Math.exp(constants[i] + shapes[i] * z - rates[i] * x);
            }
        }
        return new Posterior(low, high, density);
    }

    /** The logarithm below which a gamma distribution with rate 1 has a millionth: series or normal, the lower. */
    private static double lowEnd(double shape) {
        double series = (Math.log(1e-6) + Gamma.logGamma(shape + 1)) / shape;
        double cube = 1 - 1 / (9 * shape) - 4.8 / (3 * Math.sqrt(shape));
        return cube > 0.2 ? Math.min(Math.log(shape) + 3 * Math.log(cube), Math.log(shape)) : series;
    }
}
