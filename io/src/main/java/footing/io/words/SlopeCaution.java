package footing.io.words;

import footing.core.ground.MachineGround;

/** What stands beside every slope figure, on every surface. */
public final class SlopeCaution {
    /** The caution as such. */
    public static final String TEXT = "Static figures are no permission to mow a slope: they are worked out for a"
            + " machine that stands still on even ground. The operator's manual and local rules come first; where no"
            + " limit is given, 15 degrees is the usual ceiling (California Code of Regulations, Title 8, section"
            + " 3563).";

    private SlopeCaution() {}

    /** With the limit that holds for a machine. */
    public static String of(MachineGround ground) {
        String limit = Figures.decimals(ground.ceiling().degrees(), 1) + " degrees";
        return TEXT
                + (ground.ceilingStated()
                        ? " The case states " + limit + " as the manual's limit for "
                                + ground.machine().id() + "."
                        : " No limit is stated for " + ground.machine().id() + ".");
    }
}
