/** Classes that break the rules of the house on purpose, so that the rules can be seen to fail. */
@NullMarked
package footing.io.specimen;

import org.jspecify.annotations.NullMarked;
