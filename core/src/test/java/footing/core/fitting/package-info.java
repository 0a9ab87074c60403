/** Tests of {@code core.fitting}. Reference values of the deck in {@code deck.tsv}. */
@NullMarked
package footing.core.fitting;

import org.jspecify.annotations.NullMarked;
