/**
 * Measurements of speed and memory. Nothing of the product sees this package; it sees {@code io} and below.
 *
 * <p>Times are by JMH, on warmed-up code. A measurement prints what it ran on; it never decides a test.
 */
@NullMarked
package footing.bench;

import org.jspecify.annotations.NullMarked;
