package footing.core.future;

/** The parts of a cost. {@code tradeIn} is positive when it is money in; every other part when it is money out. */
public record Parts(
        double purchase,
        double renewals,
        double repairs,
        double crewTime,
        double lostWork,
        double upkeep,
        double tradeIn) {
    public static final Parts NONE = new Parts(0, 0, 0, 0, 0, 0, 0);

    public double cost() {
        return purchase + renewals + repairs + crewTime + lostWork + upkeep - tradeIn;
    }

    /** What shows on a parts bill alone: purchase, renewals, repairs, less the trade. */
    public double goods() {
        return purchase + renewals + repairs - tradeIn;
    }

    /** The goods and the time paid for. */
    public double goodsAndTime() {
        return goods() + crewTime + upkeep;
    }
}
