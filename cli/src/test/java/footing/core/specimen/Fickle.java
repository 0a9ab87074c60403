package footing.core.specimen;

import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;

/** Says another thing tomorrow or elsewhere. */
@SuppressWarnings({"JavaTimeDefaultTimeZone", "JavaUtilDate", "StringCaseLocaleUsage", "FormatStringAnnotation"})
final class Fickle {
    List<Object> time() {
        return List.of(Instant.now(), LocalDate.now(), System.nanoTime(), Clock.systemUTC(), new Date());
    }

    List<Object> chance() {
        return List.of(Math.random(), new Random(), ThreadLocalRandom.current(), UUID.randomUUID());
    }

    List<Object> defaultLocale() {
        return List.of(
                Locale.getDefault(),
                String.format("%.1f", 1.5),
                "%.1f".formatted(1.5),
                "I".toLowerCase(),
                new DecimalFormat("0.0"),
                NumberFormat.getInstance(),
                DateTimeFormatter.ofPattern("MMM"));
    }

    List<Object> namedLocale() {
        return List.of(
                String.format(Locale.ROOT, "%.1f", 1.5),
                "I".toLowerCase(Locale.ROOT),
                NumberFormat.getInstance(Locale.US),
                DateTimeFormatter.ofPattern("MMM", Locale.US));
    }
}
