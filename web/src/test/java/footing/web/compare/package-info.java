/** The compare page, without a browser. */
@NullMarked
package footing.web.compare;

import org.jspecify.annotations.NullMarked;
