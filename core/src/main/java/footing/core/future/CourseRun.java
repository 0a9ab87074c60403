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
    private final double runOut;
    private final double noNewSetWithin;
    private final double wornTireEffect;
    /** How often a new tire goes flat against an average one: 1 − g/2. */
    private final double newOften;

    private Course course;
    private CourseSums sums;
    private @Nullable FixSums fixSums;
    private @Nullable Ledger ledger;

    private Article on;
    private double fittedAt;
    private double perHourOfLife;
    /** When the set that is on wears out and is not run bald; beyond the trade if that does not come. */
    private double wearsOut;

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
        runOut = plan.machine.runOut();
        noNewSetWithin = plan.machine.noNewSetWithin();
        wornTireEffect = plan.machine.wornTireEffect();
        newOften = 1 - wornTireEffect / 2;
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
        Hit[] hits = encounters.hits;
        int size = encounters.size;
        for (int i = 0; i < size; i++) {
            Hit hit = hits[i];
            while (wearsOut <= hit.hour) {
                wearOut(wearsOut);
            }
            double age = age(hit.hour);
            if (hit.acceptance < shares[hit.fix] * (newOften + wornTireEffect * age)) {
                flat(hit, age);
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
        renewals = repairs = crewTime = lostWork = trade = 0;
        nominalSoFar = 0;
        wantedFitted = on == c.wanted();
        upkeep = on.upkeepPerHour * presentHoursLeft;
        ledgerHours = 0;
        double factor = unknowns.lifeFactor[on.index];
        if (c.keepsHours()) {
            fittedAt = -on.worn;
            ends(lives.lifeBeyondWorn(on, factor));
        } else {
            fittedAt = 0;
            ends(lives.life(0, on, factor));
        }
        shares = unknowns.halfShares[on.index];
    }

    private void ends(double life) {
        perHourOfLife = 1 / life;
        double end = fittedAt + life;
        wearsOut = !(end < hoursLeft) ? Double.POSITIVE_INFINITY : end > 0 ? end : 0;
    }

    private double age(double x) {
        double age = (x - fittedAt) * perHourOfLife;
        return age < 1 ? age : 1;
    }

    private void wearOut(double x) {
        if (hoursLeft - x < runOut) {
            // Run bald: its age stays 1.
            fittedAt = Double.NEGATIVE_INFINITY;
            wearsOut = Double.POSITIVE_INFINITY;
            return;
        }
        sums.totals[Measure.SETS]++;
        double place = plan.calendar.place(x);
        int day = HourCalendar.dayOf(place);
        double present = place > 0 ? plan.discounting.present(day, place - day) : 1;
        double nominal = place > 0 ? plan.discounting.nominal(day, place - day) : 1;
        renew(x, place, day, present, nominal);
    }

    /** A set comes off and what the rest of the hours is worth is fitted. */
    private void renew(double x, double place, int day, double present, double nominal) {
        Article off = on;
        Article fitted = course.choose(off, hoursLeft - x, noNewSetWithin);
        double cost = Course.cost(fitted, off) + off.scrap + fitted.fitting;
        renewals += cost * present;
        enterRenewal(x, day, cost * present, cost * nominal);
        if (ledger != null) {
            ledger.renewal(off, fitted, x, place, present);
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
        fittedAt = x;
        ends(lives.life(set, fitted, unknowns.lifeFactor[fitted.index]));
        shares = unknowns.halfShares[fitted.index];
    }

    private void changeUpkeep(Article fitted, double x, double place) {
        double change = fitted.upkeepPerHour - on.upkeepPerHour;
        double presentHours = plan.discounting.presentHours(place);
        if (ledger != null) {
            ledger.ran(on, x, presentHours - ledgerHours);
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

    private void flat(Hit hit, double age) {
        encounters.tell(hit);
        double[] totals = sums.totals;
        totals[Measure.FLATS]++;
        totals[Measure.DOWN_HOURS] += hit.down;
        totals[Measure.DISPLACED_HOURS] += hit.displaced;
        totals[Measure.LOST_HOURS] += hit.lostHours;
        if (ledger != null) {
            ledger.flat(hit, on);
        }
        pay(hit, plan.fixes.cost[hit.fix] + (plan.fixes.replacesTire[hit.fix] ? replaceTire(hit, age) : 0));
    }

    private void pay(Hit hit, double repair) {
        double repairPresent = repair * hit.present;
        double repairNominal = repair * hit.nominal;
        repairs += repairPresent;
        crewTime += hit.crewPresent;
        lostWork += hit.lostPresent;
        double[] yearly = sums.yearly;
        yearly[repairsRow + hit.year] += repairNominal;
        yearly[crewTimeRow + hit.year] += hit.crewNominal;
        yearly[lostWorkRow + hit.year] += hit.lostNominal;
        sums.lumps[hit.step] += repairPresent + hit.crewPresent + hit.lostPresent;
        if (hit.hour <= monthlyUntil) {
            nominalSoFar += repairNominal + hit.crewNominal + hit.lostNominal;
        }
        if (fixSums != null) {
            fixSums.add(hit, repair);
        }
    }

    /** Replaces a ruined tire, or both sides of a half-worn set of air; returns what counts as repair. */
    private double replaceTire(Hit hit, double age) {
        Article before = on;
        if (!before.holdsAir || !(age > 0.5)) {
            told(before, false, hit);
            return before.tirePrice;
        }
        double x = hit.hour;
        Article fitted = course.choose(before, hoursLeft - x, noNewSetWithin);
        if (fitted != before) {
            renew(x, hit.place, HourCalendar.dayOf(hit.place), hit.present, hit.nominal);
            return 0;
        }
        told(before, true, hit);
        fit(fitted, x, hit.place);
        return before.bothTires;
    }

    private void told(Article replaced, boolean both, Hit hit) {
        if (ledger != null) {
            ledger.tires(replaced, both, hit.present);
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
            ledger.ran(on, hoursLeft, presentHoursLeft - ledgerHours);
            ledger.trade(on, age, course.changes());
        }
        double[] totals = sums.totals;
        totals[Measure.RENEWALS] += renewals;
        totals[Measure.REPAIRS] += repairs;
        totals[Measure.CREW_TIME] += crewTime;
        totals[Measure.LOST_WORK] += lostWork;
        totals[Measure.UPKEEP] += upkeep;
        totals[Measure.TRADE] += trade;
        totals[Measure.MONTHLY] += nominalSoFar;
    }
}
