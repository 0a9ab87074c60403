package footing.core.future;

/** The parts of a cost that come while a machine runs, in the order of {@link Parts}. */
public enum RunningPart {
    RENEWALS(Measure.RENEWALS),
    REPAIRS(Measure.REPAIRS),
    CREW_TIME(Measure.CREW_TIME),
    LOST_WORK(Measure.LOST_WORK),
    UPKEEP(Measure.UPKEEP);

    final int measure;

    RunningPart(int measure) {
        this.measure = measure;
    }

    /** Its present value in a bill of parts. */
    public double in(Parts parts) {
        return switch (this) {
            case RENEWALS -> parts.renewals();
            case REPAIRS -> parts.repairs();
            case CREW_TIME -> parts.crewTime();
            case LOST_WORK -> parts.lostWork();
            case UPKEEP -> parts.upkeep();
        };
    }
}
