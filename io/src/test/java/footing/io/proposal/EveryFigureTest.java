package footing.io.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.EntryAnswer;
import footing.io.figure.Figure;
import footing.io.figure.MachineFigures;
import footing.io.figure.Point;
import footing.io.words.Advice;
import footing.io.words.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * All money of the document: every table against the JSON document to the cent, then the text of the PDF against the
 * same numbers, in whole units or with cents as it prints them.
 */
class EveryFigureTest {
    private static final double CENT = 0.005;
    private static final List<Advice> MACHINES = Advice.all(Quillbrook.ANSWER);

    private static String money(double x) {
        return Cell.minus(Figures.money(x));
    }

    private static String money(JsonNode number) {
        return money(number.asDouble());
    }

    /** Every number of a part of the document and its opposite. */
    private static NavigableSet<Double> numbers(JsonNode in) {
        NavigableSet<Double> all = new TreeSet<>();
        collect(in, all);
        return all;
    }

    private static void collect(JsonNode in, NavigableSet<Double> all) {
        if (in.isNumber()) {
            all.add(in.asDouble());
            all.add(-in.asDouble());
        }
        in.forEach(child -> collect(child, all));
    }

    private static void isThere(NavigableSet<Double> numbers, double x, String where) {
        Double below = numbers.floor(x + CENT);
        assertThat(below).as(where + ": " + x).isNotNull();
        assertThat(Objects.requireNonNull(below)).as(where).isCloseTo(x, within(CENT));
    }

    @Test
    void tables_everyMachine_holdOnlyNumbersOfTheJson() {
        int checked = 0;
        for (Advice a : MACHINES) {
            NavigableSet<Double> known = numbers(Quillbrook.machine(a.id()));
            MachineTables tables = new MachineTables(Quillbrook.ANSWER, a);
            for (Table table :
                    List.of(tables.choices(), tables.ladder(), tables.parts(), tables.levels(), tables.drivers())) {
                checked += check(table, 1, known);
            }
            checked += check(tables.findOut(), 1, known);
            for (List<Cell> fix : tables.flats().rows()) {
                for (Cell cell : fix.subList(4, 7)) {
                    isThere(known, Objects.requireNonNull(cell.number()), a.id() + " one flat");
                    checked++;
                }
            }
        }
        assertThat(checked).isGreaterThan(1500);
    }

    private static int check(Table table, int from, NavigableSet<Double> known) {
        int checked = 0;
        for (List<Cell> row : table.rows()) {
            for (Cell cell : row.subList(from, row.size())) {
                Double number = cell.number();
                if (number != null) {
                    isThere(known, number, table.id() + " " + row.get(0).shown());
                    checked++;
                }
            }
        }
        return checked;
    }

    private static double cost(JsonNode year) {
        double cost = -year.get("tradeIn").asDouble();
        for (String part : List.of("purchase", "renewals", "repairs", "crewTime", "lostWork", "upkeep")) {
            cost += year.get(part).asDouble();
        }
        return cost;
    }

    private static List<Double> yearly(JsonNode entry) {
        List<Double> costs = new ArrayList<>();
        entry.get("yearly").forEach(y -> costs.add(cost(y)));
        return costs;
    }

    @Test
    void years_everyMachine_areSumsOfTheJsonAndPrinted() {
        int printed = 0;
        for (Advice a : MACHINES) {
            EntryAnswer about = Objects.requireNonNull(a.about());
            JsonNode machine = Quillbrook.machine(a.id());
            List<Double> asItIs =
                    yearly(Quillbrook.entry(machine, a.machine().carried().entry()));
            List<Double> changed = yearly(Quillbrook.entry(machine, about.entry()));
            List<List<Cell>> rows =
                    new MachineTables(Quillbrook.ANSWER, a).years().rows();
            assertThat(rows).hasSameSizeAs(changed);
            double soFar = 0;
            for (int y = 0; y < rows.size(); y++) {
                double before = y < asItIs.size() ? asItIs.get(y) : 0;
                soFar += before - changed.get(y);
                List<Cell> row = rows.get(y);
                assertThat(row.get(1).number()).isCloseTo(before, within(CENT));
                assertThat(row.get(2).number()).isCloseTo(changed.get(y), within(CENT));
                assertThat(row.get(3).number()).isCloseTo(soFar, within(CENT));
                if (!MachineLines.isKept(a)) {
                    assertThat(Quillbrook.block(a.id())).contains(String.join(" ", shown(row)));
                    printed++;
                }
            }
        }
        assertThat(printed).isGreaterThan(5);
    }

    private static List<String> shown(List<Cell> cells) {
        return cells.stream().map(Cell::shown).toList();
    }

    @Test
    void rows_everyTableOfEveryMachine_areInItsBlock() {
        int checked = 0;
        for (Advice a : MACHINES) {
            String block = Quillbrook.block(a.id());
            MachineTables tables = new MachineTables(Quillbrook.ANSWER, a);
            for (Table table : List.of(
                    tables.choices(),
                    tables.ladder(),
                    tables.parts(),
                    tables.drivers().first(MachineLines.isKept(a) ? 5 : 12))) {
                for (List<Cell> row : table.rows()) {
                    String numbers = shown(row.subList(1, row.size())).stream()
                            .filter(s -> !s.isEmpty())
                            .collect(Collectors.joining(" "));
                    assertThat(block).as(table.id()).contains(numbers);
                    checked++;
                }
            }
            tables.findOut()
                    .rows()
                    .forEach(r -> assertThat(block)
                            .contains("could cost you about " + r.get(1).shown()));
        }
        assertThat(checked).isGreaterThan(150);
    }

    @Test
    void flat_everyMachine_costsWhatTheJsonSays() {
        for (Advice a : MACHINES) {
            JsonNode flat = Quillbrook.machine(a.id()).get("costPerFlat");
            double all = flat.get("cash").asDouble()
                    + flat.get("paid").asDouble()
                    + flat.get("lost").asDouble();
            String block = Quillbrook.block(a.id());
            assertThat(block)
                    .contains("The average flat costs " + money(all) + ": " + money(flat.get("cash"))
                            + " for parts, " + money(flat.get("paid")) + " paid to make up time, "
                            + money(flat.get("lost")) + " of work lost.");
            for (JsonNode fix : flat.get("fixes")) {
                if (Figures.shows(fix.get("paid").asDouble())) {
                    assertThat(block).contains(money(fix.get("paid")) + " in wages to make them up");
                }
                if (Figures.shows(fix.get("lost").asDouble())) {
                    assertThat(block).contains(money(fix.get("lost")) + " in work lost");
                }
                if (Figures.shows(fix.get("cash").asDouble())) {
                    assertThat(block).contains(money(fix.get("cash")) + " in parts");
                }
            }
        }
    }

    /** The letters of a figure are drawn, not set, so that its definition is looked at in place of its text. */
    @Test
    void levels_threePricesOfAnHour_areDrawnAndToldAsInTheJson() {
        int told = 0;
        for (Advice a : MACHINES) {
            JsonNode levels = Quillbrook.entry(
                            Quillbrook.machine(a.id()),
                            Objects.requireNonNull(a.about()).entry())
                    .get("levels");
            List<Double> means = new ArrayList<>();
            levels.forEach(l -> means.add(l.get("mean").asDouble()));
            Figure figure =
                    new MachineFigures(Quillbrook.ANSWER, a).pricesOfAnHour().orElseThrow();
            assertThat(figure.series().stream()
                            .flatMap(s -> s.points().stream())
                            .map(Point::value))
                    .containsExactlyInAnyOrderElementsOf(means);
            if (a.verb().changes()) {
                assertThat(Quillbrook.block(a.id()))
                        .contains(
                                "In parts and shop time alone it ",
                                " " + Figures.size(means.get(0)) + "; ",
                                "the crew's paid time adds " + Figures.size(means.get(1) - means.get(0)),
                                "work not lost " + Figures.size(means.get(2) - means.get(1)));
                told++;
            }
        }
        assertThat(told).isPositive();
    }

    @Test
    void pageOne_sentencesAndRanges_holdTheFiguresOfTheJson() {
        String one = Quillbrook.text(1, 1);
        for (Advice a : MACHINES) {
            JsonNode entry = Quillbrook.entry(
                    Quillbrook.machine(a.id()),
                    Objects.requireNonNull(a.about()).entry());
            JsonNode saving = entry.get("saving");
            if (MachineLines.isKept(a)) {
                assertThat(one)
                        .contains(
                                "next best: " + Figures.size(saving.get("mean").asDouble()) + " more");
            } else {
                assertThat(one).contains(money(saving.get("p10")) + " to " + money(saving.get("p90")));
            }
            if (a.verb().changes()) {
                JsonNode monthly = entry.get("monthly");
                assertThat(one)
                        .contains(
                                money(saving.get("mean")) + " over the machine's life",
                                "you are up " + money(saving.get("p90")),
                                "It costs " + money(entry.get("startCost")) + " at the start.",
                                "Paid by the month that is " + money(monthly.get("payment")));
            }
        }
        JsonNode fleet = Quillbrook.JSON.get("fleet");
        assertThat(one)
                .contains("it is " + money(fleet.get("saving").get("mean")) + " over the machines' lives, for "
                        + money(fleet.get("startCost")) + " at the start");
        assertThat(one).contains("you are up " + money(fleet.get("saving").get("p90")));
    }

    @Test
    void orderSheet_totals_areTheStartCostsOfTheJson() {
        OrderSheet order = new OrderSheet(Quillbrook.ANSWER);
        double now = 0;
        double leaning = 0;
        for (Advice a : MACHINES) {
            JsonNode entry = Quillbrook.entry(
                    Quillbrook.machine(a.id()), a.machine().choice().entry());
            double start = entry.get("startCost").asDouble();
            now += a.verb().changes() ? start : 0;
            leaning += !a.verb().changes() && a.leansToChange() ? start : 0;
        }
        assertTotal(order.now(), now);
        assertTotal(order.ifTaken(), leaning);
        int sheet = Quillbrook.TEXT.indexOf("Order sheet");
        for (Table table : List.of(order.now(), order.ifTaken(), order.nextSets())) {
            for (List<Cell> row : table.rows()) {
                assertThat(Quillbrook.TEXT.substring(sheet))
                        .contains(row.stream()
                                .filter(c -> c.number() != null)
                                .map(Cell::shown)
                                .toList());
            }
        }
    }

    private static void assertTotal(Table table, double total) {
        List<Cell> last = table.rows().get(table.rows().size() - 1);
        assertThat(last.get(4).number()).isCloseTo(total, within(CENT));
        assertThat(Quillbrook.TEXT).contains("In all " + last.get(4).shown());
    }
}
