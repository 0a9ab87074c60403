package footing.io.words;

import footing.core.fleet.Measures;
import footing.core.ground.TakenPrints;
import java.util.List;

/** What prints taken in trials do to the answers about the ground, in words. */
public final class TakenWords {
    private TakenWords() {}

    /** Where the print of an assembly comes from: when, how many, in which trial. */
    public static String of(Measures.Printed printed) {
        return "The print of " + printed.assembly() + " was measured: "
                + (printed.count() == 1 ? "one print" : "the mean of " + Figures.word(printed.count()) + " prints")
                + days(printed.days()) + ", in the trial" + (printed.trials().size() == 1 ? " '" : "s '")
                + Lists.and(printed.trials()) + "'. It stands for the pressure it was taken at alone.";
    }

    private static String days(List<String> days) {
        return switch (days.size()) {
            case 0 -> ", day not noted";
            case 1 -> " on " + days.get(0);
            default -> " from " + days.get(0) + " to " + days.get(days.size() - 1);
        };
    }

    /** Why prints change nothing. */
    public static String of(TakenPrints.Unused unused) {
        return Lists.capital(Figures.counted(unused.count(), "print")) + " of " + unused.assembly() + " in the trials "
                + (unused.count() == 1 ? "changes" : "change") + " nothing: " + why(unused.why());
    }

    private static String why(TakenPrints.Why why) {
        return switch (why) {
            case UNKNOWN_ASSEMBLY -> "no assembly of the case has this id";
            case NO_LOAD -> "the load on the wheel is not noted";
            case OTHER_LOAD -> "the load is more than a twentieth off that of the others";
            case NO_PRESSURE -> "the pressure is not noted";
            case NOT_RUN_AT -> "the case doesn't say at which pressure this tire is run";
            case OTHER_PRESSURE -> "taken at another pressure than this tire is run at";
        };
    }

    /** What to do about it. */
    public static String advice(TakenPrints.Why why) {
        return switch (why) {
            case UNKNOWN_ASSEMBLY -> "name it at the side of the trial: assembly: drive24-air";
            case NO_LOAD -> "note it in the trial: atLoad: 500 lb";
            case OTHER_LOAD -> "take them under one load";
            case NO_PRESSURE -> "note it in the trial: pressure: 12 psi";
            case NOT_RUN_AT -> "state it in the case: pressure: 12 psi";
            case OTHER_PRESSURE -> "take them at the pressure it is run at";
        };
    }
}
