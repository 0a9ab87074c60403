/**
 * Side-by-side field trials: runs of two things compared are paired, their difference gets an interval, and the verdict
 * is 'better', 'alike' or 'not enough runs to tell'. Also how many pairs a question needs, and a randomized plan.
 *
 * <p>Sees {@code core.chance} for keyed draws, and Hipparchus. Sources: Student (1908); Schuirmann (1987); Hauschke and
 * others (1999) for margins that are a share of the mean. Tolerances for conditions: common practice, no source.
 */
@NullMarked
package footing.core.trial;

import org.jspecify.annotations.NullMarked;
