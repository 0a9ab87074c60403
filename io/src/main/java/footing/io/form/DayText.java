package footing.io.form;

import java.time.DateTimeException;
import java.time.Month;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A day of the year as people write it: 'April 1', '1 Apr.', '4/1' or '04-01'; the month first where both are numbers. */
public final class DayText {
    private static final String NAME = "([a-z]{3,9})\\.?";
    private static final String DAY = "(\\d{1,2})(?:st|nd|rd|th)?";
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})[-/](\\d{1,2})");
    private static final Pattern NAME_FIRST = Pattern.compile(NAME + "\\s?" + DAY);
    private static final Pattern DAY_FIRST = Pattern.compile(DAY + "\\s?" + NAME);

    private DayText() {}

    /** The day; empty for what is none of every year. */
    public static Optional<MonthDay> of(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Matcher m = NUMBERS.matcher(plain);
        if (m.matches()) {
            return day(Integer.parseInt(m.group(1)), m.group(2));
        }
        m = NAME_FIRST.matcher(plain);
        if (m.matches()) {
            return day(month(m.group(1)), m.group(2));
        }
        m = DAY_FIRST.matcher(plain);
        return m.matches() ? day(month(m.group(2)), m.group(1)) : Optional.empty();
    }

    /** By its first letters, as long as all of them are right. */
    private static int month(String name) {
        for (Month month : Month.values()) {
            if (month.name().toLowerCase(Locale.ROOT).startsWith(name)) {
                return month.getValue();
            }
        }
        return 0;
    }

    private static Optional<MonthDay> day(int month, String day) {
        try {
            MonthDay found = MonthDay.of(month, Integer.parseInt(day));
            return found.equals(MonthDay.of(2, 29)) ? Optional.empty() : Optional.of(found);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** As a case file writes it: '04-01'. */
    public static String written(MonthDay day) {
        return day.toString().substring(2);
    }
}
