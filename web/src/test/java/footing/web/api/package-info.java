/** The page for programs. */
@NullMarked
package footing.web.api;

import org.jspecify.annotations.NullMarked;
