package footing.core.future;

import footing.core.chance.Draws;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedCrew;
import java.util.Arrays;

/**
 * What meets the tires of one position in one future: a Poisson process of hits, each with the fix it would take, the
 * uniform that decides whether it is a flat, and, once some course takes it as one, what it costs. Shared by all
 * courses of the position; columns grow and are used again.
 */
final class Encounters {
    private static final double AFTER_HOURS = 2;

    private final MachinePlan plan;
    private final double routeDay;
    private final double crewOutput;
    private final double personOvertime;
    private final double crewOvertime;
    private final double lostPerHour;
    /** Slack in a day: of ordinary weeks at 0, of full week i at i. */
    private final double[] slack;

    private final FixTable fixes;
    private final long key;
    private final double perFlat;
    private long state;
    private double[] later = {};

    int size;
    double[] hour = new double[32];
    double[] acceptance = new double[32];
    int[] fix = new int[32];
    private int[] number = new int[32];
    private boolean[] told = new boolean[32];
    /** Among the operating days. */
    double[] place = new double[32];

    double[] present = new double[32];
    double[] nominal = new double[32];
    double[] delay = new double[32];
    double[] down = new double[32];
    double[] displaced = new double[32];
    double[] lostHours = new double[32];
    double[] madeUp = new double[32];
    double[] after = new double[32];
    double[] crewTime = new double[32];
    double[] lostWork = new double[32];
    /** Present and nominal value of the crew time and the lost work. */
    double[] crewPresent = new double[32];

    double[] lostPresent = new double[32];
    double[] crewNominal = new double[32];
    double[] lostNominal = new double[32];
    /** Step of the grid over the hours left, and calendar year from that of asOf. */
    int[] step = new int[32];

    int[] year = new int[32];

    Encounters(MachinePlan plan, Position position) {
        this.plan = plan;
        ResolvedCrew crew = plan.machine.crew();
        routeDay = crew.day();
        crewOutput = plan.machine.crewOutput();
        personOvertime = crew.hourlyCost() * (1 + crew.overtimePremium());
        crewOvertime = crew.people() * personOvertime;
        lostPerHour = crew.billing() * (1 - crew.variableCost());
        slack = new double[1 + crew.fullWeeks().size()];
        slack[0] = crew.makeUpToday();
        for (int i = 1; i < slack.length; i++) {
            slack[i] = crew.fullWeeks().get(i - 1).makeUpToday();
        }
        fixes = plan.fixes;
        key = DrawKeys.encounter(plan.seed, plan.machine.id(), position);
        perFlat = 2 * plan.machine.flatsAt(position);
    }

    /**
     * Draws the encounters of a future.
     *
     * @param mostAccepted by fix, the acceptance above which no course of this position takes a hit as a flat
     */
    void draw(long future, Unknowns unknowns, double[] mostAccepted) {
        size = 0;
        later = unknowns.later;
        double rate = perFlat * unknowns.flatsPerHour;
        if (!(rate > 0)) {
            return;
        }
        state = Draws.future(key, future);
        double end = plan.calendar.hoursLeft();
        double x = 0;
        for (int j = 0; ; j++) {
            long first = (long) j * DrawKeys.SLOTS;
            x -= Math.log(Draws.uniform(state, first + DrawKeys.GAP)) / rate;
            if (!(x < end)) {
                return;
            }
            double u = Draws.uniform(state, first + DrawKeys.ACCEPTANCE);
            int picked = fixes.pick(Draws.uniform(state, first + DrawKeys.FIX));
            if (u < mostAccepted[picked]) {
                add(x, u, picked, j);
            }
        }
    }

    private void add(double x, double u, int picked, int j) {
        if (size == hour.length) {
            grow();
        }
        hour[size] = x;
        acceptance[size] = u;
        fix[size] = picked;
        number[size] = j;
        told[size++] = false;
    }

    /** Works out what encounter i costs as a flat, unless that is done. */
    void tell(int i) {
        if (told[i]) {
            return;
        }
        told[i] = true;
        long first = (long) number[i] * DrawKeys.SLOTS;
        double at = plan.calendar.place(hour[i]);
        int d = HourCalendar.dayOf(at);
        place[i] = at;
        present[i] = plan.discounting.present(d, at - d);
        nominal[i] = plan.discounting.nominal(d, at - d);
        delay[i] = fixes.delay[fix[i]].draw(Draws.uniform(state, first + DrawKeys.DELAY));
        double restOfDay = routeDay * Draws.uniform(state, first + DrawKeys.HOUR);
        boolean nextDays = delay[i] - restOfDay > AFTER_HOURS;
        down[i] = nextDays ? delay[i] : Math.min(delay[i], restOfDay);
        after[i] = nextDays ? 0 : Math.max(delay[i] - restOfDay, 0);
        int week = plan.weekOfDay[d];
        displaced[i] = down[i] * crewOutput * (1 - fixes.output[fix[i]]);
        double today = Math.min(displaced[i], slack[week]);
        double another = (displaced[i] - today) * later[week];
        madeUp[i] = today + another;
        lostHours[i] = displaced[i] - today - another;
        crewTime[i] = madeUp[i] * crewOvertime + after[i] * personOvertime;
        lostWork[i] = lostHours[i] * lostPerHour;
        crewPresent[i] = crewTime[i] * present[i];
        lostPresent[i] = lostWork[i] * present[i];
        crewNominal[i] = crewTime[i] * nominal[i];
        lostNominal[i] = lostWork[i] * nominal[i];
        step[i] = plan.step(hour[i]);
        year[i] = plan.yearOf(d);
    }

    private void grow() {
        int n = 2 * size;
        hour = Arrays.copyOf(hour, n);
        acceptance = Arrays.copyOf(acceptance, n);
        fix = Arrays.copyOf(fix, n);
        number = Arrays.copyOf(number, n);
        told = Arrays.copyOf(told, n);
        place = Arrays.copyOf(place, n);
        present = Arrays.copyOf(present, n);
        nominal = Arrays.copyOf(nominal, n);
        delay = Arrays.copyOf(delay, n);
        down = Arrays.copyOf(down, n);
        displaced = Arrays.copyOf(displaced, n);
        lostHours = Arrays.copyOf(lostHours, n);
        madeUp = Arrays.copyOf(madeUp, n);
        after = Arrays.copyOf(after, n);
        crewTime = Arrays.copyOf(crewTime, n);
        lostWork = Arrays.copyOf(lostWork, n);
        crewPresent = Arrays.copyOf(crewPresent, n);
        lostPresent = Arrays.copyOf(lostPresent, n);
        crewNominal = Arrays.copyOf(crewNominal, n);
        lostNominal = Arrays.copyOf(lostNominal, n);
        step = Arrays.copyOf(step, n);
        year = Arrays.copyOf(year, n);
    }
}
