package footing.io.workbook;

import footing.core.answer.Answer;
import footing.core.answer.CashFlows;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Watch;
import footing.core.answer.Workers;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import footing.core.future.MonthlyFlows;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes an answer as a workbook. Every figure that follows from others is a live formula; what was simulated stands as
 * monthly means from which the formulas lead to the means of the answer.
 */
public final class CaseWorkbook {
    /** Fleets above this have cash flows for the carried and the recommended package alone. */
    static final int SMALL_FLEET = 24;

    private static final String STAGE = "workbook";

    private final Answer answer;
    private final List<ResolvedMachine> told;
    private final List<MonthlyFlows> flows;

    private CaseWorkbook(Answer answer, List<ResolvedMachine> told, List<MonthlyFlows> flows) {
        this.answer = answer;
        this.told = told;
        this.flows = flows;
    }

    /**
     * Runs the futures once more for the monthly flows and writes the workbook; leaves the stream open.
     *
     * @param notes what reading the case file warned of
     * @return false if the watch asked to stop and nothing was written
     * @throws IOException if the stream does
     */
    public static boolean write(Answer answer, List<String> notes, Workers workers, Watch watch, OutputStream to)
            throws IOException {
        List<ResolvedMachine> told =
                answer.machines().stream().map(m -> told(answer, m)).toList();
        List<MonthlyFlows> flows = CashFlows.of(answer, told, workers, watch);
        if (flows.isEmpty()) {
            return false;
        }
        new CaseWorkbook(answer, told, flows).write(notes, watch, to);
        return true;
    }

    static boolean small(Answer answer) {
        return answer.machines().size() <= SMALL_FLEET;
    }

    /** The entries whose cash flows are told. */
    private static ResolvedMachine told(Answer answer, MachineAnswer m) {
        if (small(answer)) {
            return m.machine();
        }
        Set<ResolvedMachine.Entry> some = new LinkedHashSet<>();
        some.add(m.machine().carried());
        some.add(m.choice().entry());
        return m.machine().about(new ArrayList<>(some));
    }

    private void write(List<String> notes, Watch watch, OutputStream to) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.setCellFormulaValidation(false);
            Book book = new Book(workbook);
            ReadMeTab readMe = new ReadMeTab(book.tab("Read me", ""));
            FleetTab fleet = new FleetTab(book.tab("Fleet", ""));
            Tab changeTab = book.tab("Change me", "");
            Tab packagesTab = book.tab("Packages", "");
            Tab yearsTab = book.tab("By year", "");
            AssumptionsTab assumptions = new AssumptionsTab(book.tab("Assumptions", ""), answer.of());
            assumptions.write(book, numbers());
            PayingTab paying = new PayingTab(book.tab("Paying", ""));
            paying.write(
                    told.get(0).terms(),
                    told,
                    flows.stream().map(MonthlyFlows::tradeDays).toList());
            PackagesTab packages = new PackagesTab(packagesTab, paying, small(answer));
            YearsTab years = new YearsTab(yearsTab, paying, packages);
            for (int i = 0; i < told.size(); i++) {
                MonthsTab months = months(book, i, packages, assumptions);
                years.write(answer.machines().get(i), told.get(i), months);
                watch.progress(STAGE, (i + 1.0) / told.size());
            }
            fleet.write(answer, packages);
            readMe.write(answer, notes);
            int known = workbook.getNumberOfSheets();
            new Changing(answer, book, changeTab, assumptions, paying).write();
            book.settle();
            finish(workbook, known, changeTab.name());
            workbook.write(to);
        }
    }

    /** Every number some machine depends on, once. */
    private Collection<InForce> numbers() {
        Map<Input, InForce> numbers = new LinkedHashMap<>();
        for (MachineAnswer m : answer.machines()) {
            for (InForce number : new Values(answer.of(), answer.of().machine(m.id())).all()) {
                numbers.putIfAbsent(number.input(), number);
            }
        }
        return numbers.values();
    }

    private MonthsTab months(Book book, int i, PackagesTab packages, AssumptionsTab assumptions) {
        MachineAnswer machine = answer.machines().get(i);
        MonthsTab months = new MonthsTab(book.tab(machine.id(), " months"), flows.get(i));
        String kind = machine.machine().kind();
        String named = kind.isBlank() ? machine.id() : machine.id() + ", " + kind;
        months.write(told.get(i), named + ": expected cash flows by month");
        packages.write(machine, told.get(i), months, new MachineCells(assumptions, answer.of(), told.get(i)));
        return months;
    }

    /**
     * Works the formulas out, so that a viewer that can't has the values, and asks for that again on opening. The engines
     * are left to whoever opens it: their formulas on whole ranges take Apache POI minutes.
     */
    private static void finish(XSSFWorkbook workbook, int sheets, String left) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        for (int i = 0; i < sheets; i++) {
            Sheet sheet = workbook.getSheetAt(i);
            if (!sheet.getSheetName().equals(left)) {
                sheet.forEach(row -> row.forEach(evaluator::evaluateFormulaCell));
            }
        }
        workbook.setForceFormulaRecalculation(true);
    }
}
