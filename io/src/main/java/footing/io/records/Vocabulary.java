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
import java.util.stream.Stream;

/** The words a cell of a fixed vocabulary may hold, and what each means. */
final class Vocabulary<T> {
    static final Vocabulary<Event> EVENTS = new Vocabulary<Event>()
            .with(Event.BEGIN, "begin", "start", "began", "started", "beginning")
            .with(
                    Event.READING,
                    "reading",
                    "meter",
                    "hours",
                    "meter reading",
                    "hour meter",
                    "hour reading",
                    "hour check")
            .with(Event.FIT, "fit", "fitted", "mounted", "mount", "installed", "install", "put on", "new set")
            .with(Event.OFF, "off", "taken off", "took off", "removed", "pulled", "dismounted")
            .with(
                    Event.FLAT,
                    "flat",
                    "flats",
                    "puncture",
                    "punctured",
                    "flat tire",
                    "went flat",
                    "tire flat",
                    "blowout")
            .with(Event.TREAD, "tread", "tread depth", "depth", "tread reading", "tread check")
            .with(Event.BOUGHT, "bought", "purchase", "purchased", "parts", "ordered", "order")
            .with(Event.END, "end", "ended", "stop", "stopped", "finish", "finished");
    static final Vocabulary<Spot> SPOTS = new Vocabulary<Spot>()
            .with(Spot.DRIVE, "drive", "drives", "rear", "back", "rears", "rear left", "rear right")
            .with(Spot.DRIVE, ends("drive", "rear", "back"))
            .with(Spot.CASTER, "caster", "casters", "front", "fronts", "front left", "front right")
            .with(Spot.CASTER, ends("caster", "front"))
            .with(Spot.METER, "meter", "hour meter");
    static final Vocabulary<String> REASONS = new Vocabulary<String>()
            .with("worn", "worn", "worn out", "wore out", "worn down", "bald", "no tread", "wear")
            .with("ruined", "ruined", "cut", "gash", "flat", "damaged", "destroyed", "torn", "blown")
            .with("sold", "sold", "traded")
            .with("swapped", "swapped", "swap", "moved");

    private static final int LONGEST = 60;

    private final Map<String, T> meanings = new HashMap<>();
    private final List<String> first = new ArrayList<>();

    /** The ways to name one of the wheels at an end of the machine. */
    private static String[] ends(String... names) {
        return Arrays.stream(names)
                .flatMap(n -> Stream.of(
                        "left " + n,
                        "right " + n,
                        n + " left",
                        n + " right",
                        n + " tire",
                        n + " tires",
                        n + " wheel",
                        n + " wheels"))
                .toArray(String[]::new);
    }

    private Vocabulary<T> with(T meaning, String... words) {
        if (!meanings.containsValue(meaning)) {
            first.add(words[0]);
        }
        Arrays.stream(words).forEach(w -> meanings.put(Column.plain(w), meaning));
        return this;
    }

    T read(Column column, String text) throws BadCell {
        T meaning = text.length() > LONGEST ? null : meanings.get(Column.plain(text));
        if (meaning == null) {
            String near = Nearest.find(text.toLowerCase(Locale.ROOT), first)
                    .map(n -> "did you mean '" + n + "'?")
                    .orElse("known here: " + String.join(", ", first));
            throw new BadCell(column, text, "is not known as " + column.header(), near);
        }
        return meaning;
    }
}
