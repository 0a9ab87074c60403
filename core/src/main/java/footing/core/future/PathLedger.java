package footing.core.future;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes down by which of some hours what happened, future by future; told of both courses of one entry. */
final class PathLedger implements Ledger {
    private static final int COURSES = 2;

    private final MachinePlan plan;
    private final double[] hours;
    /** By what is followed: what happened since the hour before, by hour; the last cell is beyond all of them. */
    private final Map<Followed, double[]> since = new EnumMap<>(Followed.class);

    private final Map<Followed, double[][]> paths;
    private int future;
    private int told;
    private double flatHour = Double.NaN;
    private int flatCell;
    private double flatNominal;

    /**
     * @param hours increasing
     * @param paths receives by what is followed, future and hour what happened until then
     * @param from the first future told of
     */
    PathLedger(MachinePlan plan, double[] hours, Map<Followed, double[][]> paths, int from) {
        this.plan = plan;
        this.hours = hours;
        this.paths = paths;
        future = from;
        paths.keySet().forEach(what -> since.put(what, new double[hours.length + 1]));
    }

    private int cell(double hour) {
        int found = Arrays.binarySearch(hours, hour);
        return found >= 0 ? found : -found - 1;
    }

    private void add(Followed what, int cell, double amount) {
        double[] cells = since.get(what);
        if (cells != null) {
            cells[cell] += amount;
        }
    }

    @Override
    public void flat(Hit hit, Article on) {
        flatHour = hit.hour;
        flatCell = cell(hit.hour);
        flatNominal = hit.nominal;
        add(Followed.FLATS, flatCell, 1);
        add(Followed.DOWN_HOURS, flatCell, hit.delay);
        add(Followed.PAID, flatCell, plan.fixes.cost[hit.fix] * hit.nominal);
    }

    /** Follows the flat that ruined the tire. */
    @Override
    public void tires(Article on, boolean both, double present) {
        double tires = both ? on.count * on.tirePrice + on.scrap : on.tirePrice;
        add(Followed.PAID, flatCell, tires * flatNominal);
        if (both) {
            add(Followed.SETS, flatCell, 1);
        }
    }

    @Override
    public void renewal(Article off, Article fitted, double x, double place, double present) {
        add(Followed.SETS, cell(x), 1);
        if (x == flatHour) {
            add(Followed.PAID, flatCell, (Course.cost(fitted, off) + off.scrap) * flatNominal);
        }
    }

    @Override
    public void ran(Article on, double x, double presentHours) {
        // Hours are what all of this is told by.
    }

    /** Ends a course, and with the second the future. */
    @Override
    public void trade(Article on, double age, boolean changes) {
        flatHour = Double.NaN;
        told++;
        if (told < COURSES) {
            return;
        }
        since.forEach((what, cells) -> end(cells, paths.get(what)));
        told = 0;
        future++;
    }

    private void end(double[] cells, double @Nullable [][] path) {
        double sum = 0;
        for (int h = 0; path != null && h < hours.length; h++) {
            sum += cells[h];
            path[future][h] = sum;
        }
        Arrays.fill(cells, 0);
    }
}
