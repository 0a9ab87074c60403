package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Watch;
import footing.core.fleet.Case;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one text by now: first answers from few futures, then one from enough, then machine by machine what
 * moves it. Can be stopped, and taken up again where it was.
 */
final class Refinement {
    final Case stated;
    /** Held while the answer from enough futures is worked out. */
    final Object onceSteady = new Object();

    private final Map<String, Answer> firstOf = new LinkedHashMap<>();
    private final Map<String, MachineAnswer> whole = new LinkedHashMap<>();
    private final Set<String> taken = new HashSet<>();
    private final Set<String> preferred = new HashSet<>();
    private @Nullable Answer first;
    private @Nullable Answer steady;
    private int stage;
    private int round;
    private boolean working;

    Refinement(Case stated) {
        this.stated = stated;
    }

    /** The best answer known, if it says anything of the machine asked for. */
    synchronized Optional<Told> told(@Nullable String machine) {
        Answer best = steady == null ? first : steady;
        if (best == null && machine != null) {
            best = firstOf.get(machine);
        }
        if (best == null) {
            return Optional.empty();
        }
        boolean all = steady != null
                && (machine == null ? whole.size() == stated.machines().size() : whole.containsKey(machine));
        return Optional.of(new Told(filled(best), stage, all, working && !all, share(machine)));
    }

    private double share(@Nullable String machine) {
        double steps = machine == null ? 1.0 + stated.machines().size() : 2;
        double done = (steady == null ? 0 : 1) + (machine == null ? whole.size() : whole.containsKey(machine) ? 1 : 0);
        return done / steps;
    }

    /** Puts in the machines of which everything is known; only beside others from as many futures. */
    private Answer filled(Answer best) {
        if (!best.equals(steady) || whole.isEmpty()) {
            return best;
        }
        List<MachineAnswer> machines = new ArrayList<>();
        best.machines().forEach(m -> machines.add(whole.getOrDefault(m.id(), m)));
        return new Answer(
                best.of(),
                best.futures(),
                best.seed(),
                best.threshold(),
                best.reached(),
                best.complete(),
                best.warnings(),
                machines,
                best.fleet());
    }

    synchronized void putFirst(@Nullable String machine, Answer answer) {
        if (machine == null) {
            first = answer;
        } else {
            firstOf.put(machine, answer);
        }
        stage++;
    }

    synchronized void putSteady(Answer answer) {
        steady = answer;
        stage++;
    }

    synchronized void putWhole(MachineAnswer machine) {
        whole.put(machine.id(), machine);
        stage++;
    }

    synchronized Optional<Answer> steady() {
        return Optional.ofNullable(steady);
    }

    /** False if everything is known of the machine, or somebody is at it. */
    synchronized boolean take(String machine) {
        return !whole.containsKey(machine) && taken.add(machine);
    }

    /**
     * Lets go of a machine.
     *
     * @param mine what whoever was at it worked under
     * @return the watch of the work now under way, if that began meanwhile and found the machine taken; empty otherwise
     */
    synchronized Optional<Watch> putBack(String machine, Watch mine) {
        taken.remove(machine);
        boolean overtaken = working && mine.stopped() && !whole.containsKey(machine);
        return overtaken ? Optional.of(watch(round)) : Optional.empty();
    }

    /** The watch of the work under way if this machine should now go first; empty if it does or is done. */
    synchronized Optional<Watch> prefer(String machine) {
        boolean needed = working && !whole.containsKey(machine) && preferred.add(machine);
        return needed ? Optional.of(watch(round)) : Optional.empty();
    }

    synchronized boolean isWorking() {
        return working;
    }

    /** Begins, or begins again; the watch of this round. */
    synchronized Watch begin(@Nullable String machine) {
        working = true;
        preferred.clear();
        if (machine != null) {
            preferred.add(machine);
        }
        return watch(++round);
    }

    private Watch watch(int mine) {
        return new Watch() {
            @Override
            public void progress(String what, double share) {}

            @Override
            public boolean stopped() {
                return !isRound(mine);
            }
        };
    }

    private synchronized boolean isRound(int asked) {
        return working && round == asked;
    }

    synchronized void stop() {
        working = false;
    }
}
