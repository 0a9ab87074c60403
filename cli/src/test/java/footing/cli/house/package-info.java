/**
 * The rules of the house as tests: which module may see which, what the calculation must not touch, how classes are
 * named. They live with the commands since only these see all modules.
 *
 * <p>Classes named {@code specimen} beside it break the rules on purpose. Rules on code style are the compiler's and
 * the formatter's. Sees the compiled classes of all modules; no sources.
 */
@NullMarked
package footing.cli.house;

import org.jspecify.annotations.NullMarked;
