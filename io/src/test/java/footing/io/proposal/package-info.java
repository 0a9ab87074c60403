/** Tests of the proposal. */
@NullMarked
package footing.io.proposal;

import org.jspecify.annotations.NullMarked;
