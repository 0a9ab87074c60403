package footing.core.fleet;

import footing.core.chance.Spread;

/** A number in force, where it comes from and, for a default, why it is what it is. */
public record InForce(Input input, Spread value, Origin origin, String why) {}
