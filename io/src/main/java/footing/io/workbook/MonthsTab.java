package footing.io.workbook;

import footing.core.fleet.ResolvedMachine;
import footing.core.future.MonthlyFlows;
import footing.core.future.RunningPart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The mean flows of one machine, month by month and entry by entry: in today's money, on the day that stands for all of
 * that month, and as present value by a formula. The trade stands in its month.
 */
final class MonthsTab {
    private static final int HEADS = 4;
    private static final int MONEY = 3;
    private static final int PARTS = RunningPart.values().length + 1;
    private static final int DAYS = MONEY + PARTS;
    private static final int PRESENT = DAYS + PARTS;
    private static final List<String> NAMES =
            List.of("renewals", "repairs", "crew time", "lost work", "upkeep", "trade-in");

    private final Tab tab;
    private final MonthlyFlows flows;
    private final List<int[]> blocks = new ArrayList<>();

    MonthsTab(Tab tab, MonthlyFlows flows) {
        this.tab = tab;
        this.flows = flows;
    }

    void write(ResolvedMachine machine, String title) {
        tab.text(0, 0, title, Look.TITLE);
        tab.note(
                1,
                PRESENT + PARTS,
                "Averages over every simulated future. Present value = money of the month x (1 - tax rate) x Growth ^ (day /"
                        + " 365); 'day' is the day on which the whole month's money would be worth what it is worth spread as it is.");
        bands();
        List<String> heads = new ArrayList<>(List.of("package", "when", "month"));
        for (int band = 0; band < 3; band++) {
            heads.addAll(NAMES);
        }
        heads.add("all present values, trade-in off");
        tab.heads(HEADS - 1, 0, MONEY, heads);
        int row = HEADS;
        for (int e = 0; e < flows.entries().size(); e++) {
            int first = row;
            for (int m = 0; m < flows.months().size(); m++) {
                write(row++, machine.entries().get(e), flows.entries().get(e), m);
            }
            blocks.add(new int[] {first, row - 1});
        }
        tab.widths(0, 16, 7, 9, 10, 10, 10, 10, 10, 10, 8, 8, 8, 8, 8, 8, 10, 10, 10, 10, 10, 10, 12);
        tab.freeze(HEADS, MONEY);
    }

    private void bands() {
        tab.text(HEADS - 2, MONEY, "today's money, before tax", Look.STRONG);
        tab.text(HEADS - 2, DAYS, "days after the date of the answer", Look.STRONG);
        tab.text(HEADS - 2, PRESENT, "present value, after tax", Look.STRONG);
    }

    private void write(int row, ResolvedMachine.Entry entry, MonthlyFlows.Entry of, int month) {
        tab.text(row, 0, entry.id());
        tab.text(row, 1, entry.when().name().toLowerCase(Locale.ROOT));
        tab.date(row, 2, flows.months().get(month), Look.MONTH);
        int column = 0;
        for (RunningPart part : RunningPart.values()) {
            MonthlyFlows.Flow flow = of.of(part).get(month);
            write(row, column++, flow.money(), flow.day());
        }
        if (month == flows.months().size() - 1) {
            write(row, column, of.trade(), flows.tradeDays());
        }
        String running =
                tab.at(row, PRESENT).to(tab.at(row, PRESENT + PARTS - 2)).local();
        String trade = tab.at(row, PRESENT + PARTS - 1).local();
        tab.formula(row, PRESENT + PARTS, "SUM(" + running + ")-SUM(" + trade + ")", Look.MONEY);
    }

    private void write(int row, int part, double money, double day) {
        if (money == 0) {
            return;
        }
        String today = tab.number(row, MONEY + part, money, Look.MONEY).local();
        String on = tab.number(row, DAYS + part, day, Look.DAY).local();
        tab.formula(row, PRESENT + part, today + "*(1-TaxRate)*Growth^(" + on + "/365)", Look.MONEY);
    }

    /** The present value of a running part of an entry. */
    String present(int entry, RunningPart part) {
        return sum(entry, PRESENT + place(part));
    }

    private static int place(RunningPart part) {
        return List.of(RunningPart.values()).indexOf(part);
    }

    /** The present value of what an entry's sets are worth at the trade, after tax on it. */
    String trade(int entry) {
        return sum(entry, PRESENT + PARTS - 1);
    }

    private String sum(int entry, int column) {
        int[] block = blocks.get(entry);
        return "SUM(" + tab.at(block[0], column).to(tab.at(block[1], column)) + ")";
    }

    /** A running part of an entry in a calendar year, in the money of that year and after tax. */
    String nominal(int entry, RunningPart part, int year) {
        List<MonthlyFlows.Flow> of = flows.entries().get(entry).of(part);
        StringBuilder sum = new StringBuilder();
        for (int m = 0; m < of.size(); m++) {
            if (flows.months().get(m).getYear() == year && of.get(m).money() != 0) {
                sum.append(sum.isEmpty() ? "" : "+").append(then(blocks.get(entry)[0] + m, place(part)));
            }
        }
        return sum.isEmpty() ? "0" : "(1-TaxRate)*(" + sum + ")";
    }

    /** What an entry's sets are worth at the trade, in the money of that day and after tax. */
    String nominalTrade(int entry) {
        return flows.entries().get(entry).trade() == 0 ? "0" : "(1-TaxRate)*" + then(blocks.get(entry)[1], PARTS - 1);
    }

    private String then(int row, int part) {
        return tab.at(row, MONEY + part) + "*(1+Inflation)^(" + tab.at(row, DAYS + part) + "/365)";
    }

    List<Integer> years() {
        return flows.months().stream().map(LocalDate::getYear).distinct().toList();
    }
}
