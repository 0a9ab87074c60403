/**
 * What Footing says in plain language: sentences, names and rounded numbers, the same on the terminal, the page and on
 * paper.
 *
 * <p>Pure functions of an {@link footing.core.answer.Answer}; nothing here lays out lines, reads files or computes a
 * figure anew. Sees {@code core} and {@code io.form} for how a number is written. Sources: none, all words are our own.
 */
@NullMarked
package footing.io.words;

import org.jspecify.annotations.NullMarked;
