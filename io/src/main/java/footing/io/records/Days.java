package footing.io.records;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates of a sheet: ISO alone, since 4/5 is one day here and another there. */
final class Days {
    private static final Pattern ISO = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})(?:[T ][0-9:.]*)?");
    private static final Pattern OTHER = Pattern.compile("([0-9]{1,2})[./-]([0-9]{1,2})[./-]([0-9]{2}|[0-9]{4})");
    private static final int EARLIEST = 1980;
    private static final int LATEST = 2100;

    private Days() {}

    static LocalDate of(String text) throws BadCell {
        if (text.isEmpty()) {
            throw BadCell.missing(Column.DATE, "every row needs its date");
        }
        Matcher iso = ISO.matcher(text);
        if (!iso.matches()) {
            throw new BadCell(Column.DATE, text, "is no date", advice(text));
        }
        try {
            LocalDate date = date(iso.group(1), iso.group(2), iso.group(3));
            if (date.getYear() < EARLIEST || date.getYear() > LATEST) {
                throw new BadCell(Column.DATE, text, "lies outside " + EARLIEST + " to " + LATEST, "");
            }
            return date;
        } catch (DateTimeException e) {
            throw new BadCell(Column.DATE, text, "is no day of the calendar", "");
        }
    }

    private static LocalDate date(String year, String month, String day) {
        return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
    }

    /** The ISO form of another way to write a day: one if it can only mean that, both if it could be either. */
    private static String advice(String text) {
        Matcher other = OTHER.matcher(text);
        if (!other.matches()) {
            return "write it as 2026-04-13";
        }
        String year = other.group(3).length() == 2 ? "20" + other.group(3) : other.group(3);
        String monthFirst = iso(year, other.group(1), other.group(2));
        String dayFirst = iso(year, other.group(2), other.group(1));
        if (monthFirst.isEmpty() && dayFirst.isEmpty()) {
            return "write it as 2026-04-13";
        }
        boolean either = !monthFirst.isEmpty() && !dayFirst.isEmpty() && !monthFirst.equals(dayFirst);
        return "write " + (either ? monthFirst + " or " + dayFirst : monthFirst.isEmpty() ? dayFirst : monthFirst);
    }

    private static String iso(String year, String month, String day) {
        try {
            return date(year, month, day).toString();
        } catch (DateTimeException e) {
            return "";
        }
    }
}
