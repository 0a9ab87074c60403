package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import java.util.ArrayList;
import java.util.List;

/**
 * The hours left of a machine in even steps, placed on the calendar: for a model that goes by hours and discounts by
 * days.
 *
 * @param days from asOf to the instant of each step's hour, the first 0
 * @param fullWeeks of the hours around each step, the share within each of the crew's full weeks
 */
public record HourGrid(List<Double> days, List<List<Double>> fullWeeks) {
    private static final int SAMPLES = 24;

    public HourGrid {
        days = List.copyOf(days);
        fullWeeks = fullWeeks.stream().map(List::copyOf).toList();
    }

    /** A grid of so many steps, which has one point more. */
    public static HourGrid of(ResolvedMachine machine, int steps) {
        MachinePlan plan = new MachinePlan(machine, 0, false);
        List<Double> days = new ArrayList<>();
        List<List<Double>> weeks = new ArrayList<>();
        double step = machine.hoursLeft() / steps;
        for (int i = 0; i <= steps; i++) {
            days.add(plan.calendar.daysAt(i == steps ? machine.hoursLeft() : i * step));
            weeks.add(shares(plan, (i - 0.5) * step, (i + 0.5) * step));
        }
        return new HourGrid(days, weeks);
    }

    private static List<Double> shares(MachinePlan plan, double from, double to) {
        double[] share = new double[plan.machine.crew().fullWeeks().size()];
        double last = plan.machine.hoursLeft();
        double begin = Math.max(from, 0);
        double end = Math.min(to, last);
        for (int s = 0; s < SAMPLES; s++) {
            double x = begin + (end - begin) * (s + 0.5) / SAMPLES;
            int week = plan.weekOfDay[plan.calendar.day(x)];
            if (week > 0) {
                share[week - 1] += 1.0 / SAMPLES;
            }
        }
        return java.util.Arrays.stream(share).boxed().toList();
    }
}
