/**
 * Drawings to scale of wheels and machines: prints side by side, a machine on a side slope with its wheel loads, the deck
 * before and after, the bolt circle, pressure against inflation. Made once, for the page and for paper.
 *
 * <p>Sees {@code core.ground}, {@code core.fitting} and {@code io.words}; works out no figure of its own, only where on
 * the sheet one lies. Drawn in the color of the text around it: what has to be told apart differs in line, never in
 * color alone. Sources: none.
 */
@NullMarked
package footing.io.sketch;

import org.jspecify.annotations.NullMarked;
