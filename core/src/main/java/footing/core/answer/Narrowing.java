package footing.core.answer;

import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.future.MachineFutures;
import footing.core.future.SharedDraws;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How far what was learned narrows an answer: the saving of the very choices it recommends, and what they would save had
 * nothing been learned. The choice is not made anew, so that the two differ by what is known alone; they share their
 * draws, so that luck differs in neither.
 *
 * @param with all machines together, as the answer has it
 * @param without the same had nothing been learned, on the first futures of the answer's seed
 */
public record Narrowing(Saving with, Saving without) {
    /** Enough for the ends of an 80 % range: the share below either has a standard error of half a percent. */
    public static final int FUTURES = 4_096;

    public static Narrowing of(Answer answer, Case unlearned, Workers workers) {
        return new Narrowing(answer.fleet().saving(), without(answer, unlearned, workers));
    }

    /**
     * Runs an answer's choices once more.
     *
     * @param unlearned the case of the answer as it would stand had nothing been learned
     */
    public static Saving without(Answer answer, Case unlearned, Workers workers) {
        SharedDraws shared = new SharedDraws();
        List<MachineFutures> futures = new ArrayList<>();
        for (MachineAnswer m : answer.machines()) {
            ResolvedMachine machine = Resolver.resolve(unlearned, unlearned.machine(m.id()));
            List<ResolvedMachine.Entry> entries = m.recommended() == 0
                    ? List.of(machine.carried())
                    : List.of(machine.carried(), m.choice().entry());
            futures.add(new MachineFutures(machine.about(entries), answer.seed(), shared));
        }
        int wanted = Math.min(FUTURES, answer.futures());
        new Rounds(futures, answer.threshold(), workers, Watch.NOBODY).run(OptionalInt.of(wanted));
        double[] sum = new double[wanted];
        for (MachineFutures f : futures) {
            int choice = f.machine().entries().size() - 1;
            double[] carried = f.costs(0);
            double[] chosen = f.costs(choice);
            for (int i = 0; i < wanted; i++) {
                sum[i] += carried[i] - chosen[i];
            }
        }
        return Saving.of(sum);
    }

    /** True if any of the choices changes something. */
    public boolean any() {
        return with.p90() > with.p10();
    }

    /** How wide the 80 % range is, of what it would be had nothing been learned; above 1 if it is wider. */
    public double share() {
        return (with.p90() - with.p10()) / (without.p90() - without.p10());
    }
}
