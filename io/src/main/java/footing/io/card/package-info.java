/**
 * The fitting card: what to do in the bay, in order, with the numbers to reach and boxes for what is measured. The run
 * sheet of a trial: the runs to make, with their cautions. The visor card: a log of flats to fill in.
 *
 * <p>Sees {@code io.paper}, {@code io.sketch}, {@code io.trial} and {@code io.words}. Sources: the order of work and the intervals are
 * common practice, no source; the operator's manual comes before all of it, and torque is taken from nowhere else.
 */
@NullMarked
package footing.io.card;

import org.jspecify.annotations.NullMarked;
