package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Runs and keeps answers. A first one, from {@value #FIRST} futures, is given at once; better ones are worked out
 * behind it, at most one line of work for each case: a newer text stops the older one's. First answers go before all
 * refinement.
 */
@Component
public final class Answers implements AutoCloseable {
    static final int FIRST = 2048;
    private static final int MOST_TEXTS = 24;
    private static final int PATIENCE_SECONDS = 10;

    private final Gate gate = new Gate();
    private final Semaphore turn = new Semaphore(1, true);
    private final Threads firstThreads = Threads.usual();
    private final Threads refiningThreads = Threads.usual();
    private final Workers refining = gate.givingWay(refiningThreads);
    private final ThreadPoolExecutor steps;
    private final AtomicLong numbers = new AtomicLong();
    private final MachineMemory memory = new MachineMemory();
    private final Map<String, Refinement> inForce = new HashMap<>();
    private final Map<Case, Refinement> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Case, Refinement> eldest) {
            return size() > MOST_TEXTS;
        }
    };

    public Answers() {
        int threads = Runtime.getRuntime().availableProcessors();
        steps = new ThreadPoolExecutor(threads, threads, 1, TimeUnit.MINUTES, new PriorityBlockingQueue<>(), r -> {
            Thread thread = new Thread(r, "footing-refiner");
            thread.setDaemon(true);
            return thread;
        });
        steps.allowCoreThreadTimeOut(true);
    }

    /**
     * The best answer known of a case by now; a first one is worked out if there is none. Better ones follow.
     *
     * @param id of the case; what was being worked out for another state of it stops
     * @param machine the one that is looked at; null for all of them
     * @throws IllegalArgumentException if the case has no machine, or not the one named
     */
    public Told now(String id, Case stated, @Nullable String machine) {
        Refinement refinement = refinement(stated);
        Told told = refinement.told(machine).orElseGet(() -> first(refinement, machine));
        takeOver(id, refinement, machine);
        return refinement.told(machine).orElse(told);
    }

    /** Stops what is being worked out for a case; what is known stays. */
    public void stop(String id) {
        synchronized (inForce) {
            Refinement current = inForce.get(id);
            if (current != null) {
                current.stop();
            }
        }
    }

    /** Goes on with what was stopped. */
    public void resume(String id) {
        synchronized (inForce) {
            Refinement current = inForce.get(id);
            if (current != null && !current.isWorking()) {
                begin(current, null);
            }
        }
    }

    private Refinement refinement(Case stated) {
        synchronized (kept) {
            return kept.computeIfAbsent(stated, Refinement::new);
        }
    }

    private Told first(Refinement refinement, @Nullable String machine) {
        gate.enter();
        try {
            turn.acquireUninterruptibly();
            try {
                if (refinement.told(machine).isEmpty()) {
                    Options options = options(OptionalInt.of(FIRST), true, machine);
                    refinement.putFirst(
                            machine, Assessment.answer(refinement.stated, options, firstThreads, Watch.NOBODY));
                }
            } finally {
                turn.release();
            }
        } finally {
            gate.leave();
        }
        return refinement.told(machine).orElseThrow();
    }

    private static Options options(OptionalInt futures, boolean quick, @Nullable String machine) {
        return new Options(futures, Options.USUAL_SEED, Options.USUAL_THRESHOLD, quick, Optional.ofNullable(machine));
    }

    /** Makes this the state of the case that is worked on, unless somebody stopped just that. */
    private void takeOver(String id, Refinement refinement, @Nullable String machine) {
        synchronized (inForce) {
            Refinement before = inForce.put(id, refinement);
            boolean same = before == refinement;
            if (before != null && !same) {
                before.stop();
            }
            if (!same && !refinement.isWorking()) {
                begin(refinement, machine);
            } else if (machine != null) {
                refinement
                        .prefer(machine)
                        .ifPresent(w -> submit(refinement, 0, w, () -> whole(refinement, machine, w)));
            }
        }
    }

    private void begin(Refinement r, @Nullable String machine) {
        Watch watch = r.begin(machine);
        submit(r, 0, watch, () -> steady(r, watch));
        List<String> ids = new ArrayList<>();
        r.stated.machines().forEach(m -> ids.add(m.id()));
        if (machine != null && ids.remove(machine)) {
            ids.add(0, machine);
        }
        for (int i = 0; i < ids.size(); i++) {
            String each = ids.get(i);
            submit(r, i + 1, watch, () -> whole(r, each, watch));
        }
    }

    private void submit(Refinement r, int order, Watch watch, Runnable work) {
        steps.execute(new Step(order, numbers.incrementAndGet(), () -> {
            if (watch.stopped()) {
                return;
            }
            try {
                work.run();
            } catch (RuntimeException | Error e) {
                if (steps.isShutdown()) {
                    return;
                }
                // Nobody is to wait for what won't come.
                r.stop();
                throw e;
            }
        }));
    }

    private void steady(Refinement r, Watch watch) {
        synchronized (r.onceSteady) {
            if (r.steady().isEmpty() && !watch.stopped()) {
                Answer answer = Assessment.answer(r.stated, options(OptionalInt.empty(), true, null), refining, watch);
                if (answer.complete()) {
                    r.putSteady(answer);
                }
            }
        }
    }

    private void whole(Refinement r, String machine, Watch watch) {
        steady(r, watch);
        if (r.take(machine)) {
            try {
                weigh(r, machine, watch);
            } finally {
                r.putBack(machine, watch).ifPresent(now -> submit(r, 0, now, () -> whole(r, machine, now)));
            }
        }
    }

    private void weigh(Refinement r, String machine, Watch watch) {
        Optional<Answer> steady = r.steady();
        if (steady.isEmpty()) {
            return;
        }
        int futures = steady.get().futures();
        memory.find(r.stated, machine, futures).ifPresentOrElse(r::putWhole, () -> {
            Options options = options(OptionalInt.of(futures), false, machine);
            Answer answer = Assessment.answer(r.stated, options, refining, watch);
            if (answer.complete()) {
                memory.keep(r.stated, machine, futures, answer.machines().get(0));
                r.putWhole(answer.machines().get(0));
            }
        });
    }

    /** Stops all work and waits until nobody is at it any more. */
    @Override
    public void close() {
        synchronized (inForce) {
            inForce.values().forEach(Refinement::stop);
        }
        steps.shutdown();
        try {
            if (!steps.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                steps.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        firstThreads.close();
        refiningThreads.close();
    }
}
