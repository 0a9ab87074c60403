/**
 * What a shop's records teach: how often tires go flat, whether worn ones do so more, how long sets last, how many
 * hours are left in a tread, what is done about a flat. Few records give wide answers, none gives the stated prior.
 *
 * <p>Sees {@code chance} and Hipparchus alone; reads no file. Sources stand with each class: Garwood (1936), George,
 * Makov and Smith (1993), Kaplan and Meier (1958), Crow (1974), Fieller (1954).
 */
@NullMarked
package footing.core.records;

import org.jspecify.annotations.NullMarked;
