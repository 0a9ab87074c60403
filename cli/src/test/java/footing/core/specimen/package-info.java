/** Classes that break the rules of the house on purpose, so that the rules can be seen to fail. */
@NullMarked
package footing.core.specimen;

import org.jspecify.annotations.NullMarked;
