/**
 * Renewal theory in closed or nearly closed form, to check simulations of sets that wear out and are renewed. Tests
 * only; sources: Tijms, A First Course in Stochastic Models (2003), and elementary renewal theory.
 */
@NullMarked
package footing.core.renewal;

import org.jspecify.annotations.NullMarked;
