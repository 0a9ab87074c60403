/** Tests of {@code core.ground}. Reference values in {@code ground.tsv}, each with its source. */
@NullMarked
package footing.core.ground;

import org.jspecify.annotations.NullMarked;
