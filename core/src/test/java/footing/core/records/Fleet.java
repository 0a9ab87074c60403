package footing.core.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** A simulated fleet whose truth is known: its rates and lives drawn from the priors, its log written as a shop would. */
final class Fleet {
    static final LocalDate START = LocalDate.of(2024, 3, 1);
    private static final double PER_DAY = 2;

    final List<Double> rates = new ArrayList<>();
    final double median;
    final List<Entry> rows = new ArrayList<>();
    private final RandomGenerator random;
    private final double shape;
    private int line = 1;

    Fleet(long seed, int machines, int days) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        FlatsPrior flats = FlatsPrior.COMMON;
        LifePrior life = LifePrior.COMMON;
        double mean = flats.likely() / 1000 * Math.exp(flats.unsure() * random.nextGaussian());
        double alike = flats.alike() * Math.exp(flats.alikeUnsure() * random.nextGaussian());
        median = life.hours() * Math.exp(life.unsure() * random.nextGaussian());
        shape = life.shape() * Math.exp(life.shapeUnsure() * random.nextGaussian());
        for (int m = 0; m < machines; m++) {
            double rate = new GammaRate(alike, alike / mean).quantile(random.nextDouble());
            rates.add(rate);
            machine("M" + m, rate, days);
        }
    }

    /** A machine that has run before recording began: its set is already worn, and how much is known. */
    private void machine(String id, double rate, int days) {
        double before = 1500 * random.nextDouble();
        double end = before + days * PER_DAY;
        double fitted = 0;
        double off = life();
        while (off <= before) {
            fitted = off;
            off += life();
        }
        add(id, Event.FIT, fitted, before, "");
        add(id, Event.BEGIN, before, before, "");
        for (double x = off; x < end; x += life()) {
            add(id, Event.OFF, x, before, "worn");
            add(id, Event.FIT, x, before, "");
        }
        for (double x = before + gap(rate); x < end; x += gap(rate)) {
            add(id, Event.FLAT, x, before, "");
        }
        add(id, Event.END, end, before, "");
    }

    private double life() {
        return median * Math.pow(-Math.log(random.nextDouble()) / Math.log(2), 1 / shape);
    }

    private double gap(double rate) {
        return -Math.log(random.nextDouble()) / rate;
    }

    private void add(String machine, Event event, double hours, double before, String reason) {
        LocalDate date = START.plusDays((long) Math.floor((hours - before) / PER_DAY));
        boolean tire = event == Event.FIT || event == Event.OFF || event == Event.FLAT;
        Entry.Detail none = Entry.Detail.NONE;
        Entry.Detail detail =
                new Entry.Detail("", "", reason, "", none.minutes(), none.cost(), none.quantity(), false, none.depth());
        Spot spot = tire ? Spot.DRIVE : null;
        rows.add(new Entry(line++, date, machine, event, OptionalDouble.of(hours), spot, tire ? "air" : "", detail));
    }
}
