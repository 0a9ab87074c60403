package footing.web.compare;

import footing.core.answer.Options;
import footing.core.compare.Difference;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.springframework.stereotype.Component;

/** Runs comparisons behind the page, one at a time, and keeps the last few. */
@Component
final class Comparisons implements AutoCloseable {
    private static final int MOST = 16;

    /** The question: which two states. */
    private record Pair(Case before, Case after) {}

    private final Threads threads = Threads.usual();
    private final ExecutorService line = Executors.newSingleThreadExecutor(r -> {
        Thread thread = new Thread(r, "footing-comparer");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<Pair, Comparison> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Pair, Comparison> eldest) {
            boolean tooMany = size() > MOST;
            if (tooMany) {
                eldest.getValue().stop();
            }
            return tooMany;
        }
    };

    /** The comparison of two states; begun if there is none, or if it was given up when nobody looked. */
    Comparison of(Case before, Case after) {
        Pair pair = new Pair(before, after);
        synchronized (kept) {
            Comparison known = kept.get(pair);
            if (known != null && !known.isForsaken()) {
                return known;
            }
            Comparison begun = new Comparison(System::nanoTime);
            kept.put(pair, begun);
            line.execute(() -> run(pair, begun));
            return begun;
        }
    }

    /** Forgets a comparison, so that it is begun anew when next asked for. */
    void forget(Case before, Case after) {
        synchronized (kept) {
            kept.remove(new Pair(before, after));
        }
    }

    private void run(Pair pair, Comparison comparison) {
        try {
            comparison.result.complete(
                    Difference.between(pair.before(), pair.after(), Options.usual(), threads, comparison));
        } catch (RuntimeException | Error e) {
            comparison.result.completeExceptionally(e);
            throw e;
        }
    }

    @Override
    public void close() {
        synchronized (kept) {
            kept.values().forEach(Comparison::stop);
        }
        line.shutdownNow();
        threads.close();
    }
}
