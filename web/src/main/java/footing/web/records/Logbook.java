package footing.web.records;

import footing.io.records.Ledger;
import footing.io.records.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * All of a case's records read together: sheets that aren't laid away, with their mends, and the rows written on the
 * page that weren't taken back.
 */
final class Logbook {
    static final String ENTRIES = "what was written here";

    private final List<Part> parts = new ArrayList<>();
    private final List<Ledger.Row> rows = new ArrayList<>();
    private final Map<String, RowKey> keys = new HashMap<>();
    private final Map<RowKey, Map<String, String>> cells = new LinkedHashMap<>();
    private final Ledger ledger;
    private final List<Ledger.Refused> refused;
    private int leftOut;

    /** A sheet and what reading it gave. */
    record Part(Kept.SheetFile kept, String label, Sheet read) {}

    private Logbook(
            List<Kept.SheetFile> sheets,
            Function<Kept.SheetFile, byte[]> content,
            List<Kept.Mended> mends,
            List<Kept.Written> entries) {
        Map<RowKey, List<Kept.Mended>> mended = byRow(mends);
        for (Kept.SheetFile kept : sheets) {
            if (!kept.archived()) {
                Sheet read = Sheet.read(kept.name(), content.apply(kept), kept.mapping());
                Part part = new Part(kept, label(kept.name()), read);
                parts.add(part);
                read.rows().forEach(r -> row(part, r, mended));
            }
        }
        for (Kept.Written entry : entries) {
            if (!entry.undone()) {
                add(new RowKey(0, (int) entry.id()), ENTRIES, entry.cells());
            }
        }
        ledger = Ledger.of(rows);
        refused = ledger.refused();
    }

    static Logbook of(
            List<Kept.SheetFile> sheets,
            Function<Kept.SheetFile, byte[]> content,
            List<Kept.Mended> mends,
            List<Kept.Written> entries) {
        return new Logbook(sheets, content, mends, entries);
    }

    private static Map<RowKey, List<Kept.Mended>> byRow(List<Kept.Mended> mends) {
        Map<RowKey, List<Kept.Mended>> byRow = new HashMap<>();
        mends.stream()
                .filter(m -> !m.undone())
                .forEach(m -> byRow.computeIfAbsent(new RowKey(m.sheet(), m.line()), k -> new ArrayList<>())
                        .add(m));
        return byRow;
    }

    /** Two sheets of one name are told apart. */
    private String label(String name) {
        String label = name;
        for (int n = 2; ; n++) {
            String wanted = label;
            if (parts.stream().noneMatch(p -> p.label().equals(wanted))) {
                return label;
            }
            label = name + " (" + n + ")";
        }
    }

    private void row(Part part, Sheet.Row row, Map<RowKey, List<Kept.Mended>> mended) {
        RowKey key = new RowKey(part.kept().id(), row.line());
        Map<String, String> now = row.cells();
        boolean out = false;
        for (Kept.Mended mend : mended.getOrDefault(key, List.of())) {
            out = mend.leavesOut();
            now = Cells.with(now, mend.cells());
        }
        if (out) {
            leftOut++;
        } else {
            add(key, part.label(), now);
        }
    }

    private void add(RowKey key, String source, Map<String, String> now) {
        cells.put(key, now);
        keys.put(key.line() + " " + source, key);
        rows.add(new Ledger.Row(source, key.line(), now));
    }

    List<Part> parts() {
        return List.copyOf(parts);
    }

    Ledger ledger() {
        return ledger;
    }

    /** Rows that can't be, in the order they came. */
    List<Ledger.Refused> refused() {
        return refused;
    }

    /** Rows a person left out. */
    int leftOut() {
        return leftOut;
    }

    RowKey key(Ledger.Row row) {
        RowKey key = keys.get(row.line() + " " + row.source());
        if (key == null) {
            throw new IllegalArgumentException("no such row: " + row);
        }
        return key;
    }

    /** What stands in a row with its mends; empty if there is none such, or it is left out. */
    Optional<Map<String, String>> cells(RowKey key) {
        return Optional.ofNullable(cells.get(key));
    }

    /** The name a sheet goes by here. */
    String label(long sheet) {
        return parts.stream()
                .filter(p -> p.kept().id() == sheet)
                .map(Part::label)
                .findFirst()
                .orElse("a sheet laid away");
    }

    /** Without the rows that can't be. */
    Ledger sound() {
        List<Ledger.Row> bad = refused.stream().map(Ledger.Refused::row).toList();
        java.util.Set<Ledger.Row> out = new java.util.HashSet<>(bad);
        return Ledger.of(rows.stream().filter(r -> !out.contains(r)).toList());
    }
}
