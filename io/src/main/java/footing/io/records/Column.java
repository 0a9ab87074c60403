package footing.io.records;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A column of a records sheet and the other names it goes by in a shop. */
enum Column {
    DATE("day", "when"),
    MACHINE("mower", "unit", "equipment", "machine id", "unit no", "unit number"),
    EVENT("what", "what happened", "entry", "kind"),
    HOURS("hour meter", "meter", "hrs", "meter reading", "machine hours", "engine hours"),
    POSITION("wheel", "axle", "where", "end of machine", "spot"),
    ASSEMBLY("tire", "tires", "wheel and tire", "set", "part"),
    CAUSE("cause of flat"),
    FIX("repair", "how fixed", "what was done"),
    MINUTES("min", "downtime", "time down", "minutes down"),
    COST("price", "paid", "amount", "money"),
    REASON("why", "why off"),
    QUANTITY("qty", "count", "number", "how many", "pieces"),
    DEPTH("tread", "tread depth", "depth of tread"),
    NOTE("notes", "remark", "remarks", "comment", "comments");

    private final List<String> synonyms;

    Column(String... synonyms) {
        this.synonyms = List.of(synonyms);
    }

    String header() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The column a header means, whatever its case, marks and unit in brackets. */
    static Optional<Column> of(String header) {
        String plain = plain(header);
        return Arrays.stream(values())
                .filter(c ->
                        plain(c.header()).equals(plain) || c.synonyms.stream().anyMatch(s -> plain(s).equals(plain)))
                .findFirst();
    }

    /** Letters and digits alone, in lower case, without what stands in brackets. */
    static String plain(String text) {
        return text.replaceAll("[(\\[].*", "").toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** What stands in brackets of a header, such as the unit of {@code depth (mm)}. */
    static String unit(String header) {
        int open = Math.max(header.indexOf('('), header.indexOf('['));
        int close = Math.max(header.indexOf(')'), header.indexOf(']'));
        return open >= 0 && close > open ? header.substring(open + 1, close).strip() : "";
    }
}
