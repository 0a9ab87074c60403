package footing.web.serve;

import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.io.answer.Threads;
import footing.web.store.CaseStore;
import footing.web.store.CaseSummary;
import footing.web.store.NoSuchCase;
import java.util.Comparator;
import java.util.Optional;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;

/** Answers the smallest case kept, to nobody: Java loads and compiles what the first answer will need. */
@Component
final class WarmUp implements DisposableBean {
    private static final int FUTURES = 256;

    /** The first page comes first. */
    private static final long DELAY_MILLIS = 700;

    private final CaseStore store;
    private volatile boolean ended;

    WarmUp(CaseStore store) {
        this.store = store;
    }

    void start() {
        Thread thread = new Thread(this::run, "footing-warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        try {
            Thread.sleep(DELAY_MILLIS);
            warm();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (NoSuchCase | DataAccessException e) {
            // Deleted, or the page has ended meanwhile: then nothing is warmed.
        }
    }

    private void warm() {
        Optional<CaseSummary> smallest =
                store.list().stream().filter(c -> c.machines() > 0).min(Comparator.comparingInt(CaseSummary::machines));
        try (Threads one = new Threads(1)) {
            smallest.map(c -> store.get(c.id()))
                    .flatMap(c -> c.read().found())
                    .ifPresent(c -> Assessment.answer(c, Options.usual().withFutures(FUTURES), one, untilEnd()));
        }
    }

    private Watch untilEnd() {
        return new Watch() {
            @Override
            public void progress(String stage, double share) {}

            @Override
            public boolean stopped() {
                return ended;
            }
        };
    }

    @Override
    public void destroy() {
        ended = true;
    }
}
