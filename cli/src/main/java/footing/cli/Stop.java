package footing.cli;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Asks a run to stop with what is known so far, and waits until that has been printed. */
final class Stop {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final CountDownLatch done = new CountDownLatch(1);
    private volatile boolean working;
    private volatile boolean asked;

    /** Called when there begins to be something to stop. */
    void working() {
        working = true;
    }

    boolean asked() {
        return asked;
    }

    /** Called when all is printed. */
    void done() {
        done.countDown();
    }

    void ask() {
        asked = true;
    }

    /** Asks, and waits for the run to end; false if there was no run to stop. */
    boolean stopRun() {
        ask();
        if (!working || done.getCount() == 0) {
            return false;
        }
        try {
            return done.await(PATIENCE.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }
}
