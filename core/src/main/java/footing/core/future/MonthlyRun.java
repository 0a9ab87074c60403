package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The futures of one machine once more, told by calendar month. The same draws as those of {@link MachineFutures}, so
 * the same means. Pieces can be run on any threads at once and are added in the order of the futures.
 */
public final class MonthlyRun {
    private static final double DAYS_PER_YEAR = 365;
    private static final double SAME_RATE = 1e-12;

    private final MachinePlan plan;
    private final Months months;
    private final SharedDraws shared = new SharedDraws();
    private final List<MonthLedger> sums;
    private int futures;

    public MonthlyRun(ResolvedMachine machine, long seed) {
        plan = new MachinePlan(machine, seed, false);
        months = new Months(plan);
        sums = ledgers();
    }

    private List<MonthLedger> ledgers() {
        return plan.courses.stream().map(c -> new MonthLedger(plan, months)).toList();
    }

    /** The sums of one piece, to be added in its turn. */
    public static final class Piece {
        private final List<MonthLedger> ledgers;
        private final int futures;

        private Piece(List<MonthLedger> ledgers, int futures) {
            this.ledgers = ledgers;
            this.futures = futures;
        }
    }

    /** Runs futures {@code from} to {@code to}, exclusive, at most {@value MachineFutures#PIECE} of them. */
    public Piece run(int from, int to) {
        List<MonthLedger> ledgers = ledgers();
        Simulation simulation = new Simulation(plan, shared, to - from);
        simulation.tellEach(ledgers);
        simulation.run(from, to, new double[plan.entries.size()][to]);
        return new Piece(ledgers, to - from);
    }

    /** Adds the sums of the next piece. */
    public void add(Piece piece) {
        for (int c = 0; c < sums.size(); c++) {
            sums.get(c).add(piece.ledgers.get(c));
        }
        futures += piece.futures;
    }

    /** The means over the futures added so far. */
    public MonthlyFlows flows() {
        List<LocalDate> starts =
                IntStream.range(0, months.count).mapToObj(months::start).toList();
        List<MonthlyFlows.Entry> entries =
                IntStream.range(0, plan.entries.size()).mapToObj(this::entry).toList();
        return new MonthlyFlows(starts, entries, plan.calendar.daysAt(plan.calendar.hoursLeft()));
    }

    private MonthlyFlows.Entry entry(int e) {
        MonthLedger drive = sums.get(plan.driveCourse[e]);
        MonthLedger caster = sums.get(plan.casterCourse[e]);
        Map<RunningPart, List<MonthlyFlows.Flow>> parts = new EnumMap<>(RunningPart.class);
        for (RunningPart part : RunningPart.values()) {
            List<MonthlyFlows.Flow> flows = new ArrayList<>();
            for (int m = 0; m < months.count; m++) {
                int cell = part.measure * months.count + m;
                flows.add(flow(m, drive.today[cell] + caster.today[cell], drive.present[cell] + caster.present[cell]));
            }
            parts.put(part, flows);
        }
        return new MonthlyFlows.Entry(parts, (drive.trade + caster.trade) / futures);
    }

    private MonthlyFlows.Flow flow(int month, double money, double present) {
        double perDay = (Math.log1p(plan.machine.terms().inflation())
                        - Math.log1p(plan.machine.terms().discountRate()))
                / DAYS_PER_YEAR;
        boolean tells = money > 0 && Math.abs(perDay) > SAME_RATE;
        double day = tells ? Math.log(present / money) / perDay : middle(month);
        return new MonthlyFlows.Flow(money / futures, day);
    }

    private double middle(int month) {
        LocalDate asOf = plan.machine.asOf();
        double from = Math.max(0, ChronoUnit.DAYS.between(asOf, months.start(month)));
        double to = ChronoUnit.DAYS.between(asOf, months.start(month + 1));
        return (from + to) / 2;
    }
}
