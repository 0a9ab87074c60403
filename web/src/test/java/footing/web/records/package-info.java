/** Records over HTTP and below. */
@NullMarked
package footing.web.records;

import org.jspecify.annotations.NullMarked;
