/** Photos against pictures drawn with known truth. */
@NullMarked
package footing.io.photo;

import org.jspecify.annotations.NullMarked;
