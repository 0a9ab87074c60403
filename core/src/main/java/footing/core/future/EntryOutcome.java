package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import java.util.List;
import java.util.SortedMap;

/**
 * What an entry came to, on the mean over the futures run.
 *
 * @param startCost before tax and loan
 * @param shopTime the part of the start cost that is shop time
 * @param neverFitted share of futures in which nothing it wished for was fitted
 * @param parts present values after tax
 * @param chanceOnParts share of futures in which it saves counting goods alone
 * @param chanceOnTime the same counting goods and time
 * @param yearly nominal, by calendar year
 * @param running present value of the running parts by each step of the grid over the hours left, the start and the
 *     trade left out
 * @param runningNominal nominal running parts up to the end of the loan test
 */
public record EntryOutcome(
        ResolvedMachine.Entry entry,
        double startCost,
        double shopTime,
        double neverFitted,
        Parts parts,
        Counts counts,
        double chanceOnParts,
        double chanceOnTime,
        SortedMap<Integer, Parts> yearly,
        List<Double> running,
        double runningNominal) {
    public EntryOutcome {
        running = List.copyOf(running);
    }
}
