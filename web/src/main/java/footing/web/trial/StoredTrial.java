package footing.web.trial;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A trial as it is kept.
 *
 * @param setup null where a file came
 * @param content the file as it came; null where the trial was begun here
 * @param fileName its name; null where there is none
 */
record StoredTrial(
        long id,
        String name,
        @Nullable Setup setup,
        @Nullable String content,
        @Nullable String fileName,
        boolean archived,
        Instant at) {
    Optional<Setup> begun() {
        return Optional.ofNullable(setup);
    }
}
