package footing.core.future;

import org.jspecify.annotations.Nullable;

/**
 * Lives one course through one future: sets wear out and are renewed, hits become flats, the machine is traded. What it
 * came to stands in the fields afterwards: present values before tax, the trade in today's money.
 */
final class CourseRun {
    private final MachinePlan plan;
    private final Encounters encounters;
    private final LifeDraws lives;
    private final Unknowns unknowns;
    private final double hoursLeft;
    private final double gridPerHour;
    private final double presentHoursLeft;

    private Course course;
    private CourseSums sums;
    private @Nullable FixSums fixSums;
    private @Nullable Ledger ledger;

    private Article on;
    private double fittedAt;
    private double life;
    private double end;
    private boolean bald;
    private int set;
    private double ledgerHours;

    double renewals;
    double repairs;
    double crewTime;
    double lostWork;
    double upkeep;
    double trade;
    int flats;
    int wornOut;
    double down;
    double displaced;
    double lostHours;
    double nominalSoFar;
    boolean wantedFitted;

    CourseRun(MachinePlan plan, Encounters encounters, LifeDraws lives, Unknowns unknowns) {
        this.plan = plan;
        this.encounters = encounters;
        this.lives = lives;
        this.unknowns = unknowns;
        hoursLeft = plan.calendar.hoursLeft();
        gridPerHour = MachinePlan.GRID / hoursLeft;
        presentHoursLeft = plan.discounting.presentHours(hoursLeft, plan.calendar.day(hoursLeft));
        course = plan.courses.get(0);
        on = course.atStart();
        sums = new CourseSums(plan.years);
    }

    void tell(@Nullable Ledger told) {
        ledger = told;
    }

    /** Lives a course through the future the draws stand at, adding to its sums. */
    void run(Course c, CourseSums courseSums, @Nullable FixSums ofFixes) {
        start(c, courseSums, ofFixes);
        int i = 0;
        while (true) {
            double hit = i < encounters.size ? encounters.hour[i] : hoursLeft;
            if (!bald && end < hoursLeft && end <= hit) {
                wearOut(end);
            } else if (i < encounters.size) {
                meet(i++);
            } else {
                break;
            }
        }
        finish();
    }

    private void start(Course c, CourseSums courseSums, @Nullable FixSums ofFixes) {
        course = c;
        sums = courseSums;
        fixSums = ofFixes;
        on = c.atStart();
        set = 0;
        bald = false;
        renewals = repairs = crewTime = lostWork = trade = 0;
        down = displaced = lostHours = nominalSoFar = 0;
        flats = wornOut = 0;
        wantedFitted = on == c.wanted();
        upkeep = on.upkeepPerHour * presentHoursLeft;
        ledgerHours = 0;
        double factor = unknowns.lifeFactor[on.index];
        if (c.keepsHours()) {
            double worn = plan.machine.worn(c.position());
            fittedAt = -worn;
            life = on.lifeBeyond(worn, lives.uniform(0), factor);
            end = Math.max(0, life - worn);
        } else {
            fittedAt = 0;
            life = lives.life(0, on, factor);
            end = life;
        }
    }

    private double age(double x) {
        return bald ? 1 : Math.min(1, (x - fittedAt) / life);
    }

    private void wearOut(double x) {
        if (hoursLeft - x < plan.machine.runOut()) {
            bald = true;
            return;
        }
        wornOut++;
        int day = plan.calendar.day(x);
        renew(x, day, plan.discounting.present(x, day), plan.discounting.nominal(x, day));
    }

    /** A set comes off and what the rest of the hours is worth is fitted. */
    private void renew(double x, int day, double present, double nominal) {
        Article off = on;
        Article fitted = course.choose(off, hoursLeft - x, plan.machine.noNewSetWithin());
        double cost = Course.cost(fitted, off) + off.scrap + fitted.fitting;
        renewals += cost * present;
        enter(Measure.RENEWALS, cost, x, day, present, nominal);
        if (ledger != null) {
            ledger.renewal(off, fitted, present);
        }
        fit(fitted, x, day);
    }

    private void fit(Article fitted, double x, int day) {
        if (fitted != on) {
            changeUpkeep(fitted, x, day);
        }
        on = fitted;
        wantedFitted |= fitted == course.wanted();
        set++;
        bald = false;
        fittedAt = x;
        life = lives.life(set, fitted, unknowns.lifeFactor[fitted.index]);
        end = x + life;
    }

    private void changeUpkeep(Article fitted, double x, int day) {
        double change = fitted.upkeepPerHour - on.upkeepPerHour;
        double presentHours = plan.discounting.presentHours(x, day);
        if (ledger != null) {
            ledger.ran(on, presentHours - ledgerHours);
            ledgerHours = presentHours;
        }
        upkeep += change * (presentHoursLeft - presentHours);
        int step = step(x);
        sums.lumps[step] -= change * presentHours;
        sums.upkeepChange[step] += change;
        double nominalHours = plan.discounting.nominalHours(x, day);
        double[] nominalBy = plan.nominalHoursByYear;
        int row = Measure.UPKEEP * plan.years;
        double before = nominalHours;
        for (int year = plan.yearOf(day); year < plan.years; year++) {
            sums.yearly[row + year] += change * (nominalBy[year + 1] - before);
            before = nominalBy[year + 1];
        }
        nominalSoFar += change * Math.max(0, plan.nominalHoursMonthly - nominalHours);
    }

    private void meet(int i) {
        int fix = encounters.fix[i];
        double x = encounters.hour[i];
        double share = on.share(plan.fixes, fix, unknowns.flatFactor[on.index], unknowns.ruinFactor[on.index]);
        double age = age(x);
        double chance = Math.min(1, share * (1 + plan.machine.wornTireEffect() * (age - 0.5)) / 2);
        if (encounters.acceptance[i] >= chance) {
            return;
        }
        encounters.tell(i);
        flats++;
        down += encounters.down[i];
        displaced += encounters.displaced[i];
        lostHours += encounters.lostHours[i];
        if (ledger != null) {
            ledger.flat(encounters, i, on);
        }
        double repair = plan.fixes.cost[fix] + (plan.fixes.replacesTire[fix] ? replaceTire(i, age) : 0);
        pay(i, repair);
    }

    private void pay(int i, double repair) {
        double present = encounters.present[i];
        double nominal = encounters.nominal[i];
        double crew = encounters.crewTime[i];
        double lost = encounters.lostWork[i];
        repairs += repair * present;
        crewTime += crew * present;
        lostWork += lost * present;
        int year = plan.yearOf(encounters.day[i]);
        double[] yearly = sums.yearly;
        yearly[Measure.REPAIRS * plan.years + year] += repair * nominal;
        yearly[Measure.CREW_TIME * plan.years + year] += crew * nominal;
        yearly[Measure.LOST_WORK * plan.years + year] += lost * nominal;
        double all = repair + crew + lost;
        sums.lumps[step(encounters.hour[i])] += all * present;
        if (encounters.hour[i] <= plan.monthly.untilHour()) {
            nominalSoFar += all * nominal;
        }
        if (fixSums != null) {
            int fix = encounters.fix[i];
            fixSums.flats[fix]++;
            fixSums.cash[fix] += repair;
            fixSums.paid[fix] += crew;
            fixSums.lost[fix] += lost;
            fixSums.delay[fix] += encounters.delay[i];
            fixSums.displaced[fix] += encounters.displaced[i];
        }
    }

    /** Replaces a ruined tire, or both sides of a half-worn set of air; returns what counts as repair. */
    private double replaceTire(int i, double age) {
        Article before = on;
        if (!before.holdsAir || !(age > 0.5)) {
            tellTires(before, false, i);
            return before.tirePrice;
        }
        double x = encounters.hour[i];
        int day = encounters.day[i];
        Article fitted = course.choose(before, hoursLeft - x, plan.machine.noNewSetWithin());
        if (fitted != before) {
            renew(x, day, encounters.present[i], encounters.nominal[i]);
            return 0;
        }
        tellTires(before, true, i);
        fit(fitted, x, day);
        return before.bothTires;
    }

    private void tellTires(Article replaced, boolean both, int i) {
        if (ledger != null) {
            ledger.tires(replaced, both, encounters.present[i]);
        }
    }

    private void enter(int part, double amount, double x, int day, double present, double nominal) {
        int year = x > 0 ? plan.yearOf(day) : 0;
        sums.yearly[part * plan.years + year] += amount * nominal;
        sums.lumps[step(x)] += amount * present;
        if (x <= plan.monthly.untilHour()) {
            nominalSoFar += amount * nominal;
        }
    }

    private int step(double x) {
        return Math.min(MachinePlan.GRID, (int) Math.ceil(x * gridPerHour));
    }

    private void finish() {
        double age = age(hoursLeft);
        trade = on.atTrade(age);
        if (course.changes()) {
            trade = Math.max(trade, on.carriedOn(age));
        }
        if (ledger != null) {
            ledger.ran(on, presentHoursLeft - ledgerHours);
            ledger.trade(on, age, course.changes());
        }
        double[] totals = sums.totals;
        totals[Measure.RENEWALS] += renewals;
        totals[Measure.REPAIRS] += repairs;
        totals[Measure.CREW_TIME] += crewTime;
        totals[Measure.LOST_WORK] += lostWork;
        totals[Measure.UPKEEP] += upkeep;
        totals[Measure.TRADE] += trade;
        totals[Measure.FLATS] += flats;
        totals[Measure.SETS] += wornOut;
        totals[Measure.DOWN_HOURS] += down;
        totals[Measure.DISPLACED_HOURS] += displaced;
        totals[Measure.LOST_HOURS] += lostHours;
        totals[Measure.MONTHLY] += nominalSoFar;
    }
}
