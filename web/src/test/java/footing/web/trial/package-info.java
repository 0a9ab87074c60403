/** Field trials over HTTP. */
@NullMarked
package footing.web.trial;

import org.jspecify.annotations.NullMarked;
