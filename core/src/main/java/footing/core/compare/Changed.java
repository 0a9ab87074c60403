package footing.core.compare;

import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import org.jspecify.annotations.Nullable;

/**
 * An input that differs.
 *
 * @param before null if it was not there, such as the upcharge of a package
 * @param after null if it is no longer there
 * @param follows true if nobody stated it in either version: a default that moved with what it is taken from
 */
public record Changed(
        Input input, @Nullable InForce before, @Nullable InForce after, boolean follows) {}
