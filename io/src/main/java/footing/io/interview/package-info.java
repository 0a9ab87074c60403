/**
 * The interview a new case begins with: eight questions as a counter adviser would ask them, defined once as data for
 * command line and page, the guesses that stand for 'don't know', and the case file written from the answers.
 *
 * <p>Sees {@code io.catalog}, {@code io.form}, {@code io.words} and {@code core}. Sources: every guess is common
 * practice, no source; prices come from the starter catalog.
 */
@NullMarked
package footing.io.interview;

import org.jspecify.annotations.NullMarked;
