package footing.core.answer;

import footing.core.fleet.ResolvedMachine;
import footing.core.future.MachineFutures;
import footing.core.future.MonthlyFlows;
import footing.core.future.MonthlyRun;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The monthly cash flows behind an answer, from its futures run once more: their present values are the answer's means.
 */
public final class CashFlows {
    private static final String STAGE = "cash flows by month";

    private CashFlows() {}

    /**
     * The monthly flows of entries of an answer's machines.
     *
     * @param machines as they are to be told, each with the entries that matter, the carried one first
     * @return one for each machine; empty if the watch asked to stop
     */
    public static List<MonthlyFlows> of(Answer answer, List<ResolvedMachine> machines, Workers workers, Watch watch) {
        List<MonthlyRun> runs =
                machines.stream().map(m -> new MonthlyRun(m, answer.seed())).toList();
        int pieces = (answer.futures() + MachineFutures.PIECE - 1) / MachineFutures.PIECE;
        AtomicInteger done = new AtomicInteger();
        workers.all(runs.size(), m -> {
            MonthlyRun run = runs.get(m);
            for (int p = 0; p < pieces && !watch.stopped(); p++) {
                int from = p * MachineFutures.PIECE;
                run.add(run.run(from, Math.min(from + MachineFutures.PIECE, answer.futures())));
                watch.progress(STAGE, (double) done.incrementAndGet() / (pieces * runs.size()));
            }
        });
        return watch.stopped()
                ? List.of()
                : runs.stream().map(MonthlyRun::flows).toList();
    }
}
