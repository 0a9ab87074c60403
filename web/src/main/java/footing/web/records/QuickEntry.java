package footing.web.records;

import footing.core.fleet.Case;
import footing.io.records.Ledger;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A flat or a meter reading as a form sends it.
 *
 * @param fault why it can't be taken, in words; empty if it can
 */
record QuickEntry(String sentAs, Map<String, String> cells, String fault) {
    private static final Pattern MARK = Pattern.compile("[A-Za-z0-9-]{8,64}");
    private static final List<String> OF_A_FLAT = List.of("position", "fix", "minutes");

    /** True if a mark is one that a sender makes. */
    static boolean isMark(String sentAs) {
        return MARK.matcher(sentAs).matches();
    }

    static QuickEntry of(Map<String, String> form, Optional<Case> stated) {
        Map<String, String> cells = new LinkedHashMap<>();
        boolean flat = !form.getOrDefault("event", "flat").equals("reading");
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        put(cells, "date", form.getOrDefault("date", "").isBlank() ? today.toString() : form.get("date"));
        put(cells, "machine", form.get("machine"));
        cells.put("event", flat ? "flat" : "reading");
        put(cells, "hours", form.getOrDefault("hours", "").replace(",", "."));
        if (flat) {
            OF_A_FLAT.forEach(c -> put(cells, c, form.get(c)));
        }
        return new QuickEntry(form.getOrDefault("sentAs", ""), cells, fault(cells, stated, today));
    }

    private static void put(Map<String, String> cells, String column, @org.jspecify.annotations.Nullable String typed) {
        String text = typed == null ? "" : Cells.clean(typed);
        if (!text.isEmpty()) {
            cells.put(column, text);
        }
    }

    private static String fault(Map<String, String> cells, Optional<Case> stated, LocalDate today) {
        String machine = cells.getOrDefault("machine", "");
        if (machine.isEmpty()) {
            return "Choose a machine.";
        }
        if (stated.isPresent() && stated.get().machines().stream().noneMatch(m -> m.id().equals(machine))) {
            return "This case has no machine ‘" + machine + "’.";
        }
        if ("reading".equals(cells.get("event")) && !cells.containsKey("hours")) {
            return "A reading needs the hours on the meter.";
        }
        // Troubles with other rows have no column; those are listed on the page of records.
        return Ledger.of(List.of(new Ledger.Row("entry", 1, cells))).refused().stream()
                .filter(r -> !r.column().isEmpty())
                .map(QuickEntry::said)
                .findFirst()
                .orElseGet(() -> ahead(cells.getOrDefault("date", ""), today));
    }

    private static String said(Ledger.Refused refused) {
        return footing.io.words.Lists.capital(refused.column()) + " ‘" + refused.read() + "’: " + refused.reason()
                + ".";
    }

    /** A day ahead may be today elsewhere. */
    private static String ahead(String date, LocalDate today) {
        return date.compareTo(today.plusDays(1).toString()) > 0 ? "That day lies ahead." : "";
    }
}
