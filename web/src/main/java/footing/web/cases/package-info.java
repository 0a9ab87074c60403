/**
 * The pages around a case: list, a new one by the eight questions, import, history, archive. It may see the store,
 * core and io. The answer itself has its own package.
 */
@NullMarked
package footing.web.cases;

import org.jspecify.annotations.NullMarked;
