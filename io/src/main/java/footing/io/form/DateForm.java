package footing.io.form;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A day of a given year, as ISO 8601 writes it. */
public record DateForm() implements Form {
    private static final Pattern WRITTEN = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable LocalDate read(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Scalar scalar) || scalar.isNothing()) {
            Form.wrongShape(node, at, problems, "a date is due", advice());
            return null;
        }
        if (!WRITTEN.matcher(scalar.text()).matches()) {
            problems.error(at, scalar, "a date is year, month and day", advice());
            return null;
        }
        try {
            LocalDate date = LocalDate.parse(scalar.text());
            if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                return date;
            }
            problems.error(at, scalar, "outside the years " + FIRST_YEAR + " to " + LAST_YEAR, advice());
        } catch (DateTimeParseException e) {
            problems.error(at, scalar, "no such day in the calendar", advice());
        }
        return null;
    }

    private String advice() {
        return "try: " + example();
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>(Schemas.pattern("(?:19|20|21)\\d{2}-\\d{2}-\\d{2}"));
        schema.put("format", "date");
        return schema;
    }

    @Override
    public String example() {
        return "2027-03-01";
    }
}
