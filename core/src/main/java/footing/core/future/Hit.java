package footing.core.future;

/**
 * A hit on a tire in one future, and what it costs where it is a flat. An object, not a row of many arrays: a flat reads
 * a dozen of its numbers, which so lie together. Used again in later futures.
 */
final class Hit {
    double hour;
    /** The uniform that decides whether it is a flat. */
    double acceptance;

    int fix;
    /** j, its number among the hits of the future. */
    int number;
    /** True if what follows is worked out. */
    boolean told;

    /** Among the operating days. */
    double place;

    /** Step of the grid over the hours left, and calendar year from that of asOf. */
    int step;

    int year;
    double present;
    double nominal;
    double delay;
    double down;
    double displaced;
    double lostHours;
    double madeUp;
    double after;
    double crewTime;
    double lostWork;
    /** Present and nominal value of the crew time and the lost work. */
    double crewPresent;

    double lostPresent;
    double crewNominal;
    double lostNominal;
}
