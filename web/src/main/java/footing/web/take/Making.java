package footing.web.take;

import footing.core.answer.Watch;
import java.util.concurrent.CompletableFuture;

/** A document being made, or made. */
final class Making {
    /** The share of the work after which there is an answer, where it has to be worked out first. */
    private static final double ANSWERED = 0.7;

    final CompletableFuture<byte[]> result = new CompletableFuture<>();
    private volatile double share;
    private volatile boolean stopped;

    int percent() {
        return (int) Math.round(100 * share);
    }

    boolean isReady() {
        return result.isDone() && !isFailed();
    }

    boolean isFailed() {
        return result.isCompletedExceptionally();
    }

    void stop() {
        stopped = true;
    }

    /** Told by who works the answer out. */
    Watch answering() {
        return between(0, ANSWERED);
    }

    /** Told by who makes a document of the answer. */
    Watch writing() {
        return between(ANSWERED, 1);
    }

    private Watch between(double from, double to) {
        return new Watch() {
            @Override
            public void progress(String stage, double done) {
                share = Math.max(share, from + (to - from) * done);
            }

            @Override
            public boolean stopped() {
                return stopped;
            }
        };
    }
}
