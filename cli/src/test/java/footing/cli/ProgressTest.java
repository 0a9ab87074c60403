package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final long SECOND = 1_000_000_000L;

    private final StringWriter err = new StringWriter();
    private final AtomicLong clock = new AtomicLong();

    private Progress progress(boolean watched) {
        Terminal terminal =
                new Terminal(Letters.ASCII, watched, InputStream.nullInputStream(), Path.of("."), new Stop());
        return new Progress(new PrintWriter(err), terminal, clock::get);
    }

    @Test
    void progress_withinASecond_isSilent() {
        try (Progress progress = progress(true)) {
            clock.set(SECOND - 1);
            progress.progress("futures", 0.5);
        }
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void progress_afterASecond_isShownAndWiped() {
        try (Progress progress = progress(true)) {
            clock.set(2 * SECOND);
            progress.progress("futures", 0.5);
            assertThat(err.toString()).contains("50 %", "futures");
        }
        assertThat(err.toString()).endsWith(" ".repeat(79) + "\r");
    }

    @Test
    void progress_nobodyWatching_isSilent() {
        try (Progress progress = progress(false)) {
            clock.set(2 * SECOND);
            progress.progress("futures", 0.5);
        }
        assertThat(err.toString()).isEmpty();
    }
}
