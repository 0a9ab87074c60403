/**
 * The futures of one machine: its days on the calendar, what is drawn in a future, and what each wheel package costs
 * in it.
 *
 * <p>Sees {@code chance}, {@code money} and {@code fleet}. Works on arrays of primitives, allocates nothing per event
 * and knows no threads. Sources: the model is Footing's own; the encounters are a thinned Poisson process (Lewis and
 * Shedler 1979).
 */
@NullMarked
package footing.core.future;

import org.jspecify.annotations.NullMarked;
