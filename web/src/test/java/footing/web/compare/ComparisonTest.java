package footing.web.compare;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.answer.Options;
import footing.core.answer.Workers;
import footing.core.compare.Difference;
import footing.core.fleet.Case;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private final AtomicLong clock = new AtomicLong();
    private final Comparison comparison = new Comparison(clock::get);

    private static Difference difference(Comparison watch) throws IOException {
        String text =
                Files.readString(Path.of(System.getProperty("basedir", "web"), "..", "cases", "one-machine.yaml"));
        Case before = CaseFile.read(text, "before").found().orElseThrow();
        Case after = CaseFile.read(text.replace("billing: 75", "billing: 90").replace("wage: 30", "wage: 33"), "after")
                .found()
                .orElseThrow();
        return Difference.between(before, after, Options.usual().withFutures(50), Workers.one(), watch);
    }

    @Test
    void stopped_nobodyLooksForLong_isTrueUntilSomebodyDoes() {
        assertThat(comparison.stopped()).isFalse();

        clock.addAndGet(TimeUnit.MINUTES.toNanos(3));

        assertThat(comparison.stopped()).isTrue();
        assertThat(comparison.within(0)).isEmpty();
        assertThat(comparison.stopped()).isFalse();
    }

    @Test
    void isForsaken_endedWhenNobodyLooked_isTrueButNotWhenStoppedOnPurpose() throws IOException {
        assertThat(comparison.isForsaken()).isFalse();
        clock.addAndGet(TimeUnit.MINUTES.toNanos(3));
        comparison.result.complete(difference(comparison));

        assertThat(comparison.isForsaken()).isTrue();
        comparison.stop();
        assertThat(comparison.isForsaken()).isFalse();
    }

    @Test
    void isForsaken_whole_isFalse() throws IOException {
        comparison.result.complete(difference(comparison));

        assertThat(comparison.isForsaken()).isFalse();
        assertThat(comparison.percent()).isEqualTo(100);
        assertThat(comparison.within(0)).isPresent();
    }
}
