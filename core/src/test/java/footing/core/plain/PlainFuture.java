package footing.core.plain;

import java.util.List;

/**
 * One future of one machine under one entry.
 *
 * @param startCost before tax and loan
 * @param sets worn out and renewed
 * @param wantedFitted true if the entry's assembly was on the machine at one of the positions where it differs
 */
public record PlainFuture(
        double startCost, List<Flow> flows, List<Flat> flats, List<Upkeep> upkeep, int sets, boolean wantedFitted) {
    /**
     * Money at an instant; for upkeep, what a stretch of one season in one year costs, dated at its end.
     *
     * @param hour operating hour; 0 for what is paid by the calendar
     * @param days from asOf
     * @param today in today's money, before tax; 0 for loan payments and tax relief, which are nominal
     * @param present value at asOf, after tax
     * @param nominal what the account sees, after tax
     */
    public record Flow(
            PlainPart part, double hour, double days, double today, double present, double nominal, int year) {}

    /** A flat: hours, and money in today's prices before tax. {@code fix} is an index into the crew's list. */
    public record Flat(
            double hour,
            int fix,
            double delay,
            double down,
            double displaced,
            double lost,
            double cash,
            double paid,
            double lostWork) {}

    /** What looking after one set costs an operating hour while it is on, in today's money before tax. */
    public record Upkeep(double from, double to, double perHour) {}

    public PlainFuture {
        flows = List.copyOf(flows);
        flats = List.copyOf(flats);
        upkeep = List.copyOf(upkeep);
    }

    /** Present value of a part, after tax. */
    public double part(PlainPart part) {
        return flows.stream()
                .filter(f -> f.part() == part)
                .mapToDouble(Flow::present)
                .sum();
    }

    public double cost() {
        double sum = 0;
        for (PlainPart part : PlainPart.values()) {
            sum += part == PlainPart.TRADE_IN ? -part(part) : part(part);
        }
        return sum;
    }

    public double downHours() {
        return flats.stream().mapToDouble(Flat::down).sum();
    }

    public double displacedHours() {
        return flats.stream().mapToDouble(Flat::displaced).sum();
    }

    public double lostHours() {
        return flats.stream().mapToDouble(Flat::lost).sum();
    }
}
