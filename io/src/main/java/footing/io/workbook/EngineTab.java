package footing.io.workbook;

import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import footing.core.future.HourGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A machine's model of expected values: the saving of one entry against the carried package, from the numbers in force
 * on 'Change me'. It goes by {@value #STEPS} steps over the hours left and averages over what is uncertain; sets follow
 * each other as in the simulation. What is unsure of a life is common to all sets of a course, flats unsure of a season
 * are taken into the ruins of each set as if it were gamma-distributed.
 */
final class EngineTab implements Facts {
    static final int STEPS = 60;
    private static final int FACTS = 3;
    private static final int AVERAGES = 20;
    private static final double FEWEST_STEPS = 6;
    private static final int CONSTANTS = 3;
    private static final int CONSTANT_ROWS = 16;
    private static final int NOTE_COLUMNS = 5;
    private static final int LABEL = 36;
    private static final int FIGURE = 14;

    private final Tab tab;
    private final RulesTab rules;
    private final MachineCells cells;
    private final ResolvedMachine machine;
    private final ResolvedMachine.Entry entry;
    private final PayingTab paying;
    private final Hits hits;
    private final Map<String, AgeTable> tables = new HashMap<>();
    private final Map<String, String> constants = new HashMap<>();
    private final HourGrid hours;
    private final List<String> mediansFit = new ArrayList<>();
    private int livesTop;
    private int nextLives = 1;
    private int agesTop;
    private int nextAges = 1;
    private Grid grid;
    private final Averages averages;

    EngineTab(Tab tab, RulesTab rules, MachineCells cells, ResolvedMachine.Entry entry, PayingTab paying) {
        this.tab = tab;
        this.rules = rules;
        this.cells = cells;
        machine = cells.machine();
        this.entry = entry;
        this.paying = paying;
        averages = new Averages(tab, rules, cells.cells(), AVERAGES);
        hits = new Hits(tab, cells, averages);
        hours = HourGrid.of(machine, STEPS);
        grid = new Grid(this, 0, hours);
    }

    void write() {
        tab.text(0, 0, machine.id() + ": what is expected, step by step", Look.TITLE);
        tab.note(
                1,
                NOTE_COLUMNS,
                "Every number comes from 'Change me' and 'Assumptions'. From top to bottom: averages of what is uncertain, one"
                        + " flat in money, lives of the sets, what becomes of a set by its age, the steps over the hours left.");
        Input flats = Input.of(cells.stated().machine(machine.id()).flatsKey(), machine.id());
        averages.add(flats, machine.flatsPerSeason(), "flats");
        for (Input input : FlatMoney.unsure(machine)) {
            averages.add(input, spread(input), input.path());
        }
        facts(flats);
        FlatMoney money = new FlatMoney(tab, rules, averages, cells, AVERAGES + Averages.HEIGHT + 1);
        money.write();
        livesTop = money.bottom() + assemblies().size() + 3;
        hits(money);
        LifeNodes.labels(tab, livesTop);
        agesTop = livesTop + LifeNodes.HEIGHT + 3;
        tab.text(agesTop - 2, 0, "By age, the oldest first", Look.STRONG);
        tab.heads(agesTop - 1, 0, List.of("age in steps"));
        for (int age = 0; age <= STEPS; age++) {
            tab.number(agesTop + STEPS - age, 0, age, Look.WHOLE);
        }
        result();
        tab.widths(0, 44, FIGURE);
        for (int i = 0; i < constants.size(); i += CONSTANT_ROWS) {
            tab.widths(CONSTANTS + 3 * i / CONSTANT_ROWS, LABEL, FIGURE);
        }
        tab.printOnly(FACTS + CONSTANT_ROWS + 1, CONSTANTS + 3 * (1 + (constants.size() - 1) / CONSTANT_ROWS));
        tab.freeze(FACTS, 1);
    }

    private footing.core.chance.Spread spread(Input input) {
        ResolvedCrew crew = machine.crew();
        return switch (input.key()) {
            case DELAY -> crew.fixes().get(Integer.parseInt(input.part())).delay();
            case MAKE_UP_LATER -> crew.makeUpLater();
            case FULL_LATER ->
                crew.fullWeeks().get(Integer.parseInt(input.part())).makeUpLater();
            case FLAT_FACTOR -> assembly(input.owner()).flatFactor();
            case RUIN_FACTOR -> assembly(input.owner()).ruinFactor();
            default -> throw new IllegalArgumentException(input.path());
        };
    }

    private List<ResolvedAssembly> assemblies() {
        List<ResolvedAssembly> all = new ArrayList<>();
        for (Position p : Position.values()) {
            if (machine.differs(entry, p)) {
                all.add(machine.assembly(machine.carried(), p));
                all.add(machine.assembly(entry, p));
            }
        }
        return all;
    }

    private void facts(Input flats) {
        String perYear = cells.own(Key.HOURS_PER_YEAR);
        boolean perThousand = flats.key() == Key.FLATS_PER_1000H;
        fact(0, "hours to the trade", cells.hoursLeft());
        fact(1, "hours of a step", fact(0) + "/" + STEPS);
        fact(2, "slope of flats over a set's age", cells.own(Key.WORN_TIRE_EFFECT));
        fact(
                3,
                "how unsure flats are (variance / mean squared)",
                "MAX(0.000001," + averages.meanSquare(flats) + "/MAX(0.000000001," + averages.mean(flats) + ")^2-1)");
        fact(4, "flats an hour", averages.mean(flats) + "/" + (perThousand ? "1000" : perYear));
        fact(5, "of them at the drives", fact(4) + "*" + cells.flatsAt(Position.DRIVE));
        fact(6, "of them at the casters", fact(4) + "*" + cells.flatsAt(Position.CASTER));
    }

    private void fact(int i, String label, String formula) {
        tab.text(FACTS + i, 0, label);
        tab.formula(FACTS + i, 1, formula, Look.FACTOR);
    }

    private String fact(int i) {
        return tab.at(FACTS + i, 1).local();
    }

    /** By assembly: the share of its hits that ruin it; by week, what a hit costs. */
    private void hits(FlatMoney money) {
        grid = new Grid(this, livesTop + LifeNodes.HEIGHT + STEPS + 8, hours);
        grid.write();
        hits.heads(money.bottom());
        for (ResolvedAssembly a : assemblies()) {
            if (!hits.knows(a)) {
                averages.add(Input.of(Key.FLAT_FACTOR, a.id()), a.flatFactor(), a.id() + ": flats left");
                averages.add(Input.of(Key.RUIN_FACTOR, a.id()), a.ruinFactor(), a.id() + ": ruins left");
                grid.addFlat(a, hits.add(a, money));
                mediansFit.add(cells.assembly(Key.LIFE, a.id()) + "*" + cells.own(Key.GROUND_WEAR));
            }
        }
    }

    private void result() {
        StringBuilder saved = new StringBuilder();
        int row = 7;
        for (Position p : Position.values()) {
            if (machine.differs(entry, p)) {
                ResolvedAssembly carried = machine.assembly(machine.carried(), p);
                ResolvedAssembly wanted = machine.assembly(entry, p);
                boolean now = entry.when() == When.NOW;
                fact(
                        row,
                        "cost of what it has, " + p.name().toLowerCase(java.util.Locale.ROOT),
                        course(new CourseBlock.Wish(p, carried, carried, carried), true, "as it is"));
                boolean keeps = !now || wanted.madeByTreating(carried);
                fact(
                        row + 1,
                        "cost of " + entry.id() + ", " + p.name().toLowerCase(java.util.Locale.ROOT),
                        course(new CourseBlock.Wish(p, carried, wanted, now ? wanted : carried), keeps, "changed"));
                saved.append("+" + fact(row) + "-" + fact(row + 1));
                row += 2;
            }
        }
        StartCost start = new StartCost(cells, entry);
        fact(12, "bought at the start", start.goods());
        fact(13, "shop time at the start", start.shopTime());
        fact(
                14,
                "present value of the start, after tax",
                paying.purchase(machine, fact(12), fact(13)) + "-" + paying.relief(machine, fact(12)));
        fact(15, "expected saving", "0" + saved + "-" + fact(14));
        fact(
                16,
                "fits (1) or not (0): the shortest life is " + (int) FEWEST_STEPS + " steps or more",
                "IF(MIN(" + String.join(",", mediansFit) + ")>=" + FEWEST_STEPS + "*" + step() + ",1,0)");
    }

    private String course(CourseBlock.Wish wish, boolean keepsHours, String how) {
        boolean unsure = wish.carried().lifeUnsure() > 0 || wish.wanted().lifeUnsure() > 0;
        StringBuilder sum = new StringBuilder();
        for (int n = 0; n < (unsure ? RulesTab.UNSURE : 1); n++) {
            int node = unsure ? n : 1;
            AgeTable first = table(wish.atStart(), wish.position(), keepsHours, node);
            List<AgeTable> later = List.of(
                    table(wish.wanted(), wish.position(), false, node),
                    table(wish.carried(), wish.position(), false, node));
            String name = wish.position().name().toLowerCase(java.util.Locale.ROOT) + " " + how
                    + (unsure ? ", " + (n + 1) + " of 3" : "");
            CourseBlock.Sums sums = new CourseBlock(grid, this, wish, first, later, name).write();
            String weight = unsure ? rules.unsureWeight(n) + "*" : "";
            String trade = "(" + sums.trade() + ")*" + grid.at(Grid.FACTOR, STEPS);
            sum.append(sum.isEmpty() ? "" : "+").append(weight + "(" + sums.running() + "-" + trade + ")");
        }
        return "(1-TaxRate)*(" + sum + ")";
    }

    private AgeTable table(ResolvedAssembly a, Position p, boolean first, int node) {
        int differs = a.lifeUnsure() > 0 ? node : 1;
        String key = a.id() + "\n" + p + "\n" + first + "\n" + differs;
        AgeTable known = tables.get(key);
        if (known != null) {
            return known;
        }
        String name =
                a.id() + (first ? ", on it now" : ", new") + (a.lifeUnsure() > 0 ? ", " + (differs + 1) + " of 3" : "");
        LifeNodes nodes = new LifeNodes(this, livesTop, nextLives, a, p, first);
        nextLives += LifeNodes.WIDTH;
        nodes.write(name, differs);
        AgeTable table = new AgeTable(this, nodes, a, p, new AgeTable.Place(agesTop, () -> nextAges++), name);
        tables.put(key, table);
        return table;
    }

    /** The expected saving. */
    At saving() {
        return tab.at(FACTS + 15, 1);
    }

    /** 1 if its steps are fine enough. */
    At fits() {
        return tab.at(FACTS + 16, 1);
    }

    @Override
    public Tab tab() {
        return tab;
    }

    @Override
    public RulesTab rules() {
        return rules;
    }

    @Override
    public MachineCells cells() {
        return cells;
    }

    @Override
    public String step() {
        return fact(1);
    }

    @Override
    public String slope() {
        return fact(2);
    }

    @Override
    public String unsureFlats() {
        return fact(3);
    }

    @Override
    public String flatsPerHour(Position p) {
        return fact(p == Position.DRIVE ? 5 : 6);
    }

    @Override
    public String ruined(ResolvedAssembly a) {
        return hits.ruined(a);
    }

    @Override
    public String constant(String label, String formula) {
        return constants.computeIfAbsent(formula, f -> {
            int i = constants.size();
            int column = CONSTANTS + 3 * (i / CONSTANT_ROWS);
            int row = FACTS + i % CONSTANT_ROWS;
            tab.text(row, column, label);
            return tab.formula(row, column + 1, f, Look.FACTOR).local();
        });
    }

    private ResolvedAssembly assembly(String id) {
        ResolvedAssembly found = machine.assemblies().get(id);
        if (found == null) {
            throw new IllegalArgumentException("no assembly " + id);
        }
        return found;
    }
}
