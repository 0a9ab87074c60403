/**
 * The bay: whether wheels fit a machine, what they change on it, the hanger turns that restore its deck, and whether
 * what was measured afterwards reaches the targets. An unknown dimension is never taken to fit.
 *
 * <p>Sees {@code core.fleet}, {@code core.ground} and {@code core.quantity}. Sources: geometry is derived; what gaps and
 * tolerances are usual is common practice, no source, and the operator's manual comes first.
 */
@NullMarked
package footing.core.fitting;

import org.jspecify.annotations.NullMarked;
