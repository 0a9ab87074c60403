package footing.core.answer;

import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.future.MachineFutures;
import footing.core.future.SharedDraws;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Answers a case: simulates the futures of every machine under every entry, compares them, and asks what moves the
 * answer.
 */
public final class Assessment {
    private final Case stated;
    private final Options options;
    private final Workers workers;
    private final Watch watch;

    private Assessment(Case stated, Options options, Workers workers, Watch watch) {
        this.stated = stated;
        this.options = options;
        this.workers = workers;
        this.watch = watch;
    }

    /**
     * Answers a case.
     *
     * @param stated a case without errors
     * @return the answer; not complete if the watch asked to stop, but never without a first round of futures
     * @throws IllegalArgumentException if the case has no machine, or not the one the options name
     */
    public static Answer answer(Case stated, Options options, Workers workers, Watch watch) {
        return new Assessment(stated, options, workers, watch).answer();
    }

    private Answer answer() {
        List<ResolvedMachine> machines = options.machine()
                .map(id -> List.of(Resolver.resolve(stated, stated.machine(id))))
                .orElseGet(() -> Resolver.resolve(stated));
        if (machines.isEmpty()) {
            throw new IllegalArgumentException("a case without machines has no answer");
        }
        SharedDraws shared = new SharedDraws();
        List<MachineFutures> futures = machines.stream()
                .map(m -> new MachineFutures(m, options.seed(), shared))
                .toList();
        int run = new Rounds(futures, options.threshold(), workers, watch).run(options.futures());
        MachineAnswer[] answers = new MachineAnswer[futures.size()];
        double[][] savings = new double[answers.length][];
        double[] needed = new double[answers.length];
        workers.all(answers.length, m -> {
            Entries entries = new Entries(futures.get(m), options.threshold());
            answers[m] = entries.answer();
            savings[m] = entries.savings(answers[m].recommended());
            needed[m] = entries.futuresNeeded();
        });
        boolean complete = !watch.stopped();
        List<MachineAnswer> told = List.of(answers);
        if (!options.quick() && complete) {
            told = new Sensitivity(stated, options, workers, watch).complete(futures, told);
            complete = !watch.stopped();
        }
        return new Answer(
                stated,
                run,
                options.seed(),
                options.threshold(),
                reached(needed, run),
                complete,
                List.of(),
                told,
                fleet(told, savings));
    }

    private static Answer.Fleet fleet(List<MachineAnswer> machines, double[][] savings) {
        double[] sum = new double[savings[0].length];
        for (double[] saving : savings) {
            for (int f = 0; f < sum.length; f++) {
                sum[f] += saving[f];
            }
        }
        double start =
                machines.stream().mapToDouble(m -> m.choice().startCost()).sum();
        return new Answer.Fleet(Saving.of(sum), start);
    }

    private static String reached(double[] needed, int run) {
        double most = Arrays.stream(needed).max().orElse(0);
        return most <= run
                ? "Enough ways were run that chance in the simulation matters no more than half a percent of what a"
                        + " machine costs now; wrong inputs are not in that."
                : String.format(
                        Locale.ROOT,
                        "About %,.0f ways it could go would make every saving and chance as sure as wanted; %,d were run.",
                        most,
                        run);
    }
}
