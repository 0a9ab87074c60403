package footing.core.plain;

import static java.time.temporal.ChronoUnit.DAYS;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import footing.core.fleet.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** What comes out for one entry over futures 0, 1, 2 and so on, beside the carried package in the same futures. */
public final class PlainSummary {
    private static final int GRID = 1000;
    private static final int MONTHS_WITHOUT_LOAN = 48;

    private final ResolvedMachine m;
    private final Entry entry;
    private final PlainClock clock;
    private final List<PlainFuture> carried = new ArrayList<>();
    private final List<PlainFuture> own = new ArrayList<>();

    public PlainSummary(ResolvedMachine m, Entry entry, long seed, int futures) {
        this.m = m;
        this.entry = entry;
        clock = PlainClock.of(m);
        for (int i = 0; i < futures; i++) {
            carried.add(PlainModel.future(m, m.carried(), seed, i));
            own.add(PlainModel.future(m, entry, seed, i));
        }
    }

    /** Payment on the start cost and mean nominal saving in running costs, a month. */
    public record Monthly(double payment, double avoided, int months) {}

    /** Means of one flat of the carried package, today's money before tax; NaN without a flat. */
    public record PerFlat(double cash, double paid, double lost, double delayHours) {}

    public double mean(ToDoubleFunction<PlainFuture> figure) {
        return own.stream().mapToDouble(figure).average().orElseThrow();
    }

    public double[] costs() {
        return own.stream().mapToDouble(PlainFuture::cost).toArray();
    }

    /** Saving against the carried package, future by future. */
    public double[] savings() {
        double[] savings = costs();
        for (int i = 0; i < savings.length; i++) {
            savings[i] = carried.get(i).cost() - savings[i];
        }
        return savings;
    }

    public double neverFitted() {
        return mean(f -> f.wantedFitted() ? 0 : 1);
    }

    /** The calendar years in which money flows. */
    public SortedSet<Integer> years() {
        SortedSet<Integer> years = new TreeSet<>();
        own.forEach(future -> future.flows().forEach(flow -> years.add(flow.year())));
        return years;
    }

    /** Mean nominal flow of a part in a calendar year. */
    public double yearly(int year, PlainPart part) {
        return mean(future -> future.flows().stream()
                .filter(flow -> flow.year() == year && flow.part() == part)
                .mapToDouble(PlainFuture.Flow::nominal)
                .sum());
    }

    /** First point of the grid from which the mean cumulative discounted saving stays at or above 0. */
    public OptionalDouble paybackHours() {
        if (entry.id().equals(m.carried().id())) {
            return OptionalDouble.empty();
        }
        double[] costs = cumulative(own);
        double[] carriedCosts = cumulative(carried);
        double startCost = PlainStart.of(m, entry).cost();
        int first = 0;
        for (int i = 0; i <= GRID; i++) {
            if (carriedCosts[i] - costs[i] - startCost < 0) {
                first = i + 1;
            }
        }
        return first > GRID ? OptionalDouble.empty() : OptionalDouble.of(gridHour(first));
    }

    private double gridHour(int i) {
        return m.hoursLeft() * i / GRID;
    }

    /** Mean present value of the running costs up to each point of the grid. */
    private double[] cumulative(List<PlainFuture> futures) {
        double[] sums = new double[GRID + 1];
        double[] perUnit = new double[GRID + 1];
        for (int i = 0; i <= GRID; i++) {
            perUnit[i] = presentOfHours(gridHour(i));
        }
        for (PlainFuture future : futures) {
            for (int i = 0; i <= GRID; i++) {
                for (PlainFuture.Flow flow : future.flows()) {
                    if (flow.part().isRunning() && flow.part() != PlainPart.UPKEEP && flow.hour() <= gridHour(i)) {
                        sums[i] += flow.present() / futures.size();
                    }
                }
            }
            for (PlainFuture.Upkeep upkeep : future.upkeep()) {
                double before = presentOfHours(upkeep.from());
                double all = presentOfHours(upkeep.to());
                for (int i = 0; i <= GRID; i++) {
                    double until = gridHour(i) >= upkeep.to() ? all : Math.max(before, perUnit[i]);
                    sums[i] += upkeep.perHour() * (1 - m.terms().taxRate()) * (until - before) / futures.size();
                }
            }
        }
        return sums;
    }

    /** ∫ v(t) over the hours from 0. */
    private double presentOfHours(double hour) {
        double real = (1 + m.terms().inflation()) / (1 + m.terms().discountRate());
        return clock.stretches(0, hour).stream()
                .mapToDouble(s -> s.integral(real, s.lastDay()))
                .sum();
    }

    public Optional<Monthly> monthly() {
        double startCost = PlainStart.of(m, entry).cost();
        if (startCost == 0) {
            return Optional.empty();
        }
        double oneTwelfth = Math.pow(1 + m.terms().discountRate(), 1 / 12.0) - 1;
        Terms.Loan loan = m.terms().loan().orElse(new Terms.Loan(12 * oneTwelfth, MONTHS_WITHOUT_LOAN, 0));
        double payment = PlainStart.payment(startCost * (1 - loan.down()), loan.rate() / 12, loan.months());
        double untilDay = DAYS.between(m.asOf(), m.asOf().plusMonths(loan.months()));
        double months = Math.min(loan.months(), 12 * clock.days(m.hoursLeft()) / 365);
        double avoided = nominalUntil(untilDay, carried) - nominalUntil(untilDay, own);
        return Optional.of(new Monthly(payment, avoided / months, loan.months()));
    }

    /** Mean nominal running costs up to a day. */
    private double nominalUntil(double day, List<PlainFuture> futures) {
        double sum = 0;
        for (PlainFuture future : futures) {
            for (PlainFuture.Flow flow : future.flows()) {
                if (flow.part().isRunning() && flow.part() != PlainPart.UPKEEP && flow.days() <= day) {
                    sum += flow.nominal();
                }
            }
            for (PlainFuture.Upkeep upkeep : future.upkeep()) {
                for (PlainClock.Stretch s : clock.stretches(upkeep.from(), upkeep.to())) {
                    double grown = s.integral(1 + m.terms().inflation(), day);
                    sum += upkeep.perHour() * (1 - m.terms().taxRate()) * grown;
                }
            }
        }
        return sum / futures.size();
    }

    public PerFlat costPerFlat() {
        return perFlat(carried.stream().flatMap(f -> f.flats().stream()).toList());
    }

    /** The same of the flats that a fix, by its index in the crew's list, took care of. */
    public PerFlat costPerFlat(int fix) {
        return perFlat(carried.stream()
                .flatMap(f -> f.flats().stream())
                .filter(f -> f.fix() == fix)
                .toList());
    }

    private static PerFlat perFlat(List<PlainFuture.Flat> flats) {
        return new PerFlat(
                average(flats, PlainFuture.Flat::cash),
                average(flats, PlainFuture.Flat::paid),
                average(flats, PlainFuture.Flat::lostWork),
                average(flats, PlainFuture.Flat::delay));
    }

    private static double average(List<PlainFuture.Flat> flats, ToDoubleFunction<PlainFuture.Flat> figure) {
        return flats.stream().mapToDouble(figure).average().orElse(Double.NaN);
    }
}
