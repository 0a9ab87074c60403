/** Tests of logs: the standard's table, sines of known weight, and what damages a log. */
@NullMarked
package footing.core.signal;

import org.jspecify.annotations.NullMarked;
