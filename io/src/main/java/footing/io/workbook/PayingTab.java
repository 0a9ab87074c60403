package footing.io.workbook;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Terms;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How a start cost is paid and deducted, for each unit of it: the loan's payments on their days, the deductions on the
 * last day of each tax year, and what both come to for each machine, whose trade ends them.
 */
final class PayingTab {
    private static final int LOAN = 10;
    private static final int TAX = 21;
    private static final int HEADS = 3;

    private final Tab tab;
    private final Map<String, Integer> rows = new HashMap<>();
    private String dueDays = "";
    private String payments = "";
    private String balances = "";
    private String deductDays = "";
    private String deductShares = "";
    private String deductFactors = "";
    private String dueYears = "";
    private String nominal = "";
    private String deductYears = "";

    PayingTab(Tab tab) {
        this.tab = tab;
    }

    void write(Terms terms, List<ResolvedMachine> machines, List<Double> tradeDays) {
        tab.text(0, 0, "How a start cost is paid and deducted", Look.TITLE);
        tab.note(
                1,
                8,
                "Factors for each unit of start cost, as present values. Payments and deductions are nominal, each on its own"
                        + " day: factor = (1 + discount rate) ^ -(days / 365).");
        tab.heads(
                HEADS,
                0,
                1,
                List.of(
                        "machine",
                        "days to the trade",
                        "loan applies",
                        "payments made",
                        "owed at the trade",
                        "present value of paying 1",
                        "present value of deducting 1",
                        "not deducted at the trade",
                        "1 paid at the trade"));
        terms.loan().ifPresent(l -> loan(l.months()));
        terms.tax().ifPresent(t -> tax(t.schedule()));
        for (int i = 0; i < machines.size(); i++) {
            machine(HEADS + 1 + i, machines.get(i), tradeDays.get(i));
        }
        tab.widths(
                0, 18, 11, 9, 10, 12, 13, 13, 13, 12, 3, 6, 12, 8, 12, 12, 12, 12, 14, 7, 12, 3, 8, 12, 8, 10, 12, 7);
        tab.freeze(HEADS + 1, 1);
    }

    private void loan(int months) {
        tab.text(HEADS - 1, LOAN, "The loan, for each unit borrowed or paid down", Look.STRONG);
        tab.heads(
                HEADS,
                LOAN,
                List.of(
                        "payment",
                        "due",
                        "days",
                        "paid",
                        "interest in it",
                        "owed after",
                        "factor",
                        "present value",
                        "year",
                        "paid less what tax gives back"));
        int first = HEADS + 1;
        for (int k = 1; k <= months; k++) {
            int row = HEADS + k;
            String n = tab.number(row, LOAN, k, Look.WHOLE).local();
            String due = tab.formula(row, LOAN + 1, "EDATE(AsOf," + n + ")", Look.DATE)
                    .local();
            String days = tab.formula(row, LOAN + 2, due + "-AsOf", Look.WHOLE).local();
            String paid = tab.formula(
                            row,
                            LOAN + 3,
                            "IF(" + n + "<=LoanMonths,-PMT(LoanRate/12,LoanMonths,1-LoanDown),0)",
                            Look.FACTOR)
                    .local();
            String before = k == 1 ? "(1-LoanDown)" : tab.at(row - 1, LOAN + 5).local();
            String interest = tab.formula(row, LOAN + 4, before + "*LoanRate/12", Look.FACTOR)
                    .local();
            tab.formula(row, LOAN + 5, before + "-(" + paid + "-" + interest + ")", Look.FACTOR);
            String factor = tab.formula(row, LOAN + 6, "(1+DiscountRate)^-(" + days + "/365)", Look.FACTOR)
                    .local();
            tab.formula(row, LOAN + 8, "YEAR(" + due + ")", Look.YEAR);
            String net = tab.formula(row, LOAN + 9, paid + "-TaxRate*" + interest, Look.FACTOR)
                    .local();
            tab.formula(row, LOAN + 7, net + "*" + factor, Look.FACTOR);
        }
        dueDays = range(first, months, LOAN + 2);
        balances = range(first, months, LOAN + 5);
        payments = range(first, months, LOAN + 7);
        dueYears = whole(first, months, LOAN + 8);
        nominal = whole(first, months, LOAN + 9);
    }

    private void tax(List<Double> schedule) {
        tab.text(HEADS - 1, TAX, "Deductions of the start cost", Look.STRONG);
        tab.heads(HEADS, TAX, List.of("tax year", "last day", "days", "share", "present value", "year"));
        int first = HEADS + 1;
        for (int k = 1; k <= schedule.size(); k++) {
            int row = HEADS + k;
            String n = tab.number(row, TAX, k, Look.WHOLE).local();
            String day = tab.formula(row, TAX + 1, "DATE(YEAR(AsOf)+" + n + "-1,12,31)", Look.DATE)
                    .local();
            String days = tab.formula(row, TAX + 2, day + "-AsOf", Look.WHOLE).local();
            String share =
                    tab.number(row, TAX + 3, schedule.get(k - 1), Look.SHARE).local();
            tab.formula(row, TAX + 4, share + "*(1+DiscountRate)^-(" + days + "/365)", Look.FACTOR);
            tab.formula(row, TAX + 5, "YEAR(" + day + ")", Look.YEAR);
        }
        deductDays = range(first, schedule.size(), TAX + 2);
        deductShares = range(first, schedule.size(), TAX + 3);
        deductFactors = range(first, schedule.size(), TAX + 4);
        deductYears = whole(first, schedule.size(), TAX + 5);
    }

    private String range(int first, int size, int column) {
        return tab.at(first, column).to(tab.at(first + size - 1, column)).local();
    }

    /** The same for formulas of other sheets. */
    private String whole(int first, int size, int column) {
        return tab.at(first, column).to(tab.at(first + size - 1, column)).toString();
    }

    private void machine(int row, ResolvedMachine m, double days) {
        rows.put(m.id(), row);
        tab.text(row, 0, m.id());
        String trade = tab.number(row, 1, days, Look.DAY).local();
        boolean applies = m.terms().loanApplies() && !dueDays.isEmpty();
        tab.text(row, 2, applies ? "yes" : "no");
        String until = ",\"<=\"&" + trade;
        if (applies) {
            String made = tab.formula(row, 3, "MIN(LoanMonths,COUNTIF(" + dueDays + until + "))", Look.WHOLE)
                    .local();
            String owed = tab.formula(
                            row,
                            4,
                            "IF(" + made + "=0,1-LoanDown,INDEX(" + balances + ",MAX(1," + made + ")))",
                            Look.FACTOR)
                    .local();
            String paid = "SUMIF(" + dueDays + until + "," + payments + ")";
            tab.formula(
                    row,
                    5,
                    "LoanDown+" + paid + "+" + owed + "*" + tab.at(row, 8).local(),
                    Look.FACTOR);
        } else {
            tab.number(row, 5, 1, Look.FACTOR);
        }
        boolean taxed = !deductDays.isEmpty();
        tab.formula(
                row, 6, taxed ? "TaxRate*SUMIF(" + deductDays + until + "," + deductFactors + ")" : "0", Look.FACTOR);
        tab.formula(row, 7, taxed ? "1-SUMIF(" + deductDays + until + "," + deductShares + ")" : "0", Look.SHARE);
        tab.formula(row, 8, "(1+DiscountRate)^-(" + trade + "/365)", Look.FACTOR);
    }

    private String ref(ResolvedMachine m, int column) {
        Integer row = rows.get(m.id());
        if (row == null) {
            throw new IllegalArgumentException("no machine " + m.id());
        }
        return tab.at(row, column).toString();
    }

    String tradeDays(ResolvedMachine m) {
        return ref(m, 1);
    }

    /** The present value of paying a start cost: by the loan if it applies, less what tax gives back before the trade. */
    String purchase(ResolvedMachine m, String goods, String shopTime) {
        String all = "(" + goods + "+" + shopTime + ")*" + ref(m, 5);
        return all + "-" + goods + "*" + ref(m, 6) + "-" + shopTime + "*TaxRate";
    }

    /** The present value of what tax gives back at the trade for a start cost not yet deducted. */
    String relief(ResolvedMachine m, String goods) {
        return "TaxRate*" + goods + "*" + ref(m, 7) + "*" + ref(m, 8);
    }

    /** What a start cost takes out of the bank account in a calendar year, less what tax gives back. */
    String inYear(ResolvedMachine m, Year year, String goods, String shopTime) {
        String until = ",\"<=\"&" + ref(m, 1) + ")";
        boolean applies = m.terms().loanApplies() && !dueYears.isEmpty();
        StringBuilder paid = new StringBuilder(year.first() ? (applies ? "LoanDown" : "1") : "0");
        if (applies) {
            paid.append("+SUMIFS(" + nominal + "," + dueYears + "," + year.cell() + "," + days(dueDays) + until);
            paid.append(year.trade() ? "+" + ref(m, 4) : "");
        }
        String shop = year.first() ? "-" + shopTime + "*TaxRate" : "";
        if (deductYears.isEmpty()) {
            return "(" + goods + "+" + shopTime + ")*(" + paid + ")" + shop;
        }
        String deducted = "TaxRate*SUMIFS(" + days(deductShares) + "," + deductYears + "," + year.cell() + ","
                + days(deductDays) + until;
        return "(" + goods + "+" + shopTime + ")*(" + paid + ")-" + goods + "*" + deducted + shop;
    }

    /** What tax gives back at the trade for a start cost not yet deducted, in the money of that day. */
    String nominalRelief(ResolvedMachine m, String goods) {
        return "TaxRate*" + goods + "*" + ref(m, 7);
    }

    /** A range of this sheet as other sheets write it. */
    private String days(String range) {
        return "'" + tab.name() + "'!" + range;
    }

    /**
     * A calendar year of a machine.
     *
     * @param cell where it stands
     * @param first true for that of the date of the answer
     * @param trade true for that of the trade
     */
    record Year(String cell, boolean first, boolean trade) {}
}
