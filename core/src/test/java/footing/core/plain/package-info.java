/**
 * The money model once more, plain and slow: one future at a time, written rule by rule, nothing kept or shared
 * between futures. The fast simulation is compared with it future by future.
 *
 * <p>Sees {@code chance}, {@code fleet} and the keys of the draws; never the code it checks. Sources: the rules are
 * Footing's own.
 */
@NullMarked
package footing.core.plain;

import org.jspecify.annotations.NullMarked;
