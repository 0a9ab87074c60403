/**
 * Measures on photographs: the print of a tire on a sheet of known size, and how much of the turf in the ring a wheel
 * swept is bare. Every result comes with a picture to check it by, and with what makes it unsure. Tried on drawn
 * pictures only.
 *
 * <p>Sees {@code io.words} for numbers, Hipparchus and BoofCV. Sources: plane homography (common knowledge); Hallonborg (1996) for
 * the super-ellipse; Woebbecke and others (1995) for excess green; EXIF 2.3 for the orientation.
 */
@NullMarked
package footing.io.photo;

import org.jspecify.annotations.NullMarked;
