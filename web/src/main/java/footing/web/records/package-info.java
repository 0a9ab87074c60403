/**
 * What a shop wrote down: sheets handed over and mended, what they teach, rows written on a phone, and what came of
 * what was expected. It may see the store, the look of figures in {@code web.answer}, core and io. Nothing a person
 * handed over is ever changed or thrown away: mends and marks stand beside it.
 */
@NullMarked
package footing.web.records;

import org.jspecify.annotations.NullMarked;
