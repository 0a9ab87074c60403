package footing.core.compare;

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
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Answers both versions and their mixtures, each different question once, and splits the changes. */
final class Reckoning {
    private static final String STAGE = "comparing";

    private final Case before;
    private final Case after;
    private final Options options;
    private final Workers workers;
    private final Watch watch;
    private final int futures;
    private final Map<ResolvedMachine, Task> tasks = new LinkedHashMap<>();
    private final AtomicInteger done = new AtomicInteger();

    Reckoning(Case before, Case after, Options options, Workers workers, Watch watch) {
        this.before = before;
        this.after = after;
        this.options = options;
        this.workers = workers;
        this.watch = watch;
        futures = options.futures().orElse(Difference.USUAL_FUTURES);
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
        ids(before).forEach(id -> ask(before, id));
        ids(after).forEach(id -> ask(after, id));
        run(false);
        questions.forEach(q -> Sharing.states(q.things()).forEach(s -> ask(q.mixed(s), q.machine())));
        run(true);
        boolean complete = tasks.values().stream().allMatch(t -> t.answer != null);
        List<MachineDifference> machines = new ArrayList<>();
        for (String id : ids) {
            Question question = common.contains(id) ? questions.get(common.indexOf(id)) : null;
            machines.add(question == null ? alone(id) : both(question, complete));
        }
        return new Difference(
                before,
                after,
                futures,
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

    private void ask(Case mixed, String machine) {
        tasks.computeIfAbsent(resolved(mixed, machine), r -> new Task(mixed, machine));
    }

    private static ResolvedMachine resolved(Case mixed, String machine) {
        return Resolver.resolve(mixed, mixed.machine(machine));
    }

    /** Answers what has no answer yet; the two versions themselves even if asked to stop. */
    private void run(boolean mayStop) {
        List<Task> open = tasks.values().stream().filter(t -> t.answer == null).toList();
        workers.all(open.size(), i -> {
            if (!(mayStop && watch.stopped())) {
                Task task = open.get(i);
                Options one = new Options(
                        OptionalInt.of(futures), options.seed(), options.threshold(), true, Optional.of(task.machine));
                task.answer = Answered.of(Assessment.answer(task.mixed, one, Workers.one(), Watch.NOBODY)
                        .machines()
                        .get(0));
                watch.progress(STAGE, (double) done.incrementAndGet() / tasks.size());
            }
        });
    }

    private Answered answer(Case mixed, String machine) {
        Task task = Objects.requireNonNull(tasks.get(resolved(mixed, machine)));
        return Objects.requireNonNull(task.answer);
    }

    /** A machine of one version only: all it saves is a change. */
    private MachineDifference alone(String id) {
        boolean removed = ids(before).contains(id);
        MachineDifference.Standing standing =
                answer(removed ? before : after, id).standing();
        double saving = standing.saving().mean();
        Part.Kind kind = removed ? Part.Kind.REMOVED : Part.Kind.ADDED;
        Part part = new Part(kind, List.of(), id, removed ? -saving : saving);
        Split split = Split.settled(removed ? saving : 0, removed ? 0 : saving, List.of(part));
        return new MachineDifference(id, removed ? standing : null, removed ? null : standing, split, null);
    }

    private MachineDifference both(Question q, boolean complete) {
        Answered was = answer(before, q.machine());
        Answered is = answer(after, q.machine());
        ResolvedMachine.Entry choice = was.standing().entry();
        boolean considered = is.saving(choice).isPresent();
        return new MachineDifference(
                q.machine(),
                was.standing(),
                is.standing(),
                complete ? split(q, Answered::recommended) : null,
                complete && considered ? split(q, a -> a.saving(choice).orElseThrow()) : null);
    }

    private Split split(Question q, ToDoubleFunction<Answered> saving) {
        Map<Integer, Double> values = new HashMap<>();
        for (int state : Sharing.states(q.things())) {
            values.put(state, saving.applyAsDouble(answer(q.mixed(state), q.machine())));
        }
        double[] shares = Sharing.share(q.things(), s -> Objects.requireNonNull(values.get(s)));
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            parts.add(q.part(i, shares[i]));
        }
        double was = saving.applyAsDouble(answer(before, q.machine()));
        double is = saving.applyAsDouble(answer(after, q.machine()));
        return Split.settled(was, is, parts);
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
