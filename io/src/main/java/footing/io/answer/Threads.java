package footing.io.answer;

import footing.core.answer.Workers;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Does many things at once on a fixed number of threads, the calling one included. A task may hand out tasks of its
 * own: whoever waits takes part in the work, so that nobody waits for a thread that never comes free.
 */
public final class Threads implements Workers, AutoCloseable {
    private final int helpers;
    private final ExecutorService pool;

    /**
     * Starts no thread before there is work.
     *
     * @param threads at least 1
     */
    public Threads(int threads) {
        if (!(threads >= 1)) {
            throw new IllegalArgumentException("at least one thread is needed, not " + threads);
        }
        helpers = threads - 1;
        pool = Executors.newFixedThreadPool(Math.max(1, helpers), Threads::daemon);
    }

    /** As many as the machine has processors. */
    public static Threads usual() {
        return new Threads(Runtime.getRuntime().availableProcessors());
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "footing-worker");
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public void all(int tasks, IntConsumer task) {
        Job job = new Job(tasks, task);
        for (int i = 0; i < Math.min(helpers, tasks - 1); i++) {
            pool.execute(job);
        }
        job.run();
        job.await();
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }

    /** The tasks of one call, taken one by one by whoever is free. After a failure the rest is not begun. */
    private static final class Job implements Runnable {
        private final int tasks;
        private final IntConsumer task;
        private final AtomicInteger next = new AtomicInteger();
        private final CountDownLatch open;
        private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

        Job(int tasks, IntConsumer task) {
            this.tasks = tasks;
            this.task = task;
            open = new CountDownLatch(tasks);
        }

        @Override
        public void run() {
            for (int i = next.getAndIncrement(); i < tasks; i = next.getAndIncrement()) {
                try {
                    if (failure.get() == null) {
                        task.accept(i);
                    }
                } catch (RuntimeException | Error e) {
                    failure.compareAndSet(null, e);
                } finally {
                    open.countDown();
                }
            }
        }

        void await() {
            try {
                open.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted while waiting for the workers", e);
            }
            Throwable failed = failure.get();
            if (failed instanceof RuntimeException e) {
                throw e;
            }
            if (failed instanceof Error e) {
                throw e;
            }
        }
    }
}
