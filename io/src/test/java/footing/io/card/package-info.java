/** Tests of {@code io.card}: the card printed and read back. */
@NullMarked
package footing.io.card;

import org.jspecify.annotations.NullMarked;
