package footing.core.future;

/**
 * What happens in a course by calendar month, summed over futures: each running part in today's money and as present
 * value, before tax; the trade in today's money.
 */
final class MonthLedger implements Ledger {
    private final FixTable fixes;
    private final Months months;
    /** Month by month of each running part. */
    final double[] today;

    final double[] present;
    double trade;

    private int monthOfFlat;
    private double ranUntil;
    private double ranPresent;

    MonthLedger(MachinePlan plan, Months months) {
        fixes = plan.fixes;
        this.months = months;
        today = new double[Measure.RUNNING_PARTS * months.count];
        present = new double[today.length];
    }

    void add(MonthLedger later) {
        for (int i = 0; i < today.length; i++) {
            today[i] += later.today[i];
            present[i] += later.present[i];
        }
        trade += later.trade;
    }

    private void enter(int part, int month, double money, double factor) {
        today[part * months.count + month] += money;
        present[part * months.count + month] += money * factor;
    }

    @Override
    public void flat(Hit hit, Article on) {
        monthOfFlat = months.of(hit.hour, hit.place);
        enter(Measure.REPAIRS, monthOfFlat, fixes.cost[hit.fix], hit.present);
        enter(Measure.CREW_TIME, monthOfFlat, hit.crewTime, hit.present);
        enter(Measure.LOST_WORK, monthOfFlat, hit.lostWork, hit.present);
    }

    /** Follows the flat that ruined the tire. */
    @Override
    public void tires(Article on, boolean both, double factor) {
        enter(Measure.REPAIRS, monthOfFlat, both ? on.bothTires : on.tirePrice, factor);
    }

    @Override
    public void renewal(Article off, Article fitted, double x, double place, double factor) {
        double cost = Course.cost(fitted, off) + off.scrap + fitted.fitting;
        enter(Measure.RENEWALS, months.of(x, place), cost, factor);
    }

    @Override
    public void ran(Article on, double x, double presentHours) {
        double until = ranPresent + presentHours;
        int to = months.ofHour(x);
        for (int m = months.ofHour(ranUntil); m < to; m++) {
            ran(on, m, months.hours[m + 1] - ranUntil, months.presentHours[m + 1] - ranPresent);
            ranUntil = months.hours[m + 1];
            ranPresent = months.presentHours[m + 1];
        }
        ran(on, to, x - ranUntil, until - ranPresent);
        ranUntil = x;
        ranPresent = until;
    }

    private void ran(Article on, int month, double hours, double presentHours) {
        today[Measure.UPKEEP * months.count + month] += on.upkeepPerHour * hours;
        present[Measure.UPKEEP * months.count + month] += on.upkeepPerHour * presentHours;
    }

    @Override
    public void trade(Article on, double age, boolean changes) {
        trade += changes ? Math.max(on.atTrade(age), on.carriedOn(age)) : on.atTrade(age);
        ranUntil = 0;
        ranPresent = 0;
    }
}
