package footing.core.follow;

import footing.core.future.Followed;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What is due by operating hours since the forecast, summed up from its start.
 *
 * @param hours increasing from 0
 * @param due by what is followed, a band at each of the hours
 */
public record Bands(List<Double> hours, Map<Followed, List<Band>> due) {
    public Bands {
        hours = List.copyOf(hours);
        Map<Followed, List<Band>> copy = new EnumMap<>(Followed.class);
        due.forEach((what, bands) -> copy.put(what, List.copyOf(bands)));
        due = Map.copyOf(copy);
        int points = hours.size();
        boolean rising = points > 1 && hours.get(0) == 0;
        for (int i = 1; i < points; i++) {
            rising &= hours.get(i) >= hours.get(i - 1);
        }
        if (!rising) {
            throw new IllegalArgumentException("hours must increase from 0: " + hours);
        }
        for (Followed what : Followed.values()) {
            if (copy.getOrDefault(what, List.of()).size() != points) {
                throw new IllegalArgumentException("no band of " + what + " at each of " + points + " hours");
            }
        }
    }

    public List<Band> of(Followed what) {
        return due.getOrDefault(what, List.of());
    }

    /** The last hour there is a band for. */
    public double until() {
        return hours.get(hours.size() - 1);
    }

    /**
     * The band by an hour; beyond the last one, that. Between two hours it runs from the low end of the one before to
     * the high end of the one after, so that it never holds less than it says; the mean lies straight in between.
     */
    public Band at(Followed what, double hour) {
        List<Band> bands = of(what);
        int after = 0;
        while (after < hours.size() - 1 && hours.get(after) < hour) {
            after++;
        }
        if (after == 0 || hour >= until()) {
            return bands.get(after);
        }
        double from = hours.get(after - 1);
        double share = (hour - from) / (hours.get(after) - from);
        Band low = bands.get(after - 1);
        Band high = bands.get(after);
        return new Band(low.low(), low.mean() + share * (high.mean() - low.mean()), high.high());
    }

    /** The bands of futures told at each of the hours: {@code futures.get(what)[hour]}. */
    static Bands of(double[] hours, Map<Followed, double[][]> futures) {
        List<Double> at = new ArrayList<>();
        for (double h : hours) {
            at.add(h);
        }
        Map<Followed, List<Band>> due = new EnumMap<>(Followed.class);
        futures.forEach((what, columns) -> {
            List<Band> bands = new ArrayList<>();
            for (double[] column : columns) {
                bands.add(Band.of(column));
            }
            due.put(what, bands);
        });
        return new Bands(at, due);
    }
}
