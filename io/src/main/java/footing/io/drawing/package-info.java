/**
 * Draws figures without a browser: the page's charting library, run by a JavaScript engine in this process, makes an SVG
 * of the same definition that the page draws.
 *
 * <p>Sees {@code io.figure} and Rhino, which no other package does. Reads no file but the two scripts that come with the
 * program, reaches no network. Sources: none.
 */
@NullMarked
package footing.io.drawing;

import org.jspecify.annotations.NullMarked;
