package footing.core.future;

import footing.core.chance.Draws;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedCrew;
import java.util.Arrays;

/**
 * What meets the tires of one position in one future: a Poisson process of hits, each with the fix it would take, the
 * uniform that decides whether it is a flat, and, once some course takes it as one, what it costs. Shared by all
 * courses of the position.
 */
final class Encounters {
    private static final double AFTER_HOURS = 2;
    /** Products below it start anew at the hour they have come to, before they lose digits. */
    private static final double TINY = 1e-200;

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
    Hit[] hits = {};

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
     * <p>The gaps add up to hour x, so the product of their uniforms is exp(−rate · x): the hits that nobody keeps
     * need no logarithm.
     *
     * @param most by fix, the acceptance from which on no course of this position takes a hit as a flat
     * @param mostOfAll the largest of them
     */
    void draw(long future, Unknowns unknowns, double[] most, double mostOfAll) {
        size = 0;
        later = unknowns.later;
        double rate = perFlat * unknowns.flatsPerHour;
        if (!(rate > 0 && mostOfAll > 0)) {
            return;
        }
        state = Draws.future(key, future);
        double end = plan.calendar.hoursLeft();
        double hoursPerLog = -1 / rate;
        double from = 0;
        double product = 1;
        double atEnd = Math.exp(-rate * end);
        for (int j = 0; ; j++) {
            long first = (long) j * DrawKeys.SLOTS;
            product *= Draws.uniform(state, first + DrawKeys.GAP);
            if (product < TINY) {
                from += Math.log(product) * hoursPerLog;
                product = 1;
                atEnd = Math.exp(-rate * (end - from));
            }
            if (!(product > atEnd)) {
                return;
            }
            double u = Draws.uniform(state, first + DrawKeys.ACCEPTANCE);
            if (u < mostOfAll) {
                int fix = fixes.pick(Draws.uniform(state, first + DrawKeys.FIX));
                if (u < most[fix]) {
                    add(from + Math.log(product) * hoursPerLog, u, fix, j);
                }
            }
        }
    }

    private void add(double hour, double acceptance, int fix, int number) {
        if (size == hits.length) {
            grow();
        }
        Hit hit = hits[size++];
        hit.hour = hour;
        hit.acceptance = acceptance;
        hit.fix = fix;
        hit.number = number;
        hit.told = false;
    }

    private void grow() {
        hits = Arrays.copyOf(hits, Math.max(16, 2 * size));
        for (int i = size; i < hits.length; i++) {
            hits[i] = new Hit();
        }
    }

    /** Works out what a hit costs as a flat, unless that is done. */
    void tell(Hit hit) {
        if (hit.told) {
            return;
        }
        hit.told = true;
        double place = plan.calendar.place(hit.hour);
        int day = HourCalendar.dayOf(place);
        double present = plan.discounting.present(day, place - day);
        double nominal = plan.discounting.nominal(day, place - day);
        hit.place = place;
        hit.present = present;
        hit.nominal = nominal;
        hit.step = plan.step(hit.hour);
        hit.year = plan.yearOf(day);
        wait(hit, plan.weekOfDay[day]);
        hit.crewPresent = hit.crewTime * present;
        hit.lostPresent = hit.lostWork * present;
        hit.crewNominal = hit.crewTime * nominal;
        hit.lostNominal = hit.lostWork * nominal;
    }

    private void wait(Hit hit, int week) {
        long first = (long) hit.number * DrawKeys.SLOTS;
        double delay = fixes.delay[hit.fix].draw(Draws.uniform(state, first + DrawKeys.DELAY));
        double restOfDay = routeDay * Draws.uniform(state, first + DrawKeys.HOUR);
        boolean nextDays = delay - restOfDay > AFTER_HOURS;
        double down = nextDays ? delay : Math.min(delay, restOfDay);
        double after = nextDays ? 0 : Math.max(delay - restOfDay, 0);
        double displaced = down * crewOutput * (1 - fixes.output[hit.fix]);
        double today = Math.min(displaced, slack[week]);
        double another = (displaced - today) * later[week];
        hit.delay = delay;
        hit.down = down;
        hit.after = after;
        hit.displaced = displaced;
        hit.madeUp = today + another;
        hit.lostHours = displaced - today - another;
        hit.crewTime = hit.madeUp * crewOvertime + after * personOvertime;
        hit.lostWork = hit.lostHours * lostPerHour;
    }
}
