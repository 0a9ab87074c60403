package footing.core.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Rows of records in short: date, machine (- for none), event, hours (- for none), then words: a position, assembly=,
 * reason=, fix=, minutes=, quantity=, about=, depth=.
 */
final class Rows {
    List<Entry> read(String... texts) {
        List<Entry> rows = new ArrayList<>();
        for (String text : texts) {
            rows.add(row(rows.size() + 1, text.split(" ", -1)));
        }
        return rows;
    }

    private static Entry row(int line, String[] words) {
        List<String> rest = Arrays.asList(words).subList(Math.min(4, words.length), words.length);
        Spot spot = rest.stream()
                .filter(w -> !w.contains("="))
                .map(w -> Spot.valueOf(w.toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElse(null);
        boolean about = text(rest, "about") != null;
        Entry.Detail detail = new Entry.Detail(
                "",
                or(text(rest, "fix")),
                or(text(rest, "reason")),
                "",
                number(text(rest, "minutes")),
                OptionalDouble.empty(),
                number(about ? text(rest, "about") : text(rest, "quantity")),
                about,
                number(text(rest, "depth")));
        return new Entry(
                line,
                LocalDate.parse(words[0]),
                words[1].equals("-") ? "" : words[1],
                Event.valueOf(words[2].toUpperCase(Locale.ROOT)),
                words.length < 4 || words[3].equals("-")
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Double.parseDouble(words[3])),
                spot,
                or(text(rest, "assembly")),
                detail);
    }

    private static @Nullable String text(List<String> words, String key) {
        return words.stream()
                .filter(w -> w.startsWith(key + "="))
                .map(w -> w.substring(key.length() + 1))
                .findFirst()
                .orElse(null);
    }

    private static String or(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static OptionalDouble number(@Nullable String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
