package footing.core.answer;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.core.future.EntryOutcome;
import footing.core.future.FixOutcome;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Turns the futures of a machine into its answer, except for what moves inputs. */
final class Entries {
    private final MachineFutures futures;
    private final ResolvedMachine machine;
    private final Comparison comparison;
    private final EntryOutcome carried;

    Entries(MachineFutures futures, double threshold) {
        this.futures = futures;
        machine = futures.machine();
        comparison = new Comparison(futures, threshold);
        carried = futures.outcome(0);
    }

    MachineAnswer answer() {
        List<EntryAnswer> entries = new ArrayList<>();
        for (int e = 0; e < machine.entries().size(); e++) {
            entries.add(entry(e));
        }
        return new MachineAnswer(
                machine,
                entries,
                comparison.recommended(),
                comparison.verdict(),
                comparison.ladder(),
                costPerFlat(),
                null,
                null,
                null,
                null);
    }

    /** Futures that would make the answer as sure as wanted. */
    double futuresNeeded() {
        return Precision.needed(comparison);
    }

    /** The saving of an entry in each future. */
    double[] savings(int e) {
        return comparison.saved(0, e);
    }

    private EntryAnswer entry(int e) {
        EntryOutcome outcome = futures.outcome(e);
        Saving saving = comparison.saving(e);
        Comparison.Step next = comparison.overNext(e);
        return new EntryAnswer(
                outcome,
                outcome.entry().when() == When.WORN ? outcome.neverFitted() : null,
                Estimate.of(comparison.costs(e)),
                saving,
                levels(outcome, saving),
                next == null
                        ? null
                        : new EntryAnswer.OverNext(
                                machine.entries().get(next.from()), next.mean(), next.standardError(), next.chance()),
                e == 0 ? null : paybackHours(outcome),
                null,
                null,
                null,
                monthly(outcome));
    }

    private List<EntryAnswer.Level> levels(EntryOutcome o, Saving all) {
        return List.of(
                new EntryAnswer.Level(
                        EntryAnswer.Counting.PARTS,
                        carried.parts().goods() - o.parts().goods(),
                        o.chanceOnParts()),
                new EntryAnswer.Level(
                        EntryAnswer.Counting.PARTS_AND_TIME,
                        carried.parts().goodsAndTime() - o.parts().goodsAndTime(),
                        o.chanceOnTime()),
                new EntryAnswer.Level(EntryAnswer.Counting.ALL, all.mean(), all.chance()));
    }

    /** The first hour of the grid from which the cumulative saving, trade left out, stays at or above zero. */
    private @Nullable Double paybackHours(EntryOutcome o) {
        int last = o.running().size() - 1;
        int lastBelow = -1;
        for (int g = 0; g <= last; g++) {
            double saved = carried.running().get(g) - o.running().get(g) - o.startCost();
            lastBelow = saved < 0 ? g : lastBelow;
        }
        if (lastBelow == last) {
            return null;
        }
        return (lastBelow + 1) * machine.hoursLeft() / last;
    }

    private EntryAnswer.@Nullable Monthly monthly(EntryOutcome o) {
        if (o.startCost() == 0) {
            return null;
        }
        double avoided = (carried.runningNominal() - o.runningNominal()) / futures.monthsCompared();
        return new EntryAnswer.Monthly(
                futures.monthlyPayment(o.startCost()),
                avoided,
                futures.monthlyPayments(),
                futures.monthsCompared(),
                futures.paidByThen(o.startCost()));
    }

    private MachineAnswer.@Nullable CostPerFlat costPerFlat() {
        List<FixOutcome> fixes = futures.fixes();
        double flats = fixes.stream().mapToDouble(FixOutcome::flats).sum();
        if (!(flats > 0)) {
            return null;
        }
        double cash = fixes.stream().mapToDouble(f -> f.flats() * f.cash()).sum();
        double paid = fixes.stream().mapToDouble(f -> f.flats() * f.paid()).sum();
        double lost = fixes.stream().mapToDouble(f -> f.flats() * f.lost()).sum();
        return new MachineAnswer.CostPerFlat(cash / flats, paid / flats, lost / flats, fixes);
    }
}
