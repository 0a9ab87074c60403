package footing.io.proposal;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.chance.Metalog;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.io.words.Lists;
import footing.io.words.Naming;
import footing.io.words.Origins;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The numbers an answer assumes, side by side: a line for each kind of number, a column for each crew, wheel or machine
 * that has it. What was not the user's is marked, and the line says why it is what it is.
 */
final class AssumptionGrid {
    /** What the marks mean. */
    static final String LEGEND = "Without a mark: yours. * a guess, its reason at the end of the line; t typical, not a"
            + " quote; r from your records.";

    static final String ID = "side-by-side";

    private static final int MOST_COLUMNS = 6;

    private final Case stated;
    private final List<InForce> numbers;

    private AssumptionGrid(Case stated, List<InForce> numbers) {
        this.stated = stated;
        this.numbers = numbers;
    }

    static List<Table> crews(Answer answer) {
        Set<Place> places = Set.of(Place.CREW, Place.FULL_WEEK);
        return of(answer, places::contains).tables("Crews");
    }

    /** What each crew does about a flat, a line each. */
    static Table fixes(Answer answer) {
        AssumptionGrid all = of(answer, Place.FIX::equals);
        Table.Builder table = Table.named(
                ID,
                "What is done about a flat",
                "crew and fix",
                "#of all flats",
                "#until it cuts again",
                "#out of pocket",
                "#work still done",
                "why the guesses");
        Map<String, Map<String, InForce>> lines = new LinkedHashMap<>();
        for (InForce n : all.numbers) {
            lines.computeIfAbsent(Naming.fix(answer.of(), n.input()), l -> new LinkedHashMap<>())
                    .put(n.input().key().key(), n);
        }
        lines.forEach((fix, line) -> {
            List<Cell> cells = new ArrayList<>(List.of(Cell.text(fix)));
            for (Key key : Key.of(Place.FIX)) {
                cells.add(line.containsKey(key.key()) ? Cell.text(shown(line.get(key.key()))) : Cell.EMPTY);
            }
            cells.add(Cell.text(String.join("; ", reasons(line))));
            table.row(cells.toArray(Cell[]::new));
        });
        return table.built();
    }

    static List<Table> wheels(Answer answer) {
        return of(answer, Place.ASSEMBLY::equals).tables("Wheels");
    }

    static List<Table> machines(Answer answer) {
        return of(answer, Place.MACHINE::equals).tables("Machines");
    }

    private static AssumptionGrid of(Answer answer, Predicate<Place> places) {
        List<String> machines =
                answer.machines().stream().map(MachineAnswer::id).toList();
        return new AssumptionGrid(
                answer.of(),
                Origins.inForce(answer.of(), machines).stream()
                        .filter(n -> places.test(n.input().key().place()))
                        .toList());
    }

    /** As many tables as it takes to keep the columns readable. */
    private List<Table> tables(String title) {
        Set<String> all = new LinkedHashSet<>();
        numbers.forEach(n -> all.add(n.input().owner()));
        List<String> owners = List.copyOf(all);
        List<Table> tables = new ArrayList<>();
        int each = columns(owners.size());
        for (int from = 0; from < owners.size(); from += each) {
            tables.add(table(title, owners.subList(from, Math.min(from + each, owners.size()))));
        }
        return tables;
    }

    /** Columns shared out evenly over as few tables as hold them. */
    private static int columns(int owners) {
        int tables = Math.max(1, (owners + MOST_COLUMNS - 1) / MOST_COLUMNS);
        return (owners + tables - 1) / tables;
    }

    private Table table(String title, List<String> owners) {
        List<String> heads = new ArrayList<>(List.of("number"));
        owners.forEach(o -> heads.add("#" + head(o)));
        heads.add("why the guesses");
        Table.Builder table = Table.named(ID, title, heads.toArray(String[]::new));
        lines(owners).forEach((label, byOwner) -> {
            List<Cell> cells = new ArrayList<>(List.of(Cell.text(label)));
            owners.forEach(o -> cells.add(byOwner.containsKey(o) ? Cell.text(shown(byOwner.get(o))) : Cell.EMPTY));
            cells.add(Cell.text(String.join("; ", reasons(byOwner))));
            table.row(cells.toArray(Cell[]::new));
        });
        return table.built();
    }

    /** Wheels by what they are; crews and machines are called by their ids. */
    private String head(String owner) {
        boolean wheels = numbers.get(0).input().key().place() == Place.ASSEMBLY;
        return wheels ? Called.in(stated).assembly(owner) : owner;
    }

    private Map<String, Map<String, InForce>> lines(List<String> owners) {
        Map<String, Map<String, InForce>> lines = new LinkedHashMap<>();
        for (InForce n : numbers) {
            if (owners.contains(n.input().owner())) {
                String label = Lists.capital(Naming.withoutOwner(stated, n.input()));
                lines.computeIfAbsent(label, l -> new LinkedHashMap<>())
                        .put(n.input().owner(), n);
            }
        }
        return lines;
    }

    private static Set<String> reasons(Map<String, InForce> line) {
        Set<String> reasons = new LinkedHashSet<>();
        for (InForce n : line.values()) {
            if (n.origin() == Origin.DEFAULT) {
                reasons.add(n.why());
            } else if (n.origin() == Origin.GUESSED) {
                reasons.add("the case file's");
            }
        }
        return reasons;
    }

    private static String shown(InForce n) {
        String value = n.value() instanceof Metalog m
                ? Naming.value(n.input().key().dimension(), m.likely()) + " (" + Naming.value(n) + ")"
                : Naming.value(n);
        return Cell.minus(value) + mark(n.origin());
    }

    private static String mark(Origin origin) {
        return switch (origin) {
            case STATED -> "";
            case LEARNED -> " r";
            case TYPICAL -> " t";
            case GUESSED, DEFAULT -> " *";
        };
    }
}
