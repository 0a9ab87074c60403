/**
 * What somebody takes away from a case: the answer as a file, from the same answer as the page shows. It may see the
 * store, the running of answers and io. Nothing here works out a figure of its own.
 */
@NullMarked
package footing.web.take;

import org.jspecify.annotations.NullMarked;
