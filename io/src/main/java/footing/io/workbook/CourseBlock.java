package footing.io.workbook;

import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import java.util.ArrayList;
import java.util.List;

/**
 * What one position is expected to go through under one wish, step by step: sets wear out or are ruined, others are
 * fitted, flats come with what is on. Sets fitted earlier reach a step through the tables by age.
 */
final class CourseBlock {
    private static final int LAST = EngineTab.STEPS;

    private final Grid grid;
    private final Facts facts;
    private final Wish wish;
    private final String name;
    private final AgeTable first;
    private final List<Side> sides = new ArrayList<>();
    private int always;

    /** The wish: which set is carried, which is wanted, which is on at the start. */
    record Wish(Position position, ResolvedAssembly carried, ResolvedAssembly wanted, ResolvedAssembly atStart) {
        boolean changes() {
            return !wanted.id().equals(carried.id());
        }
    }

    /** One of the assemblies that may be on, its table and its columns. */
    private static final class Side {
        final ResolvedAssembly assembly;
        final AgeTable table;
        int worn;
        int ruined;
        int fitted;
        int bald;
        int flats;
        int young;
        int on;

        Side(ResolvedAssembly assembly, AgeTable table) {
            this.assembly = assembly;
            this.table = table;
        }
    }

    CourseBlock(Grid grid, Facts facts, Wish wish, AgeTable first, List<AgeTable> tables, String name) {
        this.grid = grid;
        this.facts = facts;
        this.wish = wish;
        this.first = first;
        this.name = name;
        sides.add(new Side(wish.wanted(), tables.get(0)));
        if (wish.changes()) {
            sides.add(new Side(wish.carried(), tables.get(1)));
        }
    }

    /** Writes the columns; returns the present value of the course before tax, the trade off. */
    Sums write() {
        if (wish.changes()) {
            always = grid.column(
                    name + ": the rest is long enough for the wanted set",
                    j -> grid.share(
                            j,
                            facts.cells().own(Key.NO_NEW_SET_WITHIN) + "*"
                                    + facts.cells()
                                            .assembly(Key.LIFE, wish.wanted().id()) + "*"
                                    + facts.cells().own(Key.GROUND_WEAR)));
        }
        for (Side s : sides) {
            String of = name + ", " + s.assembly.id();
            s.worn = grid.reserve(of + ": worn out");
            s.ruined = s.assembly.kind().holdsAir() ? grid.reserve(of + ": ruined beyond half its life") : -1;
            s.fitted = grid.reserve(of + ": fitted");
            s.bald = grid.reserve(of + ": bald by now");
            s.flats = grid.reserve(of + ": flats, of an average tire's");
            s.young = s.assembly.kind().holdsAir() ? grid.reserve(of + ": those before half its life") : s.flats;
            s.on = grid.reserve(of + ": on");
        }
        int sets = grid.reserve(name + ": renewals and both sides, today's money");
        int hour = grid.reserve(name + ": all else an hour, today's money");
        for (int j = 0; j <= LAST; j++) {
            for (Side s : sides) {
                ends(s, j);
            }
            for (Side s : sides) {
                fitted(s, j);
                present(s, j);
            }
            grid.put(sets, j, sets(j));
            grid.put(hour, j, hour(j));
        }
        String running = "SUMPRODUCT(" + grid.range(sets) + "," + grid.range(Grid.FACTOR) + ")+SUMPRODUCT("
                + grid.range(hour) + "," + grid.range(Grid.WEIGHT) + ")";
        return new Sums(running, trade());
    }

    /**
     * What a course comes to, as formulas.
     *
     * @param running present value of the running parts, before tax
     * @param trade today's money of what its set is worth at the trade
     */
    record Sums(String running, String trade) {}

    /** What comes to step j from sets fitted before it, and from the first one. */
    private String come(Side s, int column, int firstColumn, int j, boolean withNew) {
        int to = withNew ? j : j - 1;
        String earlier = to < 0
                ? ""
                : "SUMPRODUCT(" + grid.range(s.fitted, 0, to) + "," + s.table.range(column, j, withNew ? 0 : 1) + ")";
        if (s.assembly.id().equals(wish.atStart().id())) {
            String own = first.at(firstColumn, j);
            return earlier.isEmpty() ? own : earlier + "+" + own;
        }
        return earlier.isEmpty() ? "0" : earlier;
    }

    private void ends(Side s, int j) {
        grid.put(s.worn, j, come(s, s.table.wornOut, first.wornOut, j, false));
        if (s.ruined >= 0) {
            String half = j == LAST ? "/2" : "";
            grid.put(s.ruined, j, "(" + come(s, s.table.ruined, first.ruined, j, false) + ")" + half);
        }
        String before = j == 0 ? "" : grid.at(s.bald, j - 1) + "+";
        String half = j == LAST ? "/2" : "";
        grid.put(s.bald, j, before + grid.at(s.worn, j) + "*(1-" + grid.at(Grid.RENEWED, j) + ")" + half);
    }

    private String renewed(Side s, int j) {
        return grid.at(s.worn, j) + "*" + grid.at(Grid.RENEWED, j);
    }

    private String ended(Side s, int j) {
        return s.ruined < 0 ? renewed(s, j) : "(" + renewed(s, j) + "+" + grid.at(s.ruined, j) + ")";
    }

    /** Share of the sets of a side that end in step j after which the wanted assembly is fitted. */
    private String wantedAfter(Side s, int j) {
        if (!wish.changes()) {
            return "1";
        }
        String cheaper = facts.constant(
                "1 if a short rest goes on " + wish.carried().id() + " after " + s.assembly.id(),
                "IF(" + cost(wish.carried(), s.assembly) + "<0.7*" + cost(wish.wanted(), s.assembly) + ",1,0)");
        return "IF(" + cheaper + "=1," + grid.at(always, j) + ",1)";
    }

    private String after(Side s, Side fitted, int j) {
        String wanted = wantedAfter(s, j);
        return fitted == sides.get(0) ? wanted : "(1-" + wanted + ")";
    }

    private void fitted(Side fitted, int j) {
        StringBuilder sum = new StringBuilder();
        for (Side s : sides) {
            sum.append(sum.isEmpty() ? "" : "+").append(ended(s, j)).append('*').append(after(s, fitted, j));
        }
        grid.put(fitted.fitted, j, sum.toString());
    }

    private void present(Side s, int j) {
        String bald = "(" + grid.at(s.bald, j) + (j == 0 ? "" : "+" + grid.at(s.bald, j - 1)) + ")/2";
        String worst = "(1+" + facts.slope() + "/2)";
        boolean air = s.assembly.kind().holdsAir();
        grid.put(s.flats, j, come(s, s.table.flats, first.flats, j, true) + "+" + bald + "*" + worst);
        if (air) {
            grid.put(s.young, j, come(s, s.table.young, first.young, j, true));
        }
        grid.put(s.on, j, come(s, s.table.on, first.on, j, true) + "+" + bald);
    }

    /** Money for a set of one assembly when another comes off. */
    private String cost(ResolvedAssembly fitted, ResolvedAssembly off) {
        Key price = fitted.id().equals(off.id()) ? Key.RENEWAL_PRICE : Key.PRICE;
        return facts.cells().count(wish.position()) + "*" + facts.cells().assembly(price, fitted.id());
    }

    private String renewal(ResolvedAssembly fitted, ResolvedAssembly off) {
        MachineCells c = facts.cells();
        return facts.constant(
                "a set of " + fitted.id() + " after " + off.id(),
                cost(fitted, off) + "+" + c.count(wish.position()) + "*" + c.assembly(Key.SCRAP_FEE, off.id()) + "+("
                        + c.assembly(Key.CHANGE_HOURS, fitted.id()) + "+" + c.own(Key.RELEVEL) + ")*" + c.shop());
    }

    private String bothSides(ResolvedAssembly a) {
        MachineCells c = facts.cells();
        return facts.constant(
                "both sides of " + a.id(),
                c.count(wish.position()) + "*(" + c.assembly(Key.TIRE_PRICE, a.id()) + "+"
                        + c.assembly(Key.SCRAP_FEE, a.id()) + ")+" + c.assembly(Key.CHANGE_HOURS, a.id()) + "/2*"
                        + c.shop());
    }

    private String sets(int j) {
        StringBuilder sum = new StringBuilder();
        for (Side off : sides) {
            for (Side fitted : sides) {
                String share = after(off, fitted, j);
                String cost = renewal(fitted.assembly, off.assembly);
                sum.append(sum.isEmpty() ? "" : "+").append(renewed(off, j) + "*" + share + "*" + cost);
                if (off.ruined >= 0) {
                    String then = off == fitted ? bothSides(off.assembly) : cost;
                    sum.append("+" + grid.at(off.ruined, j) + "*" + share + "*" + then);
                }
            }
        }
        return sum.toString();
    }

    private String hour(int j) {
        MachineCells c = facts.cells();
        StringBuilder sum = new StringBuilder();
        for (Side s : sides) {
            String id = s.assembly.id();
            String often = facts.flatsPerHour(wish.position());
            sum.append(sum.isEmpty() ? "" : "+");
            sum.append(often + "*(" + grid.at(s.flats, j) + "*" + grid.flat(s.assembly, j));
            sum.append("+" + grid.at(s.young, j) + "*"
                    + facts.constant(
                            id + ": new tires, each hit",
                            facts.ruined(s.assembly) + "*" + c.assembly(Key.TIRE_PRICE, id))
                    + ")");
            sum.append("+" + grid.at(s.on, j) + "*"
                    + facts.constant(
                            id + ": looking after it, an hour",
                            c.assembly(Key.CHECK, id) + "/" + c.assembly(Key.CHECK_EVERY, id) + "*" + c.hour()));
        }
        return sum.toString();
    }

    private String trade() {
        StringBuilder sum = new StringBuilder(first.at(first.tradeColumn(wish.changes()), LAST));
        for (Side s : sides) {
            int column = s.table.tradeColumn(wish.changes());
            sum.append("+SUMPRODUCT(" + grid.range(s.fitted) + "," + s.table.range(column, LAST, 0) + ")");
            sum.append("+" + grid.at(s.bald, LAST) + "*" + s.table.tradeValue("1", wish.changes()));
        }
        return sum.toString();
    }
}
