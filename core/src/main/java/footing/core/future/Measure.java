package footing.core.future;

/** The columns of {@link CourseSums#totals}. The first five are the running parts of the cost. */
final class Measure {
    static final int RENEWALS = 0;
    static final int REPAIRS = 1;
    static final int CREW_TIME = 2;
    static final int LOST_WORK = 3;
    static final int UPKEEP = 4;
    static final int RUNNING_PARTS = 5;
    /** Worth at the trade, today's money. */
    static final int TRADE = 5;

    static final int FLATS = 6;
    static final int SETS = 7;
    static final int DOWN_HOURS = 8;
    static final int DISPLACED_HOURS = 9;
    static final int LOST_HOURS = 10;
    /** Nominal running parts up to the end of the loan test. */
    static final int MONTHLY = 11;

    static final int COUNT = 12;

    private Measure() {}
}
