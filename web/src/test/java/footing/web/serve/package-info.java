/** The page as a process of its own. */
@NullMarked
package footing.web.serve;

import org.jspecify.annotations.NullMarked;
