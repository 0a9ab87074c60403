package footing.web.api;

import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Answers one request at a time, since each uses all processors, in the order in which they came. When too many wait,
 * or one has waited too long, it is turned away: whoever asks then does better to ask again later.
 */
final class Queue {
    private final Semaphore turn = new Semaphore(1, true);
    private final AtomicInteger waiting = new AtomicInteger();
    private final int mostWaiting;
    private final long patienceMillis;

    Queue(int mostWaiting, long patienceMillis) {
        this.mostWaiting = mostWaiting;
        this.patienceMillis = patienceMillis;
    }

    /** How many wait for their turn. */
    int waiting() {
        return waiting.get();
    }

    /** Does the work when it is its turn; empty if it was turned away. */
    <T> Optional<T> inTurn(Supplier<T> work) {
        try {
            if (waiting.incrementAndGet() > mostWaiting || !turn.tryAcquire(patienceMillis, TimeUnit.MILLISECONDS)) {
                return Optional.empty();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } finally {
            waiting.decrementAndGet();
        }
        try {
            return Optional.of(work.get());
        } finally {
            turn.release();
        }
    }
}
