package footing.web.take;

import footing.core.answer.Answer;
import footing.io.answer.Threads;
import footing.io.drawing.SvgDrawer;
import footing.io.paper.Paper;
import footing.io.proposal.Proposal;
import footing.io.proposal.Tables;
import footing.io.workbook.CaseWorkbook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes documents behind the page, one at a time, and keeps the last few. What draws figures is loaded with the first. */
@Component
final class Workshop implements AutoCloseable {
    private static final int MOST = 4;

    private final Taking taking;
    private final ExecutorService line = Executors.newSingleThreadExecutor(r -> {
        Thread thread = new Thread(r, "footing-workshop");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<Wanted, Making> kept = new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wanted, Making> eldest) {
            boolean tooMany = size() > MOST;
            if (tooMany) {
                eldest.getValue().stop();
            }
            return tooMany;
        }
    };

    private @Nullable SvgDrawer drawer;

    Workshop(Taking taking) {
        this.taking = taking;
    }

    /** The making of a document; begun if nobody did, or anew if it failed. */
    Making of(Wanted wanted) {
        synchronized (kept) {
            Making known = kept.get(wanted);
            if (known != null && !known.isFailed()) {
                return known;
            }
            Making begun = new Making();
            kept.put(wanted, begun);
            line.execute(() -> make(wanted, begun));
            return begun;
        }
    }

    private void make(Wanted wanted, Making making) {
        try {
            making.result.complete(made(wanted, making));
        } catch (IOException e) {
            making.result.completeExceptionally(e);
        } catch (RuntimeException | Error e) {
            making.result.completeExceptionally(e);
            throw e;
        }
    }

    private byte[] made(Wanted wanted, Making making) throws IOException {
        Taking.Taken taken = taking.take(wanted, Proposal.MOST_WHOLE, making.answering());
        ByteArrayOutputStream document = new ByteArrayOutputStream();
        boolean whole = switch (wanted.kind()) {
            case PROPOSAL -> printed(taken.answer(), wanted.paper(), making, document);
            case WORKBOOK -> written(taken, making, document);
            case TABLES -> listed(taken.answer(), document);
        };
        if (!whole) {
            throw new IOException("stopped before it was done");
        }
        return document.toByteArray();
    }

    private boolean printed(Answer answer, String paper, Making making, ByteArrayOutputStream to) throws IOException {
        SvgDrawer ready = drawer == null ? new SvgDrawer() : drawer;
        drawer = ready;
        Paper size = Paper.named(paper).orElse(Paper.usual(answer.of().heading().si()));
        return Proposal.write(answer, size, ready, making.writing(), to);
    }

    private static boolean written(Taking.Taken taken, Making making, ByteArrayOutputStream to) throws IOException {
        try (Threads threads = Threads.usual()) {
            return CaseWorkbook.write(taken.answer(), taken.warnings(), threads, making.writing(), to);
        }
    }

    private static boolean listed(Answer answer, ByteArrayOutputStream to) throws IOException {
        Tables.zip(answer, to);
        return true;
    }

    @Override
    public void close() {
        synchronized (kept) {
            kept.values().forEach(Making::stop);
        }
        line.shutdownNow();
    }
}
