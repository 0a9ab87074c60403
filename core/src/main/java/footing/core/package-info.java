@NullMarked
package footing.core;

import org.jspecify.annotations.NullMarked;
