/** Tests of drawing. */
@NullMarked
package footing.io.drawing;

import org.jspecify.annotations.NullMarked;
