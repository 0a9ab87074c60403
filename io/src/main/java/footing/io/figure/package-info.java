/**
 * The charts of an answer as data: what is drawn, on which axes, in which kind of line, with which words. The page and
 * the paper draw the same definitions, and the table behind a chart is made from the same points.
 *
 * <p>Pure functions of an {@link footing.core.answer.Answer}. Sees {@code core} and {@code io.words}; draws nothing
 * itself. Sources: none.
 */
@NullMarked
package footing.io.figure;

import org.jspecify.annotations.NullMarked;
