package footing.core.answer;

import footing.core.fleet.Case;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/** What moves an answer: break-evens, drivers, guesses and what to find out first, for every machine at once. */
final class Sensitivity {
    /** Futures on which inputs are moved: the first ones. */
    static final int FUTURES = 4000;

    private static final String STAGE = "what moves it";

    private final Case stated;
    private final Options options;
    private final Workers workers;
    private final Watch watch;

    Sensitivity(Case stated, Options options, Workers workers, Watch watch) {
        this.stated = stated;
        this.options = options;
        this.workers = workers;
        this.watch = watch;
    }

    /** The work on one machine. */
    private static final class Job {
        final MachineFutures futures;
        final MachineAnswer answer;
        List<EntryAnswer> entries;

        @Nullable
        Drivers drivers;

        MachineAnswer.@Nullable FindOutFirst findOutFirst;

        @Nullable
        List<HourBand> bands;

        Job(MachineFutures futures, MachineAnswer answer) {
            this.futures = futures;
            this.answer = answer;
            entries = answer.entries();
        }
    }

    /** The answers completed, or as they were if the watch asked to stop. */
    List<MachineAnswer> complete(List<MachineFutures> futures, List<MachineAnswer> answers) {
        List<Job> jobs = new ArrayList<>();
        for (int m = 0; m < answers.size(); m++) {
            jobs.add(new Job(futures.get(m), answers.get(m)));
        }
        workers.all(jobs.size(), m -> prepare(jobs.get(m)));
        List<Runnable> tasks = new ArrayList<>();
        jobs.forEach(job -> addTasks(job, tasks));
        AtomicInteger done = new AtomicInteger();
        workers.all(tasks.size(), t -> {
            if (!watch.stopped()) {
                tasks.get(t).run();
                watch.progress(STAGE, (double) done.incrementAndGet() / tasks.size());
            }
        });
        return watch.stopped() ? answers : jobs.stream().map(this::completed).toList();
    }

    private void prepare(Job job) {
        EntryAnswer change = job.answer.bestChange();
        if (change != null) {
            job.drivers = new Drivers(stated, job.answer, change.entry(), options, job.futures);
        }
    }

    private void addTasks(Job job, List<Runnable> tasks) {
        tasks.add(() -> job.entries = new BreakEvens(job.futures, options.seed()).of(job.answer.entries()));
        tasks.add(() -> job.findOutFirst = new InformationValue(
                        job.answer.machine(),
                        stated.machine(job.answer.id()).flatsKey(),
                        new Comparison(job.futures, options.threshold()),
                        options.seed())
                .findOutFirst());
        tasks.add(() -> job.bands = HourBand.of(job.answer, options.seed(), job.futures.futures()));
        Drivers drivers = job.drivers;
        if (drivers != null) {
            for (int t = 0; t < drivers.tasks(); t++) {
                int task = t;
                tasks.add(() -> drivers.run(task));
            }
        }
    }

    private MachineAnswer completed(Job job) {
        Drivers drivers = job.drivers;
        return job.answer.completed(
                job.entries,
                drivers == null ? List.of() : drivers.drivers(),
                drivers == null ? List.of() : drivers.guesses(),
                job.findOutFirst,
                job.bands);
    }
}
