/** Tests of paper. */
@NullMarked
package footing.io.paper;

import org.jspecify.annotations.NullMarked;
