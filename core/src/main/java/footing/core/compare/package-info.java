/**
 * Two versions of a case side by side, or one case then and now: which inputs differ, how the answers differ, and what
 * each changed input did to that. Its parts add up to the whole.
 *
 * <p>Sees {@code answer}, {@code fleet} and {@code chance}. Source: L. S. Shapley, "A value for n-person games", in
 * Contributions to the Theory of Games II, Annals of Mathematics Studies 28, 1953, pages 307–317.
 */
@NullMarked
package footing.core.compare;

import org.jspecify.annotations.NullMarked;
