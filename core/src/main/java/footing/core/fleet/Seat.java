package footing.core.fleet;

/** How a lug nut seats in the wheel: kinds are never mixed. */
public enum Seat {
    CONE,
    FLAT,
    BALL
}
