/** Tests of {@code io.sketch}: to scale, on their sheet, one color. */
@NullMarked
package footing.io.sketch;

import org.jspecify.annotations.NullMarked;
