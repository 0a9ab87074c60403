package footing.io.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(value = 60, unit = TimeUnit.SECONDS)
class ThreadsTest {
    @Test
    void all_tasks_areDoneOnceEach() {
        for (int threads : new int[] {1, 2, 7}) {
            try (Threads workers = new Threads(threads)) {
                AtomicIntegerArray done = new AtomicIntegerArray(1000);
                workers.all(1000, done::incrementAndGet);
                for (int i = 0; i < 1000; i++) {
                    assertThat(done.get(i)).isEqualTo(1);
                }
            }
        }
    }

    @Test
    void all_withinTasks_doesNotLockUp() {
        try (Threads workers = new Threads(3)) {
            AtomicInteger done = new AtomicInteger();
            workers.all(20, i -> workers.all(20, j -> workers.all(3, k -> done.incrementAndGet())));
            assertThat(done).hasValue(1200);
        }
    }

    @Test
    void all_aTaskFails_passesTheFailureOn() {
        try (Threads workers = new Threads(3)) {
            assertThatThrownBy(() -> workers.all(100, i -> {
                        if (i == 17) {
                            throw new IllegalStateException("seventeen");
                        }
                    }))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("seventeen");
        }
    }

    @Test
    void all_noTasks_returns() {
        try (Threads workers = new Threads(2)) {
            AtomicInteger done = new AtomicInteger();
            workers.all(0, done::addAndGet);
            assertThat(done).hasValue(0);
        }
    }

    @Test
    void new_noThread_isRefused() {
        assertThatThrownBy(() -> new Threads(0)).hasMessageContaining("at least one");
    }
}
