package footing.core.answer;

import footing.core.future.MachineFutures;
import java.util.List;
import java.util.OptionalInt;

/**
 * Runs the futures of all machines of a case, in rounds of pieces that any number of workers share. A round counts only
 * whole, so after a stop every machine has the same futures.
 */
final class Rounds {
    private static final int TASKS = 72;
    private static final String STAGE = "futures";

    private final List<MachineFutures> machines;
    private final double threshold;
    private final Workers workers;
    private final Watch watch;
    private int done;

    Rounds(List<MachineFutures> machines, double threshold, Workers workers, Watch watch) {
        this.machines = machines;
        this.threshold = threshold;
        this.workers = workers;
        this.watch = watch;
    }

    /** Runs as many futures as wanted, or as the answer needs; returns how many each machine has. */
    int run(OptionalInt wanted) {
        int target = wanted.orElse(Precision.LEAST);
        runTo(target);
        while (wanted.isEmpty() && !watch.stopped() && target < Precision.MOST) {
            int more = target();
            if (more <= target) {
                break;
            }
            target = more;
            runTo(target);
        }
        return done;
    }

    /** The futures needed, in whole pieces. */
    private int target() {
        double[] needed = new double[machines.size()];
        workers.all(needed.length, m -> needed[m] = Precision.needed(machines.get(m), threshold));
        double most = 0;
        for (double n : needed) {
            most = Math.max(most, n);
        }
        double pieces = Math.ceil(most / MachineFutures.PIECE);
        return (int) Math.min(pieces * MachineFutures.PIECE, Precision.MOST);
    }

    private void runTo(int target) {
        machines.forEach(m -> m.reserve(target));
        int atOnce = Math.max(1, TASKS / machines.size());
        while (done < target && (done == 0 || !watch.stopped())) {
            int pieces = done == 0 ? 1 : atOnce;
            int to = Math.min(target, done + pieces * MachineFutures.PIECE);
            round(to, target);
        }
    }

    private void round(int to, int target) {
        int pieces = (to - done + MachineFutures.PIECE - 1) / MachineFutures.PIECE;
        MachineFutures.Piece[] run = new MachineFutures.Piece[pieces * machines.size()];
        int from = done;
        workers.all(run.length, task -> {
            int first = from + task / machines.size() * MachineFutures.PIECE;
            MachineFutures machine = machines.get(task % machines.size());
            if (!watch.stopped() || from == 0) {
                run[task] = machine.run(first, Math.min(first + MachineFutures.PIECE, to));
            }
        });
        for (MachineFutures.Piece piece : run) {
            if (piece == null) {
                return;
            }
        }
        for (int task = 0; task < run.length; task++) {
            machines.get(task % machines.size()).add(run[task]);
        }
        done = to;
        watch.progress(STAGE, (double) done / target);
    }
}
