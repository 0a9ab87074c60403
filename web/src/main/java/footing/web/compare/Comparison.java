package footing.web.compare;

import footing.core.answer.Watch;
import footing.core.compare.Difference;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.LongSupplier;

/** One comparison under way or done. It stops when asked to, or when nobody has looked for a while. */
final class Comparison implements Watch {
    private static final long PATIENCE_NANOS = TimeUnit.MINUTES.toNanos(2);

    final CompletableFuture<Difference> result = new CompletableFuture<>();
    private final LongSupplier nanoTime;
    private volatile double share;
    private volatile boolean stopped;
    private volatile long lastLook;

    Comparison(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        lastLook = nanoTime.getAsLong();
    }

    /** The difference if it is known within a time; whoever asks is somebody who waits. */
    Optional<Difference> within(long millis) {
        lastLook = nanoTime.getAsLong();
        try {
            return Optional.of(result.get(millis, TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a comparison failed", e.getCause());
        }
    }

    /** True if it ended, or will, without the parts though nobody asked it to, or ended in a failure. */
    boolean isForsaken() {
        boolean failed = result.isCompletedExceptionally();
        return failed || (result.isDone() && !stopped && !result.join().complete());
    }

    int percent() {
        return (int) Math.round(100 * share);
    }

    void stop() {
        stopped = true;
    }

    @Override
    public void progress(String what, double done) {
        share = done;
    }

    @Override
    public boolean stopped() {
        return stopped || nanoTime.getAsLong() - lastLook > PATIENCE_NANOS;
    }
}
