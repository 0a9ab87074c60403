package footing.core.records;

import java.util.List;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Whether the machines of one crew go flat more differently than chance makes them, each counted over its hours on air
 * tires. Both statistics are nearly chi-squared with {@code machines − 1} degrees of freedom if one rate fits all.
 *
 * <p>Source: P. McCullagh, J. A. Nelder, "Generalized Linear Models", 2nd edition, 1989, sections 2.3 and 6.2 (from
 * memory).
 *
 * @param machines with hours
 * @param deviance 2Σ x ln(x/e), x the flats of a machine and e those expected of it at the common rate
 * @param pearson Σ (x − e)²/e, which fits few flats better
 */
public record CrewContrast(int machines, double flats, double hours, double deviance, double pearson) {
    private static final double FEWEST_EXPECTED = 1;
    private static final double SURE = 0.95;

    public static CrewContrast of(List<CrewRates.Counted> counted) {
        List<CrewRates.Counted> seen =
                counted.stream().filter(c -> c.hours() > 0).toList();
        double flats = seen.stream().mapToDouble(CrewRates.Counted::events).sum();
        double hours = seen.stream().mapToDouble(CrewRates.Counted::hours).sum();
        double deviance = 0;
        double pearson = 0;
        for (CrewRates.Counted c : seen) {
            double expected = hours > 0 ? flats * c.hours() / hours : 0;
            deviance += c.events() > 0 ? 2 * c.events() * Math.log(c.events() / expected) : 0;
            pearson += expected > 0 ? (c.events() - expected) * (c.events() - expected) / expected : 0;
        }
        return new CrewContrast(seen.size(), flats, hours, deviance, pearson);
    }

    /** Flats per hour of all machines together. */
    public double rate() {
        return flats / hours;
    }

    /** True if so few flats were seen that the test says nothing. */
    public boolean tooFew() {
        return machines < 2 || !(flats / machines >= FEWEST_EXPECTED);
    }

    /** True if the machines differ by more than chance at 95 %. */
    public boolean differs() {
        return !tooFew() && pearson > new ChiSquaredDistribution(machines - 1.0).inverseCumulativeProbability(SURE);
    }
}
