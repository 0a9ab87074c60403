package footing.core.fitting;

import footing.core.fleet.Measure;
import org.jspecify.annotations.Nullable;

/**
 * The one thing to find out that would settle a test.
 *
 * @param path where it goes in the case file
 * @param measure what to measure; null for the seat of the lug nuts
 */
public record Settle(String path, @Nullable Measure measure) {}
