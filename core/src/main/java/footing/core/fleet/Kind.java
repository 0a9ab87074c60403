package footing.core.fleet;

/** What keeps a tire up. */
public enum Kind {
    AIR,
    SEALANT,
    FOAM,
    SOLID,
    AIRLESS;

    /** True for the kinds that lose air: they can go flat from any cause. */
    public boolean holdsAir() {
        return this == AIR || this == SEALANT;
    }
}
