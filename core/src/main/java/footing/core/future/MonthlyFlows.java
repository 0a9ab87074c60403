package footing.core.future;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What the entries of a machine come to in each calendar month from that of asOf to that of the trade: means over the
 * futures, in today's money before tax.
 *
 * @param months the first day of each month
 * @param entries in the order of the machine's
 * @param tradeDays days from asOf to the trade
 */
public record MonthlyFlows(List<LocalDate> months, List<Entry> entries, double tradeDays) {
    public MonthlyFlows {
        months = List.copyOf(months);
        entries = List.copyOf(entries);
    }

    /**
     * One entry.
     *
     * @param parts each month by month
     * @param trade worth of its sets at the trade
     */
    public record Entry(Map<RunningPart, List<Flow>> parts, double trade) {
        public Entry {
            parts = Map.copyOf(parts);
        }

        public List<Flow> of(RunningPart part) {
            return parts.getOrDefault(part, List.of());
        }
    }

    /**
     * A mean flow of one month.
     *
     * @param money in today's money
     * @param day days from asOf at which all of it would have the present value that it has, spread as it is
     */
    public record Flow(double money, double day) {}
}
