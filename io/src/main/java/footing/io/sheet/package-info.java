/**
 * What all tables share that leave the program: which texts a spreadsheet could take for a formula, and comma-separated
 * values.
 *
 * <p>Sees of io only how numbers are written. Sources: RFC 4180 for comma-separated values; which first letters start a formula
 * is common practice, no source.
 */
@NullMarked
package footing.io.sheet;

import org.jspecify.annotations.NullMarked;
