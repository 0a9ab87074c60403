package footing.web.cases;

import footing.web.store.Change;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times and numbers as they are said. */
public final class Spoken {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("MMM d, uuuu", Locale.US);
    private static final Duration JUST_NOW = Duration.ofMinutes(1);

    private Spoken() {}

    /** 'just now', 'today at 2:05 PM', 'Mar 4 at 9:00 AM', 'Mar 4, 2025'. */
    static String time(Instant at, Instant now, ZoneId zone) {
        Duration since = Duration.between(at, now);
        if (!since.isNegative() && since.compareTo(JUST_NOW) < 0) {
            return "just now";
        }
        ZonedDateTime then = at.atZone(zone);
        ZonedDateTime today = now.atZone(zone);
        if (then.toLocalDate().equals(today.toLocalDate())) {
            return "today at " + CLOCK.format(then);
        }
        return then.getYear() == today.getYear()
                ? DAY.format(then) + " at " + CLOCK.format(then)
                : DAY_AND_YEAR.format(then);
    }

    public static String time(Instant at) {
        return time(at, Instant.now(), ZoneId.systemDefault());
    }

    /** What a change of a case was. */
    public static String change(Change change) {
        return switch (change.kind()) {
            case CREATED, CHANGED, RENAMED -> change.what();
            case UNDONE -> "Undone: " + change.what();
            case REDONE -> "Done again: " + change.what();
            case ARCHIVED -> "Archived";
            case RESTORED -> "Restored from the archive";
        };
    }

    /** '1 machine', '9 machines'. */
    static String count(int n, String thing) {
        return n + " " + thing + (n == 1 ? "" : "s");
    }
}
