/**
 * What wheels and tires do to the ground and to the machine on it: contact patch and ground pressure, hold and tip on a
 * slope, scrub in a turn, speed, mass on the axles. Pure functions from few measurements; where a relation stops
 * holding the answer says so instead of a number ({@link footing.core.ground.Judged}). Static figures are no permission
 * to mow a slope.
 *
 * <p>Sees {@code core.quantity} and {@code core.fleet}. Sources are cited where used; {@code docs/sources.md} lists
 * them. Relations fitted on farm tires are left out: at this size they give nonsense.
 */
@NullMarked
package footing.core.ground;

import org.jspecify.annotations.NullMarked;
