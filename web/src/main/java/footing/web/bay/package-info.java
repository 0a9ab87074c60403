/**
 * The page of the bay: whether wheels fit a machine, its set-up, what it does on the ground, what was measured after
 * fitting, and the fitting card. Sees {@code web.store} and, of the rest, only {@code core} and {@code io}.
 *
 * <p>Sources: none; every slope figure stands beside its caution.
 */
@NullMarked
package footing.web.bay;

import org.jspecify.annotations.NullMarked;
