package footing.io.workbook;

import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.Parts;
import footing.core.future.RunningPart;
import java.util.List;
import java.util.Locale;

/**
 * The mean flows of every machine and package by calendar year, in that year's money and after tax: what the bank
 * account is expected to see. Sums of the monthly sheets and of the payments.
 */
final class YearsTab {
    private static final int HEADS = 3;
    private static final int YEAR = 3;
    private static final int PURCHASE = 4;
    private static final int TRADE = 10;
    private static final int ALL = 11;
    private static final int ANSWERED = 12;

    private final Tab tab;
    private final PayingTab paying;
    private final PackagesTab packages;
    private int row = HEADS + 1;

    YearsTab(Tab tab, PayingTab paying, PackagesTab packages) {
        this.tab = tab;
        this.paying = paying;
        this.packages = packages;
        tab.text(0, 0, "What each package moves in the bank account, year by year", Look.TITLE);
        tab.note(
                1,
                ANSWERED,
                "Expected sums by calendar year, in that year's money and after tax, payments of a loan as they fall due; lost"
                        + " work never reaches the account. 'As Footing answered' doesn't recompute.");
        tab.heads(
                HEADS,
                0,
                YEAR,
                List.of(
                        "machine",
                        "package",
                        "when",
                        "year",
                        "purchase",
                        "renewals",
                        "repairs",
                        "crew time",
                        "lost work",
                        "upkeep",
                        "trade-in",
                        "in all, trade-in off",
                        "in all, as Footing answered"));
        tab.widths(0, 16, 18, 7, 7, 12, 12, 12, 12, 12, 12, 12, 13, 13);
        tab.freeze(HEADS + 1, YEAR + 1);
    }

    /** Writes the years of the entries of a machine that its monthly sheet tells. */
    void write(MachineAnswer answer, ResolvedMachine told, MonthsTab months) {
        List<Integer> years = months.years();
        for (int e = 0; e < told.entries().size(); e++) {
            Line line = new Line(answer, told, e);
            for (int year : years) {
                boolean first = year == years.get(0);
                write(line, months, year, first, year == years.get(years.size() - 1));
                row++;
            }
        }
    }

    /** An entry of a machine. */
    private record Line(MachineAnswer answer, ResolvedMachine told, int e) {
        ResolvedMachine.Entry entry() {
            return told.entries().get(e);
        }

        double cost(int year) {
            EntryAnswer found = answer.entries().stream()
                    .filter(a -> a.entry().equals(entry()))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no entry " + entry().id()));
            return found.yearly().getOrDefault(year, Parts.NONE).cost();
        }
    }

    private void write(Line line, MonthsTab months, int year, boolean first, boolean trade) {
        ResolvedMachine.Entry entry = line.entry();
        tab.text(row, 0, line.answer().id());
        tab.text(row, 1, entry.id());
        tab.text(row, 2, line.e() == 0 ? "" : entry.when().name().toLowerCase(Locale.ROOT));
        String cell = tab.number(row, YEAR, year, Look.YEAR).toString();
        String shop = packages.shopTime(line.answer(), entry);
        String goods = "(" + packages.startCost(line.answer(), entry) + "-" + shop + ")";
        PayingTab.Year when = new PayingTab.Year(cell, first, trade);
        tab.formula(row, PURCHASE, paying.inYear(line.told(), when, goods, shop), Look.MONEY);
        int column = PURCHASE + 1;
        for (RunningPart part : RunningPart.values()) {
            tab.formula(row, column++, months.nominal(line.e(), part, year), Look.MONEY);
        }
        String sold = trade ? months.nominalTrade(line.e()) + "+" + paying.nominalRelief(line.told(), goods) : "0";
        tab.formula(row, TRADE, sold, Look.MONEY);
        String parts = tab.at(row, PURCHASE).to(tab.at(row, TRADE - 1)).local();
        tab.formula(row, ALL, "SUM(" + parts + ")-" + tab.at(row, TRADE).local(), Look.MONEY);
        tab.number(row, ANSWERED, line.cost(year), Look.MONEY);
    }
}
