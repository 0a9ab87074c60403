package footing.core.plain;

/** What a flow of money is for. Every part but the trade is money out; {@code TRADE_IN} is positive if money comes in. */
public enum PlainPart {
    PURCHASE,
    RENEWALS,
    REPAIRS,
    CREW_TIME,
    LOST_WORK,
    UPKEEP,
    TRADE_IN;

    /** True for what running the machine costs, as against buying the package and trading the machine. */
    public boolean isRunning() {
        return this != PURCHASE && this != TRADE_IN;
    }
}
