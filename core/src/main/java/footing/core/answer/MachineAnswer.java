package footing.core.answer;

import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.FixOutcome;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What Footing says of one machine.
 *
 * @param entries the carried one first
 * @param recommended index of the recommended entry
 * @param costPerFlat null if the carried package never went flat
 * @param drivers null if left out, as are guesses, findOutFirst and bands
 * @param bands of what it carries, and of the best change if there is one
 */
public record MachineAnswer(
        ResolvedMachine machine,
        List<EntryAnswer> entries,
        int recommended,
        Verdict verdict,
        List<Rung> ladder,
        @Nullable CostPerFlat costPerFlat,
        @Nullable List<Driver> drivers,
        @Nullable List<Guess> guesses,
        @Nullable FindOutFirst findOutFirst,
        @Nullable List<HourBand> bands) {
    public MachineAnswer {
        entries = List.copyOf(entries);
        ladder = List.copyOf(ladder);
    }

    /** A step of the ladder, against the step below: what more it costs at the start, what more it saves over life. */
    public record Rung(ResolvedMachine.Entry entry, double extraStart, double extraSaving, double chance) {}

    /** The mean flat on the carried package, in today's money: out of pocket, paid time, lost work; and by fix. */
    public record CostPerFlat(double cash, double paid, double lost, List<FixOutcome> fixes) {
        public double total() {
            return cash + paid + lost;
        }
    }

    /** The saving with one input moved to a low and a high value, the choice not made anew. */
    public record Driver(InForce input, double low, double high, double savingAtLow, double savingAtHigh) {
        public double swing() {
            return Math.abs(savingAtHigh - savingAtLow);
        }
    }

    /**
     * A default in force, how far it moves the saving and whether it could turn the verdict: a fifth lower and higher,
     * or, where it says there is none of a thing, what that may well be elsewhere.
     */
    public record Guess(InForce input, double swing, boolean turnsVerdict) {}

    /** What it would be worth to know everything unknown, and each thing alone, before deciding. */
    public record FindOutFirst(double all, List<Worth> each) {}

    public record Worth(Input input, double value) {}

    public String id() {
        return machine.id();
    }

    public EntryAnswer carried() {
        return entries.get(0);
    }

    public EntryAnswer choice() {
        return entries.get(recommended);
    }

    /**
     * The recommended entry, or the best other one if the carried package is recommended; null if there is none. An
     * entry whose sets are never fitted before the trade changes nothing and is no other one.
     */
    public @Nullable EntryAnswer bestChange() {
        if (recommended != 0) {
            return choice();
        }
        EntryAnswer best = null;
        for (EntryAnswer e : entries.subList(1, entries.size())) {
            boolean happens = e.outcome().neverFitted() < 1;
            best = happens && (best == null || e.cost().mean() < best.cost().mean()) ? e : best;
        }
        return best;
    }

    /** The same with what takes longer filled in. */
    MachineAnswer completed(
            List<EntryAnswer> broken,
            List<Driver> driven,
            List<Guess> guessed,
            @Nullable FindOutFirst found,
            @Nullable List<HourBand> strays) {
        return new MachineAnswer(
                machine, broken, recommended, verdict, ladder, costPerFlat, driven, guessed, found, strays);
    }
}
