package footing.cli;

import footing.core.answer.Watch;
import footing.io.words.Figures;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/** A line on standard error that says how far a run has come, once it has taken more than a second. */
final class Progress implements Watch, AutoCloseable {
    private static final long PATIENCE = 1_000_000_000L;
    private static final long BETWEEN = 100_000_000L;
    private static final int CELLS = 30;
    private static final int WIDTH = 79;

    private final PrintWriter err;
    private final Terminal terminal;
    private final LongSupplier nanoseconds;
    private final long started;
    private long drawn;
    private boolean showing;
    private volatile boolean begun;

    Progress(PrintWriter err, Terminal terminal, LongSupplier nanoseconds) {
        this.err = err;
        this.terminal = terminal;
        this.nanoseconds = nanoseconds;
        started = nanoseconds.getAsLong();
        drawn = started;
        terminal.stop().working();
    }

    /** Only once there is something to show for it. */
    @Override
    public boolean stopped() {
        return begun && terminal.stop().asked();
    }

    @Override
    public synchronized void progress(String stage, double share) {
        begun = true;
        long now = nanoseconds.getAsLong();
        if (!terminal.watched() || now - started < PATIENCE || now - drawn < BETWEEN) {
            return;
        }
        drawn = now;
        showing = true;
        double part = Math.max(0, Math.min(1, share));
        int full = (int) (CELLS * part);
        String bar = "[" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + Figures.percent(part) + "  " + stage
                + "  (Ctrl-C: stop here)";
        err.print("\r" + fitted(bar));
        err.flush();
    }

    /** Wipes the line. */
    @Override
    public synchronized void close() {
        if (showing) {
            err.print("\r" + fitted("") + "\r");
            err.flush();
        }
    }

    private static String fitted(String line) {
        return line.length() > WIDTH ? line.substring(0, WIDTH) : line + " ".repeat(WIDTH - line.length());
    }
}
