/** Tests of what is taken away. */
@NullMarked
package footing.web.take;

import org.jspecify.annotations.NullMarked;
