/**
 * The pages of the bay: whether wheels fit a machine and its set-up, what it does on the ground, boxes for all that is
 * measured of it, and the fitting card. Sees {@code web.store}, the boxes and their saving of {@code web.answer} and, of
 * the rest, only {@code core} and {@code io}.
 *
 * <p>Sources: none; every slope figure stands beside its caution.
 */
@NullMarked
package footing.web.bay;

import org.jspecify.annotations.NullMarked;
