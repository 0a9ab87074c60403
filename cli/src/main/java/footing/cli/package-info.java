@NullMarked
package footing.cli;

import org.jspecify.annotations.NullMarked;
