/**
 * Photos of a field trial: what is measured of a print on a sheet or beside a card of known size, and of torn turf in
 * a frame, with a picture to check it by eye. Tried on drawn pictures only; what looks doubtful says so.
 *
 * <p>Sees {@code core.ground}, {@code core.quantity} and BoofCV. Sources: perspective from four corners is projective
 * geometry; excess green: D. M. Woebbecke and others, <i>Transactions of the ASAE</i> 38(1), 1995 (from memory); levels
 * that part two populations: N. Otsu, 1979. Limits of what is called sure: measured on pictures drawn by the tests.
 */
@NullMarked
package footing.io.photo;

import org.jspecify.annotations.NullMarked;
