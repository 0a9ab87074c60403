package footing.web.records;

import footing.core.fleet.Case;
import footing.core.records.Entry;
import footing.io.words.Figures;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the page for quick entries offers.
 *
 * @param machines keys to choose from; none if the case file can't be read, and then a machine is typed
 * @param last the rows written last, latest first
 */
record LogView(List<MachineKey> machines, List<String> fixes, List<Last> last) {
    private static final int MOST_LAST = 5;

    /**
     * A machine.
     *
     * @param meter what its meter showed last, in words; empty if nobody wrote it down
     */
    record MachineKey(String id, boolean chosen, String meter) {}

    /** A row written lately. */
    record Last(long id, String sentAs, String said, boolean undone) {
        static Last of(Kept.Written entry) {
            return new Last(entry.id(), entry.sentAs(), EntryWords.of(entry.cells()), entry.undone());
        }
    }

    /** @param wanted the machine asked for; else the one written of last is chosen */
    static LogView of(Optional<Case> stated, Logbook book, List<Kept.Written> entries, String wanted) {
        List<Kept.Written> latest = new ArrayList<>(entries);
        Collections.reverse(latest);
        String before = latest.isEmpty() ? "" : latest.get(0).cells().getOrDefault("machine", "");
        String chosen = wanted.isEmpty() ? before : wanted;
        List<MachineKey> machines = new ArrayList<>();
        Set<String> fixes = new LinkedHashSet<>();
        stated.ifPresent(c -> {
            c.machines().forEach(m -> machines.add(new MachineKey(m.id(), m.id().equals(chosen), meter(book, m.id()))));
            c.crews().forEach(crew -> crew.fixes().forEach(f -> fixes.add(f.name())));
        });
        if (machines.size() == 1) {
            machines.set(
                    0,
                    new MachineKey(machines.get(0).id(), true, machines.get(0).meter()));
        }
        return new LogView(
                machines,
                List.copyOf(fixes),
                latest.stream().limit(MOST_LAST).map(Last::of).toList());
    }

    private static String meter(Logbook book, String machine) {
        List<Entry> rows = book.ledger().log().machines().getOrDefault(machine, List.of());
        for (int i = rows.size() - 1; i >= 0; i--) {
            Entry row = rows.get(i);
            if (row.hours().isPresent()) {
                return Figures.money(row.hours().getAsDouble()) + " h on " + row.date();
            }
        }
        return "";
    }
}
