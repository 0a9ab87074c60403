package footing.core.money;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What each of several options brings in each of several states of the world, and what it would be worth to know the
 * state beforehand.
 *
 * <p>Source: the standard decision table of textbooks, for example Anderson, Sweeney & Williams, decision analysis.
 *
 * @param payoffs one row per option, one column per state; larger is better; at least one of each, all finite
 * @param probabilities of the states, each 0 to 1, adding up to 1
 */
public record PayoffTable(List<List<Double>> payoffs, List<Double> probabilities) {

    private static final double SUM_TOLERANCE = 1e-9;

    public PayoffTable {
        payoffs = payoffs.stream().map(List::copyOf).toList();
        probabilities = List.copyOf(probabilities);
        int states = probabilities.size();
        if (payoffs.isEmpty() || payoffs.stream().anyMatch(row -> row.size() != states)) {
            throw new IllegalArgumentException("payoffs are " + payoffs + ", must be rows of " + states
                    + " numbers\nGive every option one payoff per state.");
        }
        payoffs.forEach(row -> row.forEach(payoff -> Inputs.finite("payoff", payoff)));
        double sum = probabilities.stream()
                .mapToDouble(p -> Inputs.share("probability", p))
                .sum();
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            throw new IllegalArgumentException(
                    "probabilities add up to " + sum + ", must add up to 1\nList every state once.");
        }
    }

    /**
     * Expected payoff of each option: Σ p_s · payoff.
     *
     * @return one per option
     */
    public double[] expected() {
        return payoffs.stream().mapToDouble(this::mean).toArray();
    }

    /**
     * Expected payoff when the state is known before choosing: Σ p_s · max over the options.
     *
     * @return at least the best of {@link #expected}
     */
    public double expectedWhenKnown() {
        return mean(bestByState());
    }

    /**
     * Expected value of perfect information EVPI: what knowing the state is worth before it is known.
     *
     * @return {@link #expectedWhenKnown} less the best of {@link #expected}, at least 0 but for rounding
     */
    public double perfectInformation() {
        return expectedWhenKnown() - Arrays.stream(expected()).max().orElseThrow();
    }

    /**
     * Expected opportunity loss of each option: Σ p_s · (best payoff in the state less the option's). The smallest equals
     * the value of perfect information.
     *
     * @return one per option, at least 0
     */
    public double[] opportunityLosses() {
        List<Double> best = bestByState();
        return payoffs.stream()
                .mapToDouble(row -> mean(IntStream.range(0, row.size())
                        .mapToObj(s -> best.get(s) - row.get(s))
                        .toList()))
                .toArray();
    }

    private List<Double> bestByState() {
        return IntStream.range(0, probabilities.size())
                .mapToObj(s ->
                        payoffs.stream().mapToDouble(row -> row.get(s)).max().orElseThrow())
                .toList();
    }

    private double mean(List<Double> values) {
        return IntStream.range(0, values.size())
                .mapToDouble(s -> probabilities.get(s) * values.get(s))
                .sum();
    }
}
