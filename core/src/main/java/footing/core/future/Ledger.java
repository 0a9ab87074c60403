package footing.core.future;

/** Told what happens in a course, for those who must explain a figure. The simulation itself needs none. */
interface Ledger {
    /** A hit is a flat of the set that is on. */
    void flat(Hit hit, Article on);

    /** One tire is replaced on its wheel, or both sides where {@code both}. */
    void tires(Article on, boolean both, double present);

    /** A set comes off and another is fitted at hour x, at a place among the operating days. */
    void renewal(Article off, Article fitted, double x, double place, double present);

    /** A set ran until hour x, since it was fitted; how many hours that is as present value. */
    void ran(Article on, double x, double presentHours);

    /** The set on the machine at the trade, used for a share of its life; whether the package changed this position. */
    void trade(Article on, double age, boolean changes);
}
