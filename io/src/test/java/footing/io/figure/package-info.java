/** Figures against the answers they are made from: every value drawn is a value of the answer. */
@NullMarked
package footing.io.figure;

import org.jspecify.annotations.NullMarked;
