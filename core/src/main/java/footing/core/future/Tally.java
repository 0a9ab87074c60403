package footing.core.future;

import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What happens under one entry, counted: each event weighted by what a price of today counts for then, averaged over
 * futures. The running parts of a cost are sums of these counts times stated prices, so they explain it.
 */
public final class Tally implements Ledger {
    private final double each;
    private final double[] flats;
    private double madeUp;
    private double after;
    private double lost;
    private final SortedMap<String, Double> tires = new TreeMap<>();
    private final SortedMap<String, Double> bothTires = new TreeMap<>();
    private final SortedMap<Renewal, Double> renewals = new TreeMap<>();
    private final SortedMap<String, Double> hoursRun = new TreeMap<>();
    private final SortedMap<String, AtTrade> trades = new TreeMap<>();

    /** A set of one assembly coming off and one of another (or the same) going on. */
    public record Renewal(String off, String fitted) implements Comparable<Renewal> {
        @Override
        public int compareTo(Renewal other) {
            int byOff = off.compareTo(other.off);
            return byOff != 0 ? byOff : fitted.compareTo(other.fitted);
        }
    }

    /**
     * An assembly that is on the machine at the trade, as a mean over futures, not discounted.
     *
     * @param unusedSold share of a set's life unused where it goes with the machine
     * @param overwornSold how far beyond half its life where it goes with the machine, 0 to 1
     * @param unusedMoved share unused where the set moves to the next machine
     * @param moved share of futures in which it moves
     */
    public record AtTrade(double unusedSold, double overwornSold, double unusedMoved, double moved) {
        AtTrade plus(AtTrade other) {
            return new AtTrade(
                    unusedSold + other.unusedSold,
                    overwornSold + other.overwornSold,
                    unusedMoved + other.unusedMoved,
                    moved + other.moved);
        }
    }

    Tally(int futures, int fixes) {
        each = 1.0 / futures;
        flats = new double[fixes];
    }

    @Override
    public void flat(Hit hit, Article on) {
        double weight = hit.present * each;
        flats[hit.fix] += weight;
        madeUp += hit.madeUp * weight;
        after += hit.after * weight;
        lost += hit.lostHours * weight;
    }

    @Override
    public void tires(Article on, boolean both, double present) {
        (both ? bothTires : tires).merge(on.id, present * each, Double::sum);
    }

    @Override
    public void renewal(Article off, Article fitted, double x, double place, double present) {
        renewals.merge(new Renewal(off.id, fitted.id), present * each, Double::sum);
    }

    @Override
    public void ran(Article on, double x, double presentHours) {
        hoursRun.merge(on.id, presentHours * each, Double::sum);
    }

    @Override
    public void trade(Article on, double age, boolean changes) {
        boolean moves = changes && on.carriedOn(age) > on.atTrade(age);
        AtTrade one = moves
                ? new AtTrade(0, 0, (1 - age) * each, each)
                : new AtTrade((1 - age) * each, Math.max(0, (age - 0.5) / 0.5) * each, 0, 0);
        trades.merge(on.id, one, AtTrade::plus);
    }

    /** Flats mended by fix number i. */
    public double flats(int i) {
        return flats[i];
    }

    /** Crew-hours made up. */
    public double madeUp() {
        return madeUp;
    }

    /** Hours one person works after the day. */
    public double after() {
        return after;
    }

    /** Crew-hours lost. */
    public double lost() {
        return lost;
    }

    /** Tires replaced one at a time, by assembly. */
    public SortedMap<String, Double> tires() {
        return tires;
    }

    /** Times both sides of a half-worn set were made new, by assembly. */
    public SortedMap<String, Double> bothTires() {
        return bothTires;
    }

    public SortedMap<Renewal, Double> renewals() {
        return renewals;
    }

    /** Operating hours run, by assembly. */
    public SortedMap<String, Double> hoursRun() {
        return hoursRun;
    }

    public SortedMap<String, AtTrade> trades() {
        return trades;
    }
}
