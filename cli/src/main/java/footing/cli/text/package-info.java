/**
 * Lays out answers for a terminal: lines of at most 80 columns, in letters the terminal can show.
 *
 * <p>Puts the sentences of {@code io.words} and the figures of {@code core.answer} into lines and columns; words
 * nothing of weight and computes nothing itself. Sees {@code core} and {@code io}. Sources: none.
 */
@NullMarked
package footing.cli.text;

import org.jspecify.annotations.NullMarked;
