package footing.core.trial;

import java.util.List;

/**
 * What a trial asks.
 *
 * @param goal which way is better, usually that of the kind
 * @param margin stated before the runs were made
 * @param heldEqual what was kept the same, in the user's words
 */
public record Question(TrialKind kind, Goal goal, Margin margin, List<String> heldEqual) {
    public Question {
        heldEqual = List.copyOf(heldEqual);
    }
}
