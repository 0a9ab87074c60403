package footing.web.records;

import java.util.Map;

/** A row written on the page, in words. */
final class EntryWords {
    private EntryWords() {}

    /** 'Flat on E1, drive, plug on site, 35 min, at 1240 h, 2026-05-04'. */
    static String of(Map<String, String> cells) {
        StringBuilder words = new StringBuilder();
        words.append(cells.getOrDefault("event", "").equals("flat") ? "Flat on " : "Meter of ")
                .append(cells.getOrDefault("machine", ""));
        add(words, ", ", cells.get("position"), "");
        add(words, ", ", cells.get("fix"), "");
        add(words, ", ", cells.get("minutes"), " min");
        add(words, ", at ", cells.get("hours"), " h");
        add(words, ", ", cells.get("date"), "");
        return words.toString();
    }

    private static void add(
            StringBuilder words, String before, @org.jspecify.annotations.Nullable String text, String after) {
        if (text != null && !text.isEmpty()) {
            words.append(before).append(text).append(after);
        }
    }
}
