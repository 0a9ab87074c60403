package footing.io.records;

import footing.core.records.Event;
import footing.core.records.Spot;
import footing.io.form.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The words a cell of a fixed vocabulary may hold, and what each means. */
final class Vocabulary<T> {
    static final Vocabulary<Event> EVENTS = new Vocabulary<Event>()
            .with(Event.BEGIN, "begin", "start", "began", "started")
            .with(Event.READING, "reading", "meter", "hours", "meter reading")
            .with(Event.FIT, "fit", "fitted", "mounted", "installed", "put on")
            .with(Event.OFF, "off", "taken off", "removed")
            .with(Event.FLAT, "flat", "flats", "puncture", "flat tire")
            .with(Event.TREAD, "tread", "tread depth", "depth")
            .with(Event.BOUGHT, "bought", "purchase", "purchased", "parts")
            .with(Event.END, "end", "ended", "stop", "stopped");
    static final Vocabulary<Spot> SPOTS = new Vocabulary<Spot>()
            .with(Spot.DRIVE, "drive", "drives", "rear", "back", "left rear", "right rear", "drive left", "drive right")
            .with(Spot.CASTER, "caster", "casters", "front", "left front", "right front", "caster left", "caster right")
            .with(Spot.METER, "meter", "hour meter");
    static final Vocabulary<String> REASONS = new Vocabulary<String>()
            .with("worn", "worn", "worn out", "bald", "no tread")
            .with("ruined", "ruined", "cut", "gash", "flat", "damaged")
            .with("sold", "sold", "traded")
            .with("swapped", "swapped", "swap", "moved");

    private final Map<String, T> meanings = new HashMap<>();
    private final List<String> first = new ArrayList<>();

    private Vocabulary<T> with(T meaning, String... words) {
        first.add(words[0]);
        Arrays.stream(words).forEach(w -> meanings.put(Column.plain(w), meaning));
        return this;
    }

    T read(Column column, String text) throws BadCell {
        T meaning = meanings.get(Column.plain(text));
        if (meaning == null) {
            String near = Nearest.find(text.toLowerCase(Locale.ROOT), first)
                    .map(n -> "did you mean '" + n + "'?")
                    .orElse("known here: " + String.join(", ", first));
            throw new BadCell(column, text, "is not known as " + column.header(), near);
        }
        return meaning;
    }
}
