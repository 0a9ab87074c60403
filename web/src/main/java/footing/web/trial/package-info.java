/**
 * Field trials: begun or handed over, run by run from a phone with or without a line, photos measured, judged on the
 * large screen. It may see the store, the look of figures in {@code web.answer}, core and io. Every trial is read as
 * the file it would be downloaded as, so that page and command line judge the same. Sources: none of its own.
 */
@NullMarked
package footing.web.trial;

import org.jspecify.annotations.NullMarked;
