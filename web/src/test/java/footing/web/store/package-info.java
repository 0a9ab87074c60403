/** The store: its promises, and that a kill loses nothing it has acknowledged. */
@NullMarked
package footing.web.store;

import org.jspecify.annotations.NullMarked;
