/** That nobody gets what is not theirs, and that nothing sent here breaks it. */
@NullMarked
package footing.web.safety;

import org.jspecify.annotations.NullMarked;
