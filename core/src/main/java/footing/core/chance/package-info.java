/**
 * Probability without randomness of its own: the three-point distribution a case states, keyed uniform draws that
 * are the same on any number of threads, and order statistics.
 *
 * <p>Sees nothing else of Footing. Sources: Keelin (2016) for the metalog; Steele, Lea and Flood (2014) for the
 * mixing function; Hyndman and Fan (1996) for the quantile definition.
 */
@NullMarked
package footing.core.chance;

import org.jspecify.annotations.NullMarked;
