package footing.core.fleet;

/**
 * The name of one number of a case: its key, whose it is (a crew, assembly, machine; empty for money) and, for a list
 * or a map below that, which one (the index of a fix or full week, the package of an upcharge).
 */
public record Input(Key key, String owner, String part) {
    public static Input of(Key key, String owner) {
        return new Input(key, owner, "");
    }

    /** The place in the case file, such as {@code crews.north.fixes[1].delay}. */
    public String path() {
        return switch (key.place()) {
            case MONEY -> "money." + key.key();
            case LOAN -> "money.loan." + key.key();
            case TAX -> "money.tax." + key.key();
            case CREW -> "crews." + owner + "." + key.key();
            case FULL_WEEK -> "crews." + owner + ".fullWeeks[" + part + "]." + key.key();
            case FIX -> "crews." + owner + ".fixes[" + part + "]." + key.key();
            case ASSEMBLY -> "assemblies." + owner + "." + key.key();
            case MACHINE -> "machines." + owner + "." + key.key() + (part.isEmpty() ? "" : "." + part);
        };
    }
}
