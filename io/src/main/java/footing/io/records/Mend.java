package footing.io.records;

import footing.io.form.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What would mend a row without asking more.
 *
 * @param words what it does, such as {@code date: 2026-04-13}
 * @param cells what is to stand in which column; none if the row is left out
 */
public record Mend(String words, Map<String, String> cells) {
    private static final Pattern DATES =
            Pattern.compile("write ([0-9]{4}-[0-9]{2}-[0-9]{2})(?: or ([0-9]{4}-[0-9]{2}-[0-9]{2}))?");
    private static final Pattern NUMBER = Pattern.compile("write ([0-9.]+)");
    private static final Pattern DEPTHS = Pattern.compile("write ([0-9.]+ mm) or ([0-9.]+/32 in)");
    private static final Pattern LIKE = Pattern.compile("did you mean '(.+)'\\?");
    private static final Pattern LEADING = Pattern.compile("([0-9]+(?:\\.[0-9]*)?).*", Pattern.DOTALL);

    public Mend {
        cells = Map.copyOf(cells);
    }

    public boolean leavesOut() {
        return cells.isEmpty();
    }

    /** What is plain of a row that can't be: a cell read in one of a few ways, or a row that says nothing new. */
    static List<Mend> of(Problem p, Map<String, String> row) {
        List<Mend> mends = new ArrayList<>();
        for (Pattern pattern : List.of(DATES, DEPTHS, NUMBER, LIKE)) {
            Matcher m = pattern.matcher(p.advice());
            if (m.matches()) {
                for (int i = 1; i <= m.groupCount(); i++) {
                    if (m.group(i) != null) {
                        mends.add(set(p.path(), m.group(i)));
                    }
                }
                return mends;
            }
        }
        Matcher leading = LEADING.matcher(row.getOrDefault(p.path(), ""));
        if (p.advice().equals("write the number alone") && leading.matches()) {
            mends.add(set(p.path(), leading.group(1)));
        } else if (p.message().endsWith("say drive or caster")) {
            mends.add(set(p.path(), "drive"));
            mends.add(set(p.path(), "caster"));
        } else if (p.message().startsWith("the same row stands")) {
            mends.add(new Mend("leave this one out", Map.of()));
        }
        return mends;
    }

    private static Mend set(String column, String value) {
        return new Mend(column + ": " + value, Map.of(column, value));
    }
}
