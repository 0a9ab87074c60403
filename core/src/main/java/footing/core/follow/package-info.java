/**
 * Whether it came true: a forecast made at the time, what a shop's log has told since, and how the two stand to each
 * other; how far each set is into its warranty.
 *
 * <p>Sees {@code fleet}, {@code future}, {@code records} and {@code answer}; reads no file and asks no clock. The bands
 * are percentiles of Footing's own futures.
 */
@NullMarked
package footing.core.follow;

import org.jspecify.annotations.NullMarked;
