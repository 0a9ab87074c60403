/**
 * What an instrument's log says of a run: the weighted shaking of an accelerometer, the pull of a load cell and when
 * the wheel let go. Logs as phones write them, with unsteady clocks, gaps and clipped peaks, which are told.
 *
 * <p>Sees Hipparchus alone. Sources: ISO 2631-1:1997 and ISO 8041 for the weightings (parameters as reprinted in an
 * instrument's manual); limits of what counts as a gap, a peak or a slip: common practice, no source.
 */
@NullMarked
package footing.core.signal;

import org.jspecify.annotations.NullMarked;
