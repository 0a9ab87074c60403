package footing.core.answer;

import footing.core.fleet.ResolvedMachine;
import footing.core.future.Counts;
import footing.core.future.EntryOutcome;
import footing.core.future.Parts;
import java.util.List;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * What Footing says of one entry. Savings are against the carried package.
 *
 * @param neverFitted null for an entry that changes over at once
 * @param overNext null for the carried package
 * @param paybackHours null if it is never paid back, and for the carried package
 * @param breakEvenFlats null if there is none within ten times the stated flats, or if left out
 * @param breakEvenPrice null if the start cost is 0, or if left out
 * @param breakEvenNext the start cost at which the mean of {@code overNext} is 0; null if the start cost is 0, or if left
 *     out
 * @param monthly null if the start cost is 0
 */
public record EntryAnswer(
        EntryOutcome outcome,
        @Nullable Double neverFitted,
        Estimate cost,
        Saving saving,
        List<Level> levels,
        @Nullable OverNext overNext,
        @Nullable Double paybackHours,
        @Nullable BreakEvenFlats breakEvenFlats,
        @Nullable Double breakEvenPrice,
        @Nullable Double breakEvenNext,
        @Nullable Monthly monthly) {
    /** The saving counting only some of the parts. */
    public record Level(Counting counting, double mean, double chance) {}

    /** Which parts of the cost are counted: an hour has three prices. */
    public enum Counting {
        PARTS,
        PARTS_AND_TIME,
        ALL
    }

    /** The saving against the best entry with a smaller start cost. */
    public record OverNext(ResolvedMachine.Entry entry, double mean, double standardError, double chance) {}

    /** Flats a season at which the entry saves nothing, and the mean in force. */
    public record BreakEvenFlats(double at, double now) {}

    /**
     * A month's payment on the start cost against what is avoided in a month, up to the last payment or the trade.
     *
     * @param months of payments
     * @param over months in which that much is avoided: to the last payment or the trade
     * @param paid in all by then: down, the payments, and at the trade what is still owed
     */
    public record Monthly(double payment, double avoided, int months, double over, double paid) {
        /** True if the machine is traded before the loan is paid. */
        public boolean isTradedFirst() {
            return over < months;
        }

        /** What is avoided in all by then. */
        public double avoidedInAll() {
            return avoided * over;
        }
    }

    public ResolvedMachine.Entry entry() {
        return outcome.entry();
    }

    public double startCost() {
        return outcome.startCost();
    }

    public Parts parts() {
        return outcome.parts();
    }

    public Counts counts() {
        return outcome.counts();
    }

    public SortedMap<Integer, Parts> yearly() {
        return outcome.yearly();
    }

    EntryAnswer withBreakEvens(@Nullable BreakEvenFlats flats, @Nullable Double price, @Nullable Double next) {
        return new EntryAnswer(
                outcome, neverFitted, cost, saving, levels, overNext, paybackHours, flats, price, next, monthly);
    }
}
