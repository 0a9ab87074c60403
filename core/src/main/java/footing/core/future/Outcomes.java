package footing.core.future;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Turns sums over futures into means by entry. */
final class Outcomes {
    private final MachinePlan plan;
    private final Block sum;
    private final double keep;

    Outcomes(MachinePlan plan, Block sum) {
        this.plan = plan;
        this.sum = sum;
        keep = 1 - plan.machine.terms().taxRate();
    }

    EntryOutcome entry(int e) {
        CourseSums drive = sum.courses.get(plan.driveCourse[e]);
        CourseSums caster = sum.courses.get(plan.casterCourse[e]);
        Purchase purchase = plan.purchases[e];
        return new EntryOutcome(
                plan.entries.get(e),
                purchase.startCost(),
                purchase.shopTime(),
                share(sum.neverFitted[e]),
                parts(drive, caster, purchase.presentValue(), plan.reliefAtTrade[e]),
                counts(drive, caster),
                share(sum.partsPay[e]),
                share(sum.partsAndTimePay[e]),
                yearly(e, drive, caster),
                running(e, drive, caster),
                runningNominal(e, drive, caster));
    }

    private double share(int futures) {
        return (double) futures / sum.futures;
    }

    private double mean(CourseSums drive, CourseSums caster, int measure) {
        return (drive.totals[measure] + caster.totals[measure]) / sum.futures;
    }

    private Parts parts(CourseSums drive, CourseSums caster, double purchase, double relief) {
        return new Parts(
                purchase,
                keep * mean(drive, caster, Measure.RENEWALS),
                keep * mean(drive, caster, Measure.REPAIRS),
                keep * mean(drive, caster, Measure.CREW_TIME),
                keep * mean(drive, caster, Measure.LOST_WORK),
                keep * mean(drive, caster, Measure.UPKEEP),
                keep * mean(drive, caster, Measure.TRADE) * plan.presentAtTrade + relief);
    }

    private Counts counts(CourseSums drive, CourseSums caster) {
        return new Counts(
                mean(drive, caster, Measure.FLATS),
                mean(drive, caster, Measure.SETS),
                mean(drive, caster, Measure.DOWN_HOURS),
                mean(drive, caster, Measure.DISPLACED_HOURS),
                mean(drive, caster, Measure.LOST_HOURS));
    }

    private SortedMap<Integer, Parts> yearly(int e, CourseSums drive, CourseSums caster) {
        SortedMap<Integer, Parts> byYear = new TreeMap<>();
        SortedMap<Integer, Double> purchase = plan.purchases[e].byYear();
        int last = Math.max(plan.years - 1, purchase.lastKey() - plan.firstYear);
        for (int y = 0; y <= last; y++) {
            double paid = purchase.getOrDefault(plan.firstYear + y, 0.0);
            byYear.put(plan.firstYear + y, year(e, y, paid, drive, caster));
        }
        return byYear;
    }

    private Parts year(int e, int y, double purchase, CourseSums drive, CourseSums caster) {
        if (y >= plan.years) {
            return new Parts(purchase, 0, 0, 0, 0, 0, 0);
        }
        double[] mean = new double[Measure.RUNNING_PARTS];
        for (int part = 0; part < mean.length; part++) {
            int cell = part * plan.years + y;
            mean[part] = keep * (drive.yearly[cell] + caster.yearly[cell]) / sum.futures;
        }
        double hours = plan.nominalHoursByYear[y + 1] - plan.nominalHoursByYear[y];
        double tradeIn = y < plan.years - 1
                ? 0
                : keep * mean(drive, caster, Measure.TRADE) * plan.nominalAtTrade + plan.nominalReliefAtTrade[e];
        return new Parts(
                purchase,
                mean[Measure.RENEWALS],
                mean[Measure.REPAIRS],
                mean[Measure.CREW_TIME],
                mean[Measure.LOST_WORK],
                mean[Measure.UPKEEP] + keep * plan.upkeepPerHour(e) * hours,
                tradeIn);
    }

    private List<Double> running(int e, CourseSums drive, CourseSums caster) {
        List<Double> running = new ArrayList<>();
        double step = plan.calendar.hoursLeft() / MachinePlan.GRID;
        double lumps = 0;
        double perHour = plan.upkeepPerHour(e) * sum.futures;
        for (int g = 0; g <= MachinePlan.GRID; g++) {
            double x = g == MachinePlan.GRID ? plan.calendar.hoursLeft() : g * step;
            lumps += drive.lumps[g] + caster.lumps[g];
            perHour += drive.upkeepChange[g] + caster.upkeepChange[g];
            double hours = plan.discounting.presentHours(plan.calendar.place(x));
            running.add(keep * (lumps + perHour * hours) / sum.futures);
        }
        return running;
    }

    private double runningNominal(int e, CourseSums drive, CourseSums caster) {
        return keep * (mean(drive, caster, Measure.MONTHLY) + plan.upkeepPerHour(e) * plan.nominalHoursMonthly);
    }

    List<FixOutcome> fixes() {
        List<FixOutcome> outcomes = new ArrayList<>();
        FixSums f = sum.fixes;
        for (int i = 0; i < plan.fixes.size; i++) {
            double n = f.flats[i];
            double of = Math.max(n, 1);
            String name = plan.machine.crew().fixes().get(i).name();
            outcomes.add(new FixOutcome(
                    name,
                    n / sum.futures,
                    f.cash[i] / of,
                    f.paid[i] / of,
                    f.lost[i] / of,
                    f.delay[i] / of,
                    f.displaced[i] / of));
        }
        return outcomes;
    }
}
