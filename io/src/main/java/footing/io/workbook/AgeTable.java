package footing.io.workbook;

import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;

/**
 * What becomes of a set by its age, in steps from the oldest to new, averaged over its twenty lives: how often it goes
 * flat, whether it is still on, whether it wears out or is ruined in this step, what it is worth at the trade.
 */
final class AgeTable {
    private final Facts facts;
    private final Tab tab;
    private final LifeNodes lives;
    private final ResolvedAssembly assembly;
    private final Position position;
    private final int top;
    private final IntSupplier columns;
    private final Map<Boolean, Integer> trades = new HashMap<>();
    private final String name;
    final int flats;
    final int young;
    final int on;
    final int wornOut;
    final int ruined;

    AgeTable(Facts facts, LifeNodes lives, ResolvedAssembly assembly, Position position, Place place, String name) {
        this.facts = facts;
        tab = facts.tab();
        this.lives = lives;
        this.assembly = assembly;
        this.position = position;
        top = place.top();
        columns = place.columns();
        this.name = name;
        boolean air = assembly.kind().holdsAir();
        flats = column("flats, of an average tire's", (age, steps, hours) -> flats(hours));
        young = air ? column("those before half its life", (age, steps, hours) -> young(hours)) : flats;
        on = column("still on", (age, steps, hours) -> on(hours));
        wornOut = column("wears out", (age, steps, hours) -> wornOut(steps));
        ruined = air ? ruinedColumn() : -1;
    }

    /** Where tables stand: their first row and who hands out columns. */
    record Place(int top, IntSupplier columns) {}

    /** A column's formula at an age in steps. */
    private interface Rule {
        String at(int age, String steps, String hours);
    }

    private int column(String heading, Rule rule) {
        int column = columns.getAsInt();
        tab.heads(top - 1, column, List.of(name + ": " + heading));
        for (int age = 0; age <= EngineTab.STEPS; age++) {
            int row = row(age);
            String steps = tab.at(row, 0).local();
            String hours = "(" + lives.worn() + "+" + steps + "*" + facts.step() + ")";
            tab.array(row, column, rule.at(age, steps, hours), Look.FACTOR);
        }
        return column;
    }

    private int row(int age) {
        return top + EngineTab.STEPS - age;
    }

    private String l() {
        return lives.range(0);
    }

    /** Limits u to between 0 and 1, for whole ranges. */
    private static String limited(String u) {
        return "((" + u + ">0)*(" + u + "<1)*" + u + "+(" + u + ">=1))";
    }

    private String alive(String age) {
        return limited("((" + l() + "-" + age + ")/" + facts.step() + "+0.5)");
    }

    /** One and what ruin before this age adds to it. */
    private String exposed(String age) {
        String share = "(" + age + "/" + l() + ")";
        return "(1+" + facts.unsureFlats() + "*(" + lives.ruinsPerHour() + "*" + l() + "*(" + share + ">0.5)*"
                + lives.since(share) + "-(" + share + ">0.5)*" + lives.range(2) + "))";
    }

    private String oftener(String age) {
        return "(1+" + facts.slope() + "*(" + age + "/" + l() + "-0.5))";
    }

    private static String mean(String product) {
        return "SUMPRODUCT(" + product + ")/" + RulesTab.LIVES;
    }

    private String unruined(String age, String power) {
        return assembly.kind().holdsAir() ? exposed(age) + "^(-1/" + facts.unsureFlats() + power + ")*" : "";
    }

    private String flats(String age) {
        return mean(unruined(age, "-1") + alive(age) + "*" + oftener(age));
    }

    private String young(String age) {
        return mean(limited("((" + l() + "/2-" + age + ")/" + facts.step() + "+0.5)") + "*" + oftener(age));
    }

    private String on(String age) {
        return mean(unruined(age, "") + alive(age));
    }

    private String wornOut(String steps) {
        String off = "(" + lives.range(1) + "/" + facts.step() + "-" + steps + ")";
        return mean("((" + off + ">=0)*(" + off + "<1)*(1-" + off + ")+(" + off + "<0)*(" + off + ">-1)*(1+" + off
                + "))*" + lives.range(3));
    }

    /** Of those beyond half their life the ruined ones end the set: both sides are made new. */
    private int ruinedColumn() {
        int column = columns.getAsInt();
        tab.heads(top - 1, column, List.of(name + ": ruined beyond half its life"));
        for (int age = 0; age <= EngineTab.STEPS; age++) {
            String half = age == 0 ? "/2" : "";
            tab.formula(
                    row(age),
                    column,
                    lives.ruinsPerHour() + "*" + facts.step() + half + "*(" + at(flats, age) + "-" + at(young, age)
                            + ")",
                    Look.FACTOR);
        }
        return column;
    }

    private int trade(boolean changes) {
        return trades.computeIfAbsent(
                changes,
                c -> column(
                        "at the trade" + (c ? ", or carried on" : ""),
                        (age, s, hours) -> mean(unruined(hours, "") + alive(hours) + "*"
                                + tradeValue("(" + hours + "/" + l() + ")", c))));
    }

    /** What a set used for a share of its life is worth at the trade. */
    String tradeValue(String share, boolean changes) {
        MachineCells cells = facts.cells();
        String id = assembly.id();
        String each = cells.count(position) + "*";
        String price = cells.assembly(Key.PRICE, id);
        String credit = facts.constant(
                id + ": unused, at the trade", each + cells.assembly(Key.TRADE_CREDIT, id) + "*" + price);
        String deduction = facts.constant(
                id + ": taken off if worn out",
                each + cells.assembly(Key.TRADE_DEDUCTION, id) + "*" + cells.assembly(Key.RENEWAL_PRICE, id));
        String sold = "(" + credit + "*(1-" + share + ")-" + deduction + "*(" + share + ">0.5)*2*(" + share + "-0.5))";
        if (!changes || !(assembly.carryOn() > 0)) {
            return sold;
        }
        String unused = facts.constant(
                id + ": unused, on the next machine", each + cells.assembly(Key.CARRY_ON, id) + "*" + price);
        String moving =
                facts.constant(id + ": moving it there", cells.assembly(Key.CHANGE_HOURS, id) + "*" + cells.shop());
        String more = "(" + unused + "*(1-" + share + ")-" + moving + "-" + sold + ")";
        return "(" + sold + "+(" + more + ">0)*" + more + ")";
    }

    /** A column at one age. */
    String at(int column, int age) {
        return tab.at(row(age), column).local();
    }

    /** A column from an age down to another, oldest first. */
    String range(int column, int oldest, int newest) {
        return tab.at(row(oldest), column).to(tab.at(row(newest), column)).local();
    }

    int tradeColumn(boolean changes) {
        return trade(changes);
    }
}
