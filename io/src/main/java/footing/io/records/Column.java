package footing.io.records;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A column of a records sheet and the other names it goes by in a shop. */
enum Column {
    DATE("day", "when", "work date", "date worked", "day worked", "service date", "date of service"),
    MACHINE(
            "mower",
            "unit",
            "equipment",
            "machine id",
            "machine no",
            "machine number",
            "mower id",
            "mower no",
            "mower number",
            "unit no",
            "unit number",
            "equipment id",
            "equipment no",
            "asset",
            "asset no"),
    EVENT("what", "what happened", "entry", "kind", "event type", "kind of event", "action"),
    HOURS(
            "hour meter",
            "meter",
            "hrs",
            "meter reading",
            "hour meter reading",
            "meter hours",
            "machine hours",
            "machine hrs",
            "engine hours",
            "engine hrs",
            "hours on meter"),
    POSITION(
            "wheel",
            "axle",
            "where",
            "end of machine",
            "spot",
            "wheel position",
            "tire position",
            "which wheel",
            "which tire",
            "corner"),
    ASSEMBLY(
            "tire",
            "tires",
            "wheel and tire",
            "set",
            "part",
            "tire type",
            "kind of tire",
            "wheel type",
            "part no",
            "item"),
    CAUSE("cause of flat", "cause of the flat", "caused by", "what caused it"),
    FIX("repair", "how fixed", "what was done", "repair done", "action taken", "remedy", "how mended"),
    MINUTES(
            "min",
            "mins",
            "delay",
            "downtime",
            "time down",
            "minutes down",
            "down",
            "time lost",
            "lost time",
            "minutes lost",
            "time out",
            "duration"),
    COST("price", "paid", "amount", "money", "total", "charge", "spent"),
    REASON("why", "why off", "reason off", "reason for removal", "why taken off", "why changed"),
    QUANTITY("qty", "count", "number", "how many", "pieces", "flats", "number of flats", "tires bought"),
    DEPTH("tread", "tread depth", "depth of tread", "tread left", "remaining tread"),
    NOTE("notes", "remark", "remarks", "comment", "comments", "memo", "details");

    /** Units that may stand behind a name without brackets, such as {@code delay min}. */
    private static final Pattern UNIT_BEHIND = Pattern.compile(
            "(.+?)[\\s,_-]+(mm|cm|in|inch|inches|32nds|min|mins|minutes|h|hr|hrs|hours|usd|eur|gbp|cad|aud)\\.?",
            Pattern.CASE_INSENSITIVE);

    private final List<String> synonyms;

    Column(String... synonyms) {
        this.synonyms = List.of(synonyms);
    }

    String header() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The column a header means, whatever its case, marks and unit in brackets or behind it. */
    static Optional<Column> of(String header) {
        Optional<Column> whole = named(header);
        Matcher unit = UNIT_BEHIND.matcher(header.strip());
        return whole.isPresent() || !unit.matches() ? whole : named(unit.group(1));
    }

    private static Optional<Column> named(String header) {
        String plain = plain(header);
        return Arrays.stream(values())
                .filter(c -> c.isCalled(header) || c.synonyms.stream().anyMatch(s -> plain(s).equals(plain)))
                .findFirst();
    }

    /** True if a header is the column's own name and no synonym. */
    boolean isCalled(String header) {
        return plain(header()).equals(plain(header));
    }

    List<String> synonyms() {
        return synonyms;
    }

    /** Letters and digits alone, in lower case, without what stands in brackets. */
    static String plain(String text) {
        return text.replaceAll("[(\\[].*", "").toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** The unit of a header such as {@code depth (mm)} or {@code depth mm}; empty if it names none. */
    static String unit(String header) {
        int open = Math.max(header.indexOf('('), header.indexOf('['));
        int close = Math.max(header.indexOf(')'), header.indexOf(']'));
        if (open >= 0 && close > open) {
            return header.substring(open + 1, close).strip();
        }
        Matcher unit = UNIT_BEHIND.matcher(header.strip());
        return named(header).isEmpty() && unit.matches() ? unit.group(2) : "";
    }
}
