package footing.core.future;

import footing.core.fleet.ResolvedMachine;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The futures of one machine under one entry, told by the hour: what has happened by each of some operating hours. The
 * same draws as those of {@link MachineFutures}.
 */
public final class Paths {
    private final Map<Followed, double[][]> paths;
    private final int futures;

    private Paths(Map<Followed, double[][]> paths, int futures) {
        this.paths = paths;
        this.futures = futures;
    }

    /**
     * Runs the first futures.
     *
     * @param entry one of the machine's
     * @param hours from asOf on, increasing, none beyond the trade
     */
    public static Paths of(
            ResolvedMachine machine, ResolvedMachine.Entry entry, long seed, int futures, double[] hours) {
        checked(machine, hours);
        ResolvedMachine.Entry carried = machine.carried();
        List<ResolvedMachine.Entry> told = entry.equals(carried) ? List.of(carried) : List.of(carried, entry);
        MachinePlan plan = new MachinePlan(machine.about(told), seed, false);
        Map<Followed, double[][]> paths = new EnumMap<>(Followed.class);
        for (Followed what : Followed.values()) {
            paths.put(what, new double[futures][hours.length]);
        }
        Simulation simulation = new Simulation(plan, new SharedDraws(), Math.min(MachineFutures.PIECE, futures));
        double[][] costs = new double[told.size()][futures];
        for (int from = 0; from < futures; from += MachineFutures.PIECE) {
            simulation.tell(new PathLedger(plan, hours, paths, from), told.size() - 1);
            simulation.run(from, Math.min(from + MachineFutures.PIECE, futures), costs);
        }
        return new Paths(paths, futures);
    }

    private static void checked(ResolvedMachine machine, double[] hours) {
        for (int i = 0; i < hours.length; i++) {
            if (!(hours[i] >= (i == 0 ? 0 : hours[i - 1]) && hours[i] <= machine.hoursLeft())) {
                throw new IllegalArgumentException("hours " + Arrays.toString(hours)
                        + " must increase from 0 to at most the " + machine.hoursLeft() + " h left");
            }
        }
    }

    /** What has happened by the hour of this index, by future. */
    public double[] at(Followed what, int hour) {
        double[] values = new double[futures];
        double[][] told = paths.getOrDefault(what, new double[0][0]);
        for (int f = 0; f < told.length; f++) {
            values[f] = told[f][hour];
        }
        return values;
    }

    /** The hours a machine will have run by the end of a day, from asOf; at most those to its trade. */
    public static double hoursBy(ResolvedMachine machine, LocalDate day) {
        HourCalendar calendar =
                new HourCalendar(machine.asOf(), machine.season(), machine.hoursPerYear(), machine.hoursLeft());
        return calendar.hourBy(day.toEpochDay() - machine.asOf().toEpochDay() + 1.0);
    }
}
