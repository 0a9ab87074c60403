package footing.web.api;

import footing.core.answer.Watch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** Stops an answer that takes too long. */
final class Deadline implements Watch {
    private final LongSupplier nanoClock;
    private final long end;

    Deadline(int seconds, LongSupplier nanoClock) {
        this.nanoClock = nanoClock;
        end = nanoClock.getAsLong() + TimeUnit.SECONDS.toNanos(seconds);
    }

    @Override
    public void progress(String stage, double share) {}

    @Override
    public boolean stopped() {
        return nanoClock.getAsLong() - end >= 0;
    }
}
