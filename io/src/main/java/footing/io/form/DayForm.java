package footing.io.form;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A day of every year, month first; so 02-29 is none. */
public record DayForm() implements Form {
    private static final Pattern WRITTEN = Pattern.compile("\\d{2}-\\d{2}");

    @Override
    public void check(Node node, At at, Problems problems) {
        var unused = read(node, at, problems);
    }

    public @Nullable MonthDay read(Node node, At at, Problems problems) {
        if (!(node instanceof Node.Scalar scalar) || scalar.isNothing()) {
            Form.wrongShape(node, at, problems, "a day of the year is due", "try: " + example());
            return null;
        }
        if (!WRITTEN.matcher(scalar.text()).matches()) {
            String meant = DayText.of(scalar.text()).map(DayText::written).orElse(example());
            problems.error(at, scalar, "a day of the year is month and day, two digits each", "try: " + meant);
            return null;
        }
        if (scalar.text().equals("02-29")) {
            problems.error(at, scalar, "not a day of every year", "try: 02-28, 03-01");
            return null;
        }
        try {
            return MonthDay.of(
                    Integer.parseInt(scalar.text().substring(0, 2)),
                    Integer.parseInt(scalar.text().substring(3)));
        } catch (DateTimeException e) {
            problems.error(at, scalar, "no such day in the calendar; the month comes first", "try: " + example());
            return null;
        }
    }

    @Override
    public Map<String, Object> schema() {
        String long31 = "(?:01|03|05|07|08|10|12)-(?:0[1-9]|[12]\\d|3[01])";
        String long30 = "(?:04|06|09|11)-(?:0[1-9]|[12]\\d|30)";
        String february = "02-(?:0[1-9]|1\\d|2[0-8])";
        return Schemas.pattern("(?:" + long31 + "|" + long30 + "|" + february + ")");
    }

    @Override
    public String example() {
        return "04-05";
    }
}
