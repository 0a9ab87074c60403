package footing.core.compare;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Answers both versions as an answer of its own would be, and their mixtures on as many futures as the larger of the
 * two has, each different question once, and splits the changes.
 */
final class Reckoning {
    private static final String STAGE = "comparing";

    /** How much of the progress an answer of one version is. */
    private static final double END = 0.1;

    private final Case before;
    private final Case after;
    private final Options options;
    private final Workers workers;
    private final Watch watch;
    private final Map<String, Answered> was = new HashMap<>();
    private final Map<String, Answered> is = new HashMap<>();
    private final Map<ResolvedMachine, Task> tasks = new LinkedHashMap<>();
    private final AtomicInteger done = new AtomicInteger();
    private int futuresBefore;
    private int futuresAfter;

    Reckoning(Case before, Case after, Options options, Workers workers, Watch watch) {
        this.before = before;
        this.after = after;
        this.options = options;
        this.workers = workers;
        this.watch = watch;
    }

    /** One question and its answer. */
    private static final class Task {
        final Case mixed;
        final String machine;

        @Nullable
        Answered answer;

        Task(Case mixed, String machine) {
            this.mixed = mixed;
            this.machine = machine;
        }
    }

    Difference difference() {
        List<String> ids = new ArrayList<>(ids(before));
        ids(after).stream().filter(id -> !ids.contains(id)).forEach(ids::add);
        if (ids(before).isEmpty() || ids(after).isEmpty()) {
            throw new IllegalArgumentException("a case without machines has no answer");
        }
        List<String> common = ids.stream()
                .filter(ids(before)::contains)
                .filter(ids(after)::contains)
                .toList();
        List<Question> questions =
                common.stream().map(id -> new Question(before, after, id)).toList();
        Answer old = answer(before, was, 0);
        Answer now = answer(after, is, END);
        futuresBefore = old.futures();
        futuresAfter = now.futures();
        keep(before, was, futuresBefore);
        keep(after, is, futuresAfter);
        questions.forEach(q -> Sharing.states(q.things()).forEach(s -> ask(q.mixed(s), q.machine())));
        run();
        boolean complete =
                old.complete() && now.complete() && tasks.values().stream().allMatch(t -> t.answer != null);
        List<MachineDifference> machines = new ArrayList<>();
        for (String id : ids) {
            Question question = common.contains(id) ? questions.get(common.indexOf(id)) : null;
            machines.add(question == null ? alone(id) : both(question, complete));
        }
        return new Difference(
                before,
                after,
                futuresBefore,
                futuresAfter,
                options.seed(),
                complete,
                Changes.of(before, after, common),
                Structure.compare(before, after),
                machines,
                complete
                        ? Split.sum(machines.stream()
                                .map(m -> Objects.requireNonNull(m.recommended()))
                                .toList())
                        : null,
                fleetAsBefore(machines));
    }

    private static List<String> ids(Case c) {
        return c.machines().stream().map(Case.Machine::id).toList();
    }

    private Answer answer(Case version, Map<String, Answered> answers, double begun) {
        Options all = new Options(options.futures(), options.seed(), options.threshold(), true, Optional.empty());
        Answer answer = Assessment.answer(version, all, workers, new Watch() {
            @Override
            public void progress(String stage, double share) {
                watch.progress(STAGE, begun + END * share);
            }

            @Override
            public boolean stopped() {
                return watch.stopped();
            }
        });
        answer.machines().forEach(m -> answers.put(m.id(), Answered.of(m)));
        return answer;
    }

    private int futures() {
        return Math.max(futuresBefore, futuresAfter);
    }

    /** A version that was answered on as many futures as the mixtures need not be answered again. */
    private void keep(Case version, Map<String, Answered> answers, int ran) {
        if (ran == futures()) {
            answers.forEach((id, answer) -> {
                ask(version, id);
                task(version, id).answer = answer;
            });
        }
    }

    private void ask(Case mixed, String machine) {
        tasks.computeIfAbsent(resolved(mixed, machine), r -> new Task(mixed, machine));
    }

    private Task task(Case mixed, String machine) {
        return Objects.requireNonNull(tasks.get(resolved(mixed, machine)));
    }

    private static ResolvedMachine resolved(Case mixed, String machine) {
        return Resolver.resolve(mixed, mixed.machine(machine));
    }

    /** Answers what has no answer yet. */
    private void run() {
        List<Task> open = tasks.values().stream().filter(t -> t.answer == null).toList();
        workers.all(open.size(), i -> {
            if (!watch.stopped()) {
                Task task = open.get(i);
                Options one = new Options(
                        OptionalInt.of(futures()),
                        options.seed(),
                        options.threshold(),
                        true,
                        Optional.of(task.machine));
                task.answer = Answered.of(Assessment.answer(task.mixed, one, Workers.one(), Watch.NOBODY)
                        .machines()
                        .get(0));
                watch.progress(STAGE, 2 * END + (1 - 2 * END) * done.incrementAndGet() / open.size());
            }
        });
    }

    /** A machine of one version only: all it saves is a change. */
    private MachineDifference alone(String id) {
        boolean removed = ids(before).contains(id);
        MachineDifference.Standing standing =
                Objects.requireNonNull((removed ? was : is).get(id)).standing();
        double saving = standing.saving().mean();
        Part.Kind kind = removed ? Part.Kind.REMOVED : Part.Kind.ADDED;
        Part part = new Part(kind, List.of(), id, removed ? -saving : saving);
        Split split = Split.settled(removed ? saving : 0, removed ? 0 : saving, List.of(part));
        return new MachineDifference(id, removed ? standing : null, removed ? null : standing, split, null);
    }

    private MachineDifference both(Question q, boolean complete) {
        Answered old = Objects.requireNonNull(was.get(q.machine()));
        Answered now = Objects.requireNonNull(is.get(q.machine()));
        ResolvedMachine.Entry choice = old.standing().entry();
        boolean considered = now.saving(choice).isPresent();
        return new MachineDifference(
                q.machine(),
                old.standing(),
                now.standing(),
                complete ? split(q, old, now, Answered::recommended) : null,
                complete && considered
                        ? split(q, old, now, a -> a.saving(choice).orElseThrow())
                        : null);
    }

    private Split split(Question q, Answered old, Answered now, ToDoubleFunction<Answered> saving) {
        Map<Integer, Double> values = new HashMap<>();
        for (int state : Sharing.states(q.things())) {
            Answered answer = Objects.requireNonNull(task(q.mixed(state), q.machine()).answer);
            values.put(state, saving.applyAsDouble(answer));
        }
        IntToDoubleFunction value = s -> Objects.requireNonNull(values.get(s));
        double[] shares = Sharing.share(q.things(), value);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            parts.add(q.part(i, shares[i]));
        }
        double before = saving.applyAsDouble(old);
        double after = saving.applyAsDouble(now);
        if (futuresBefore != futuresAfter) {
            double first = value.applyAsDouble(0) - before;
            double last = after - value.applyAsDouble((1 << q.things()) - 1);
            parts.add(new Part(Part.Kind.FUTURES, List.of(), "", first + last));
        }
        return Split.settled(before, after, parts);
    }

    private static @Nullable Split fleetAsBefore(List<MachineDifference> machines) {
        List<Split> splits = new ArrayList<>();
        for (MachineDifference m : machines) {
            Split split = m.asBefore();
            if (split == null && m.isCommon()) {
                return null;
            }
            if (split != null) {
                splits.add(split);
            }
        }
        return splits.isEmpty() ? null : Split.sum(splits);
    }
}
