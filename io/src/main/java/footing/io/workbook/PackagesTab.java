package footing.io.workbook;

import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.ResolvedMachine;
import footing.core.future.RunningPart;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What every machine costs on every package told: sums of the monthly sheets, beside what Footing answered. */
final class PackagesTab {
    static final int HEADS = 3;
    private static final int START = 3;
    private static final int SHOP = 4;
    private static final int PURCHASE = 5;
    private static final int TRADE = 11;
    private static final int COST = 12;
    private static final int SAVING = 13;

    private final Tab tab;
    private final PayingTab paying;
    private final Map<Which, Integer> rows = new HashMap<>();
    private int row = HEADS + 1;

    /** An entry of a machine: machines may have equal ones. */
    private record Which(String machine, ResolvedMachine.Entry entry) {}

    /** @param whole false if only the carried and the recommended packages are told */
    PackagesTab(Tab tab, PayingTab paying, boolean whole) {
        this.tab = tab;
        this.paying = paying;
        tab.text(0, 0, "What each package costs over the machine's life", Look.TITLE);
        tab.note(
                1,
                COST + 6,
                "Expected present values; the formulas lead to the means of the answer, which stand beside them as Footing gave"
                        + " them and don't recompute.");
        if (!whole) {
            tab.text(
                    2,
                    0,
                    "The fleet is large: told are the package each machine has and the one recommended. footing workbook CASE"
                            + " --machine ID tells all of one machine.",
                    Look.STRONG);
        }
        tab.text(HEADS - 1, COST + 2, "as Footing answered", Look.STRONG);
        tab.heads(
                HEADS,
                0,
                START,
                List.of(
                        "machine",
                        "package",
                        "when",
                        "start cost",
                        "shop time in it",
                        "purchase",
                        "renewals",
                        "repairs",
                        "crew time",
                        "lost work",
                        "upkeep",
                        "trade-in",
                        "cost",
                        "saving",
                        "cost",
                        "saving",
                        "difference of the two savings",
                        "standard error",
                        "chance"));
        tab.widths(0, 16, 18, 7, 11, 11, 11, 11, 11, 11, 11, 11, 11, 12, 12, 12, 12, 12, 10, 9);
        tab.freeze(HEADS + 1, 3);
    }

    /** Writes the entries of a machine that its monthly sheet tells, the carried one first. */
    void write(MachineAnswer answer, ResolvedMachine told, MonthsTab months, MachineCells cells) {
        int carried = row;
        for (int e = 0; e < told.entries().size(); e++) {
            ResolvedMachine.Entry entry = told.entries().get(e);
            EntryAnswer found = answer.entries().stream()
                    .filter(a -> a.entry().equals(entry))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no entry " + entry.id()));
            rows.put(new Which(answer.id(), entry), row);
            tab.text(row, 0, answer.id());
            tab.text(row, 1, entry.id());
            tab.text(row, 2, e == 0 ? "" : entry.when().name().toLowerCase(Locale.ROOT));
            costs(told, entry, months, e, cells);
            answered(found, carried);
            row++;
        }
    }

    private void costs(ResolvedMachine m, ResolvedMachine.Entry entry, MonthsTab months, int e, MachineCells cells) {
        StartCost start = new StartCost(cells, entry);
        String shop = tab.formula(row, SHOP, start.shopTime(), Look.MONEY).local();
        String all =
                tab.formula(row, START, start.goods() + "+" + shop, Look.MONEY).local();
        String goods = "(" + all + "-" + shop + ")";
        tab.formula(row, PURCHASE, paying.purchase(m, goods, shop), Look.MONEY);
        int column = PURCHASE + 1;
        for (RunningPart part : RunningPart.values()) {
            tab.formula(row, column++, months.present(e, part), Look.MONEY);
        }
        tab.formula(row, TRADE, months.trade(e) + "+" + paying.relief(m, goods), Look.MONEY);
        String parts = tab.at(row, PURCHASE).to(tab.at(row, TRADE - 1)).local();
        tab.formula(row, COST, "SUM(" + parts + ")-" + tab.at(row, TRADE).local(), Look.MONEY);
    }

    private void answered(EntryAnswer found, int carried) {
        String saving = tab.formula(
                        row,
                        SAVING,
                        tab.at(carried, COST).local() + "-" + tab.at(row, COST).local(),
                        Look.MONEY)
                .local();
        tab.number(row, COST + 2, found.cost().mean(), Look.MONEY);
        String answered =
                tab.number(row, COST + 3, found.saving().mean(), Look.MONEY).local();
        tab.formula(row, COST + 4, saving + "-" + answered, Look.MONEY);
        tab.number(row, COST + 5, found.saving().standardError(), Look.MONEY);
        if (row != carried) {
            tab.number(row, COST + 6, found.saving().chance(), Look.SHARE);
        }
    }

    private String ref(MachineAnswer answer, ResolvedMachine.Entry entry, int column) {
        Integer at = rows.get(new Which(answer.id(), entry));
        if (at == null) {
            throw new IllegalArgumentException("no entry " + entry.id());
        }
        return tab.at(at, column).toString();
    }

    String startCost(MachineAnswer answer, ResolvedMachine.Entry entry) {
        return ref(answer, entry, START);
    }

    String shopTime(MachineAnswer answer, ResolvedMachine.Entry entry) {
        return ref(answer, entry, SHOP);
    }

    String saving(MachineAnswer answer, ResolvedMachine.Entry entry) {
        return ref(answer, entry, SAVING);
    }
}
