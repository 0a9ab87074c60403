/**
 * A case: what one contractor states of crews, assemblies, packages and machines, and the same resolved, with every
 * default filled in, into one self-contained question per machine.
 *
 * <p>Sees {@code chance} and {@code money}. Every default of the product stands in {@link footing.core.fleet.Key}
 * with where it comes from.
 */
@NullMarked
package footing.core.fleet;

import org.jspecify.annotations.NullMarked;
