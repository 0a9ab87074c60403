@NullMarked
package footing.io;

import org.jspecify.annotations.NullMarked;
