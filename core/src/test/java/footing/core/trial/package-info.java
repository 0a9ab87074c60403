/** Tests of trials: published values from data files, error rates by simulation, limits, and the words of a plan. */
@NullMarked
package footing.core.trial;

import org.jspecify.annotations.NullMarked;
