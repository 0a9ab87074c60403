package footing.io.workbook;

import footing.core.answer.MachineAnswer;
import footing.core.chance.Metalog;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import footing.io.words.Naming;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The sheet in which flats, billing, prices and lives can be altered. Every cell of the reader's begins as the number
 * that was stated; the expected saving follows.
 */
final class ChangeTab implements Cells {
    static final int RESULTS = 5;
    private static final int STATED = 2;
    private static final int YOURS = 5;
    private static final int FITS = 8;
    private static final double LEAST = 0.4;
    private static final double MOST = 2.5;

    private final Tab tab;
    private final Case stated;
    private final AssumptionsTab assumptions;
    private final Map<Input, Integer> rows = new LinkedHashMap<>();
    private final Map<String, Set<Integer>> byMachine = new LinkedHashMap<>();
    private final Map<Input, InForce> derived = new LinkedHashMap<>();
    private int firstInput;
    private int next;

    ChangeTab(Tab tab, Case stated, AssumptionsTab assumptions, int machines) {
        this.tab = tab;
        this.stated = stated;
        this.assumptions = assumptions;
        next = RESULTS + machines + 4;
    }

    void write(String note) {
        tab.text(0, 0, "Change me", Look.TITLE);
        tab.note(
                1,
                FITS,
                "Write into the yellow cells; the expected saving beside each machine follows. It is a model of expected values,"
                        + " not the simulation: how far it is from the simulated mean at the stated numbers stands beside it.");
        tab.note(
                2,
                FITS,
                "It says that it can't where a number is less than 0.4 or more than 2.5 times what was stated, or low, likely and"
                        + " high don't fit together: beyond that it was not held against the simulation.");
        tab.note(3, FITS, note);
        tab.heads(
                RESULTS - 1,
                0,
                3,
                List.of(
                        "machine",
                        "changed to",
                        "when",
                        "expected saving with your numbers",
                        "simulated mean with the stated numbers",
                        "this model is off by (seen while no number is changed)",
                        "standard error of the simulation"));
        tab.heads(
                Math.max(RESULTS, firstInput - 1),
                0,
                2,
                List.of(
                        "number",
                        "unit",
                        "stated low",
                        "stated",
                        "stated high",
                        "yours: low",
                        "yours",
                        "yours: high",
                        "fits (1) or not (0)"));
        tab.widths(0, 54, 18, 13, 15, 15, 14, 14, 14, 12);
        tab.freeze(RESULTS, 1);
    }

    /** Lists the numbers of a machine that can be changed for an entry. */
    void inputs(MachineAnswer answer, ResolvedMachine.Entry entry) {
        firstInput = firstInput == 0 ? next : firstInput;
        ResolvedMachine m = answer.machine();
        Values values = new Values(stated, stated.machine(m.id()));
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.of(stated.machine(m.id()).flatsKey(), m.id()));
        inputs.add(Input.of(Key.BILLING, m.crew().id()));
        if (m.isNew() && entry.upcharge().isPresent()) {
            inputs.add(new Input(Key.UPCHARGE, m.id(), entry.id()));
        }
        for (Position p : Position.values()) {
            if (m.differs(entry, p)) {
                for (String id : List.of(m.carried().at(p), entry.at(p))) {
                    for (Key key : List.of(Key.PRICE, Key.TIRE_PRICE, Key.RENEWAL_PRICE, Key.LIFE)) {
                        inputs.add(Input.of(key, id));
                    }
                }
            }
        }
        for (Input input : inputs) {
            values.find(input).ifPresent(number -> input(m, number));
        }
    }

    private void input(ResolvedMachine m, InForce number) {
        if (number.origin() == Origin.DEFAULT) {
            derived.put(number.input(), number);
            return;
        }
        Integer row = rows.get(number.input());
        if (row == null) {
            row = next++;
            rows.put(number.input(), row);
            line(row, number);
        }
        byMachine.computeIfAbsent(m.id(), id -> new TreeSet<>()).add(row);
    }

    private void line(int row, InForce number) {
        Input input = number.input();
        tab.wrapped(row, 0, Naming.of(stated, input));
        tab.text(
                row,
                1,
                AssumptionsTab.unit(input.key().dimension(), stated.heading().currency()));
        boolean three = number.value() instanceof Metalog;
        Look look = AssumptionsTab.look(input.key().dimension());
        Look yours = look == Look.MONEY ? Look.MONEY_YOURS : look == Look.SHARE ? Look.SHARE_YOURS : Look.NUMBER_YOURS;
        String[] from = {assumptions.low(input), assumptions.likely(input), assumptions.high(input)};
        for (int i = 0; i < from.length; i++) {
            if (three || i == 1) {
                String cell = tab.formula(row, STATED + i, from[i], look).local();
                tab.formula(row, YOURS + i, cell, yours);
            }
        }
        tab.formula(row, FITS, fits(row, three), Look.WHOLE);
    }

    private String fits(int row, boolean three) {
        String was = tab.at(row, STATED + 1).local();
        String is = tab.at(row, YOURS + 1).local();
        String near = "IF(" + was + "=0," + is + "=0,AND(" + is + ">=" + LEAST + "*" + was + "," + is + "<=" + MOST
                + "*" + was + "))";
        if (!three) {
            return "IF(" + near + ",1,0)";
        }
        String low = tab.at(row, YOURS).local();
        String high = tab.at(row, YOURS + 2).local();
        String position = "LN(" + is + "/" + low + ")/LN(" + high + "/" + low + ")";
        String between = "IF(AND(" + low + ">0," + low + "<" + is + "," + is + "<" + high + "),AND(" + position
                + ">=0.16659," + position + "<=0.83341),FALSE)";
        return "IF(AND(" + near + "," + between + "),1,0)";
    }

    /** Writes what comes of it for a machine. */
    void result(int line, MachineAnswer answer, ResolvedMachine.Entry entry, EngineTab engine) {
        int row = RESULTS + line;
        tab.text(row, 0, answer.id());
        tab.text(row, 1, entry.id());
        tab.text(row, 2, entry.when().name().toLowerCase(java.util.Locale.ROOT));
        StringBuilder fits = new StringBuilder(engine.fits().toString());
        for (int r : byMachine.getOrDefault(answer.id(), Set.of())) {
            fits.append(',').append(tab.at(r, FITS).local());
        }
        String here = tab.formula(
                        row, 3, "IF(MIN(" + fits + ")=1," + engine.saving() + ",\"can't say\")", Look.MONEY_TOTAL)
                .local();
        simulated(answer, entry).ifPresent(e -> {
            String mean = tab.number(row, 4, e.saving().mean(), Look.MONEY).local();
            tab.formula(row, 5, "IF(" + unchanged(answer.id()) + "," + here + "-" + mean + ",\"\")", Look.MONEY);
            tab.number(row, 6, e.saving().standardError(), Look.MONEY);
        });
    }

    /** True while every number of a machine is the stated one. */
    private String unchanged(String machine) {
        List<String> same = new ArrayList<>();
        for (int row : byMachine.getOrDefault(machine, Set.of())) {
            for (int i = 0; i < 3; i++) {
                same.add(tab.at(row, YOURS + i).local() + "="
                        + tab.at(row, STATED + i).local());
            }
        }
        return "AND(" + String.join(",", same) + ")";
    }

    private static Optional<footing.core.answer.EntryAnswer> simulated(
            MachineAnswer answer, ResolvedMachine.Entry entry) {
        return answer.entries().stream().filter(e -> e.entry().equals(entry)).findFirst();
    }

    @Override
    public String likely(Input input) {
        Integer row = rows.get(input);
        if (row != null) {
            return tab.at(row, YOURS + 1).toString();
        }
        if (derived.containsKey(input) && input.key() == Key.TIRE_PRICE) {
            return likely(Input.of(Key.PRICE, input.owner()));
        }
        if (derived.containsKey(input) && input.key() == Key.RENEWAL_PRICE) {
            boolean air = stated.assembly(input.owner()).kind().holdsAir();
            return likely(Input.of(air ? Key.TIRE_PRICE : Key.PRICE, input.owner()));
        }
        return assumptions.likely(input);
    }

    @Override
    public String low(Input input) {
        Integer row = rows.get(input);
        return row == null ? assumptions.low(input) : tab.at(row, YOURS).toString();
    }

    @Override
    public String high(Input input) {
        Integer row = rows.get(input);
        return row == null ? assumptions.high(input) : tab.at(row, YOURS + 2).toString();
    }
}
