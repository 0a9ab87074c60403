package footing.core.future;

import footing.core.fleet.Position;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Runs futures of one machine; one for each thread that does. */
final class Simulation {
    private final MachinePlan plan;
    private final Unknowns unknowns;
    private final Side[] sides;
    private final Course[] courses;
    private final double keep;
    /** How often a worn-out tire goes flat against an average one: 1 + g/2. */
    private final double mostOften;

    private final double[] constants;
    /** After-tax present values of the future just run, by course: parts only, with time, all. */
    private final double[][] parts;

    private final double[][] time;
    private final double[][] all;
    private final boolean[][] fitted;

    /** A position's draws and what lives through them. */
    private static final class Side {
        final Encounters encounters;
        final LifeDraws lives;
        final CourseRun run;
        final double[] mostAccepted;
        final Article[] articles;
        final boolean leftOut;

        Side(MachinePlan plan, Position position, Unknowns unknowns) {
            encounters = new Encounters(plan, position);
            lives = new LifeDraws(plan, position);
            run = new CourseRun(plan, encounters, lives, unknowns);
            mostAccepted = new double[plan.fixes.size];
            articles = plan.articlesAt(position);
            leftOut = plan.leavesOut(position);
        }
    }

    /** Who is told what happens in a course, if anybody. */
    private final @Nullable Ledger[] ledgers;

    Simulation(MachinePlan plan, SharedDraws shared, int atMost) {
        this.plan = plan;
        unknowns = new Unknowns(plan, shared);
        sides = new Side[] {
            new Side(plan, Position.DRIVE, unknowns), new Side(plan, Position.CASTER, unknowns),
        };
        courses = plan.courses.toArray(Course[]::new);
        keep = 1 - plan.machine.terms().taxRate();
        mostOften = 1 + plan.machine.wornTireEffect() / 2;
        constants = plan.entryConstants();
        int n = plan.courses.size();
        ledgers = new Ledger[n];
        parts = new double[n][atMost];
        time = new double[n][atMost];
        all = new double[n][atMost];
        fitted = new boolean[n][atMost];
    }

    /** Counts what happens under an entry from now on. */
    void tell(Ledger counts, int entry) {
        java.util.Arrays.fill(ledgers, null);
        ledgers[plan.driveCourse[entry]] = counts;
        ledgers[plan.casterCourse[entry]] = counts;
    }

    /** Tells what happens in each course to its own ledger from now on. */
    void tellEach(List<? extends Ledger> byCourse) {
        for (int c = 0; c < ledgers.length; c++) {
            ledgers[c] = byCourse.get(c);
        }
    }

    /**
     * Runs futures {@code from} to {@code to}, exclusive.
     *
     * @param costs receives the cost of each entry in each future, by future number
     */
    Block run(int from, int to, double[][] costs) {
        Block block = new Block(plan);
        unknowns.draw(from, to);
        for (int f = from; f < to; f++) {
            future(f, f - from, block);
        }
        block.futures = to - from;
        for (int e = 0; e < constants.length; e++) {
            combine(e, from, to, costs[e], block);
        }
        return block;
    }

    private void future(int number, int slot, Block block) {
        unknowns.show(number);
        for (Side side : sides) {
            if (!side.leftOut) {
                side.lives.draw(number);
                drawEncounters(side, number);
            }
        }
        for (int c = 0; c < courses.length; c++) {
            Course course = courses[c];
            Side side = side(course.position());
            if (side.leftOut) {
                continue;
            }
            CourseRun run = side.run;
            run.tell(ledgers[c]);
            run.run(course, block.courses.get(c), course.changes() ? null : block.fixes);
            double goods = (run.renewals + run.repairs) * keep - run.trade * plan.presentAtTrade * keep;
            double hours = (run.crewTime + run.upkeep) * keep;
            parts[c][slot] = goods;
            time[c][slot] = goods + hours;
            all[c][slot] = goods + hours + run.lostWork * keep;
            fitted[c][slot] = course.changes() && run.wantedFitted;
        }
    }

    private Side side(Position position) {
        return position == Position.DRIVE ? sides[0] : sides[1];
    }

    /** Hits that no article of a position could take as a flat are not kept. */
    private void drawEncounters(Side side, int number) {
        double[] most = side.mostAccepted;
        java.util.Arrays.fill(most, 0);
        double mostOfAll = 0;
        for (Article a : side.articles) {
            double[] shares = unknowns.halfShares[a.index];
            for (int fix = 0; fix < most.length; fix++) {
                double accepted = shares[fix] * mostOften;
                most[fix] = accepted > most[fix] ? accepted : most[fix];
                mostOfAll = accepted > mostOfAll ? accepted : mostOfAll;
            }
        }
        side.encounters.draw(number, unknowns, most, mostOfAll);
    }

    private void combine(int e, int from, int to, double[] costs, Block block) {
        int d = plan.driveCourse[e];
        int c = plan.casterCourse[e];
        double constant = constants[e];
        double[] drive = all[d];
        double[] caster = all[c];
        for (int slot = 0; slot < to - from; slot++) {
            costs[from + slot] = drive[slot] + caster[slot] + constant;
        }
        block.partsPay[e] += cheaper(parts, e, to - from);
        block.partsAndTimePay[e] += cheaper(time, e, to - from);
        if (plan.courses.get(d).changes() || plan.courses.get(c).changes()) {
            block.neverFitted[e] += neverFitted(fitted[d], fitted[c], to - from);
        }
    }

    /** Futures in which an entry costs less than the carried one, by courses so counted. */
    private int cheaper(double[][] counted, int e, int futures) {
        double[] drive = counted[plan.driveCourse[e]];
        double[] caster = counted[plan.casterCourse[e]];
        double[] carriedDrive = counted[plan.driveCourse[0]];
        double[] carriedCaster = counted[plan.casterCourse[0]];
        int cheaper = 0;
        for (int slot = 0; slot < futures; slot++) {
            double carried = carriedDrive[slot] + carriedCaster[slot];
            cheaper += carried > drive[slot] + caster[slot] + constants[e] ? 1 : 0;
        }
        return cheaper;
    }

    private static int neverFitted(boolean[] drive, boolean[] caster, int futures) {
        int never = 0;
        for (int slot = 0; slot < futures; slot++) {
            never += !drive[slot] && !caster[slot] ? 1 : 0;
        }
        return never;
    }
}
