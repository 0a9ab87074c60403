/**
 * Two versions of a case, or two cases, side by side: which to look at, the comparison run in the background, what the
 * page shows of it. It may see the store, the words of {@code web.cases}, the figures of {@code web.answer}, core and
 * io. Nothing here works out a figure of its own. Sources: none.
 */
@NullMarked
package footing.web.compare;

import org.jspecify.annotations.NullMarked;
