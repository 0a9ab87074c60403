package footing.core.fleet;

/** Which part of a case a key belongs to. */
public enum Place {
    MONEY,
    LOAN,
    TAX,
    CREW,
    FULL_WEEK,
    FIX,
    ASSEMBLY,
    MACHINE
}
