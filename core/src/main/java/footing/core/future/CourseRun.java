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
    private final double monthlyUntil;
    private final int repairsRow;
    private final int crewTimeRow;
    private final int lostWorkRow;
    private final double presentHoursLeft;
    private final double wornTireEffect;
    /** How often a new tire goes flat against an average one: 1 − g/2. */
    private final double newOften;
    /** The same for a worn-out one: 1 + g/2. */
    private final double mostOften;

    private Course course;
    private CourseSums sums;
    private @Nullable FixSums fixSums;
    private @Nullable Ledger ledger;

    private Article on;
    private double fittedAt;
    private double perHourOfLife;
    /** When the set that is on wears out and is not run bald; beyond the trade if that does not come. */
    private double wearsOut;

    private boolean bald;
    /** By fix, half the share of its hits that are a flat of the set that is on. */
    private double[] shares;

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
        presentHoursLeft = plan.discounting.presentHours(plan.calendar.place(hoursLeft));
        monthlyUntil = plan.monthly.untilHour();
        repairsRow = Measure.REPAIRS * plan.years;
        crewTimeRow = Measure.CREW_TIME * plan.years;
        lostWorkRow = Measure.LOST_WORK * plan.years;
        wornTireEffect = plan.machine.wornTireEffect();
        newOften = 1 - wornTireEffect / 2;
        mostOften = 1 + wornTireEffect / 2;
        course = plan.courses.get(0);
        on = course.atStart();
        shares = unknowns.halfShares[on.index];
        sums = new CourseSums(plan.years);
    }

    void tell(@Nullable Ledger told) {
        ledger = told;
    }

    /** Lives a course through the future the draws stand at, adding to its sums. */
    void run(Course c, CourseSums courseSums, @Nullable FixSums ofFixes) {
        start(c, courseSums, ofFixes);
        int size = encounters.size;
        double[] hour = encounters.hour;
        double[] acceptance = encounters.acceptance;
        int[] fix = encounters.fix;
        for (int i = 0; i < size; i++) {
            double x = hour[i];
            while (wearsOut <= x) {
                wearOut(wearsOut);
            }
            double share = shares[fix[i]];
            if (acceptance[i] < share * mostOften) {
                double age = age(x);
                if (acceptance[i] < share * (newOften + wornTireEffect * age)) {
                    flat(i, age);
                }
            }
        }
        while (wearsOut < hoursLeft) {
            wearOut(wearsOut);
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
            fittedAt = -plan.machine.worn(c.position());
            ends(lives.lifeBeyondWorn(on, factor));
        } else {
            fittedAt = 0;
            ends(lives.life(0, on, factor));
        }
        shares = unknowns.halfShares[on.index];
    }

    private void ends(double life) {
        perHourOfLife = 1 / life;
        wearsOut = Math.max(0, fittedAt + life);
        wearsOut = wearsOut < hoursLeft ? wearsOut : Double.POSITIVE_INFINITY;
    }

    private double age(double x) {
        return bald ? 1 : Math.min(1, (x - fittedAt) * perHourOfLife);
    }

    private void wearOut(double x) {
        if (hoursLeft - x < plan.machine.runOut()) {
            bald = true;
            wearsOut = Double.POSITIVE_INFINITY;
            return;
        }
        wornOut++;
        double place = plan.calendar.place(x);
        renew(x, place, plan.discounting.present(place), plan.discounting.nominal(place));
    }

    /** A set comes off and what the rest of the hours is worth is fitted. */
    private void renew(double x, double place, double present, double nominal) {
        Article off = on;
        Article fitted = course.choose(off, hoursLeft - x, plan.machine.noNewSetWithin());
        double cost = Course.cost(fitted, off) + off.scrap + fitted.fitting;
        renewals += cost * present;
        enterRenewal(x, HourCalendar.dayOf(place), cost * present, cost * nominal);
        if (ledger != null) {
            ledger.renewal(off, fitted, present);
        }
        fit(fitted, x, place);
    }

    private void fit(Article fitted, double x, double place) {
        if (fitted != on) {
            changeUpkeep(fitted, x, place);
        }
        on = fitted;
        wantedFitted |= fitted == course.wanted();
        set++;
        bald = false;
        fittedAt = x;
        ends(lives.life(set, fitted, unknowns.lifeFactor[fitted.index]));
        shares = unknowns.halfShares[fitted.index];
    }

    private void changeUpkeep(Article fitted, double x, double place) {
        double change = fitted.upkeepPerHour - on.upkeepPerHour;
        double presentHours = plan.discounting.presentHours(place);
        if (ledger != null) {
            ledger.ran(on, presentHours - ledgerHours);
            ledgerHours = presentHours;
        }
        upkeep += change * (presentHoursLeft - presentHours);
        int step = plan.step(x);
        sums.lumps[step] -= change * presentHours;
        sums.upkeepChange[step] += change;
        double nominalHours = plan.discounting.nominalHours(place);
        double[] nominalBy = plan.nominalHoursByYear;
        int row = Measure.UPKEEP * plan.years;
        double before = nominalHours;
        for (int year = plan.yearOf(HourCalendar.dayOf(place)); year < plan.years; year++) {
            sums.yearly[row + year] += change * (nominalBy[year + 1] - before);
            before = nominalBy[year + 1];
        }
        nominalSoFar += change * Math.max(0, plan.nominalHoursMonthly - nominalHours);
    }

    private void flat(int i, double age) {
        int fix = encounters.fix[i];
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
        double repairPresent = repair * encounters.present[i];
        double repairNominal = repair * encounters.nominal[i];
        double crewPresent = encounters.crewPresent[i];
        double lostPresent = encounters.lostPresent[i];
        double crewNominal = encounters.crewNominal[i];
        double lostNominal = encounters.lostNominal[i];
        repairs += repairPresent;
        crewTime += crewPresent;
        lostWork += lostPresent;
        int year = encounters.year[i];
        double[] yearly = sums.yearly;
        yearly[repairsRow + year] += repairNominal;
        yearly[crewTimeRow + year] += crewNominal;
        yearly[lostWorkRow + year] += lostNominal;
        sums.lumps[encounters.step[i]] += repairPresent + crewPresent + lostPresent;
        if (encounters.hour[i] <= monthlyUntil) {
            nominalSoFar += repairNominal + crewNominal + lostNominal;
        }
        if (fixSums != null) {
            int fix = encounters.fix[i];
            fixSums.flats[fix]++;
            fixSums.cash[fix] += repair;
            fixSums.paid[fix] += encounters.crewTime[i];
            fixSums.lost[fix] += encounters.lostWork[i];
            fixSums.delay[fix] += encounters.delay[i];
            fixSums.displaced[fix] += encounters.displaced[i];
        }
    }

    /** Replaces a ruined tire, or both sides of a half-worn set of air; returns what counts as repair. */
    private double replaceTire(int i, double age) {
        Article before = on;
        if (!before.holdsAir || !(age > 0.5)) {
            told(before, false, i);
            return before.tirePrice;
        }
        double x = encounters.hour[i];
        double place = encounters.place[i];
        Article fitted = course.choose(before, hoursLeft - x, plan.machine.noNewSetWithin());
        if (fitted != before) {
            renew(x, place, encounters.present[i], encounters.nominal[i]);
            return 0;
        }
        told(before, true, i);
        fit(fitted, x, place);
        return before.bothTires;
    }

    private void told(Article replaced, boolean both, int i) {
        if (ledger != null) {
            ledger.tires(replaced, both, encounters.present[i]);
        }
    }

    private void enterRenewal(double x, int day, double present, double nominal) {
        int year = x > 0 ? plan.yearOf(day) : 0;
        sums.yearly[Measure.RENEWALS * plan.years + year] += nominal;
        sums.lumps[plan.step(x)] += present;
        if (x <= monthlyUntil) {
            nominalSoFar += nominal;
        }
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
