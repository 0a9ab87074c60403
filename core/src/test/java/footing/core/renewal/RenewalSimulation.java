package footing.core.renewal;

import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** The plainest simulation of renewals: one life after another until the horizon. */
final class RenewalSimulation {

    private final RandomGenerator random;

    RenewalSimulation(long seed) {
        this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** Mean and standard error of a figure over independent runs. */
    record Estimate(double mean, double standardError, double variance) {}

    Estimate estimate(int runs, ToDoubleFunction<RenewalSimulation> figure) {
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            double value = figure.applyAsDouble(this);
            sum += value;
            squares += value * value;
        }
        double mean = sum / runs;
        double variance = (squares - sum * mean) / (runs - 1);
        return new Estimate(mean, Math.sqrt(variance / runs), variance);
    }

    double life(Weibull life) {
        return life.quantile(random.nextDouble());
    }

    double exponential(double mean) {
        return -mean * Math.log1p(-random.nextDouble());
    }

    /** Sum of e^(-rate t) over the renewals in (0, horizon]; their number at rate 0. */
    double discountedRenewals(Weibull life, double rate, double horizon) {
        double sum = 0;
        for (double t = life(life); t <= horizon; t += life(life)) {
            sum += Math.exp(-rate * t);
        }
        return sum;
    }

    /** Flats until a set is worn out, at ages scale · (E1 + … + Ek)^(1/power). */
    int flats(Weibull life, double scale, double power) {
        double worn = life(life);
        int flats = 0;
        for (double sum = exponential(1); scale * Math.pow(sum, 1 / power) <= worn; sum += exponential(1)) {
            flats++;
        }
        return flats;
    }
}
