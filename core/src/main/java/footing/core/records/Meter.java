package footing.core.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The operating hours of one machine since its first reading's meter was new, running on through every new meter: what
 * a replaced meter starts at is taken off and what the old one last showed is put on.
 *
 * <p>Between two readings hours are spread evenly over the days; before the first and after the last they stand still,
 * since nothing tells.
 */
final class Meter {
    private final List<Long> days = new ArrayList<>();
    private final List<Double> hours = new ArrayList<>();
    private final double[] atRow;

    /** @param rows of one machine in the order of time */
    Meter(List<Entry> rows) {
        atRow = new double[rows.size()];
        double offset = 0;
        for (int i = 0; i < rows.size(); i++) {
            Entry row = rows.get(i);
            if (row.replacesMeter()) {
                double last = hours.isEmpty() ? 0 : hours.get(hours.size() - 1);
                offset = last - row.hours().orElse(0);
                atRow[i] = last;
            } else {
                atRow[i] = row.hours().isPresent() ? offset + row.hours().getAsDouble() : Double.NaN;
            }
            if (!Double.isNaN(atRow[i])) {
                days.add(row.date().toEpochDay());
                hours.add(atRow[i]);
            }
        }
        for (int i = 0; i < rows.size(); i++) {
            if (Double.isNaN(atRow[i])) {
                atRow[i] = at(rows.get(i).date()).orElse(Double.NaN);
            }
        }
    }

    /** Operating hours at a row; NaN if no reading was ever taken. */
    double at(int row) {
        return atRow[row];
    }

    /** The day of the first reading. */
    Optional<LocalDate> first() {
        return days.isEmpty() ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(days.get(0)));
    }

    /** The day of the last reading. */
    Optional<LocalDate> last() {
        return days.isEmpty() ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(days.get(days.size() - 1)));
    }

    /** How many readings were taken on or before a day; they stand in the order of time. */
    private int after(long day) {
        int low = 0;
        int high = days.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            low = days.get(middle) <= day ? middle + 1 : low;
            high = days.get(middle) <= day ? high : middle;
        }
        return low;
    }

    OptionalDouble at(LocalDate date) {
        if (hours.isEmpty()) {
            return OptionalDouble.empty();
        }
        long day = date.toEpochDay();
        int after = after(day);
        if (after == 0 || after == days.size()) {
            return OptionalDouble.of(hours.get(after == 0 ? 0 : after - 1));
        }
        double share = (double) (day - days.get(after - 1)) / (days.get(after) - days.get(after - 1));
        return OptionalDouble.of(hours.get(after - 1) + share * (hours.get(after) - hours.get(after - 1)));
    }
}
