/** The pages around a case, without a browser. */
@NullMarked
package footing.web.cases;

import org.jspecify.annotations.NullMarked;
