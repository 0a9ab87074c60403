package footing.core.trial;

import org.jspecify.annotations.Nullable;

/**
 * One opposed pull: two machines, a strap between them.
 *
 * @param order place in the order in which they were made
 * @param winner null if neither moved the other
 * @param surface empty if there is only one
 */
public record Bout(int order, @Nullable Side winner, String surface) {}
