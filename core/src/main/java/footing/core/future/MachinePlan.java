package footing.core.future;

import footing.core.fleet.Position;
import footing.core.fleet.ResolvedCrew;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.When;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Everything about a machine that is the same in every future, ready for the simulation. Shared by threads. */
final class MachinePlan {
    /** Steps of the grid over the hours left on which the cumulative saving is followed. */
    static final int GRID = 1000;

    final ResolvedMachine machine;
    final long seed;
    final HourCalendar calendar;
    final Discounting discounting;
    final FixTable fixes;
    final List<Article> articles;
    private final Article[] driveArticles;
    private final Article[] casterArticles;
    final List<Course> courses = new ArrayList<>();
    final List<ResolvedMachine.Entry> entries;
    final Purchase[] purchases;
    /** The course of an entry at the drives and at the casters. */
    final int[] driveCourse;

    final int[] casterCourse;
    final int[] weekOfDay;
    private final int[] yearOfDay;
    private final double gridPerHour;
    /** Nominal hours run by the start of each year from the first; the last is all of them. */
    final double[] nominalHoursByYear;
    /** Nominal hours run by the end of the loan test. */
    final double nominalHoursMonthly;

    final int firstYear;
    final int years;
    final double presentAtTrade;
    final double nominalAtTrade;
    /** What tax still undeducted at the trade is worth as a present value, by entry. */
    final double[] reliefAtTrade;
    /** Nominal counterpart of {@link #reliefAtTrade}. */
    final double[] nominalReliefAtTrade;

    final MonthlyTerms monthly;

    /** True if only the differences between entries are wanted: a position they all treat alike is not lived. */
    final boolean differencesOnly;

    MachinePlan(ResolvedMachine m, long seed, boolean differencesOnly) {
        machine = m;
        this.differencesOnly = differencesOnly;
        this.seed = seed;
        calendar = new HourCalendar(m.asOf(), m.season(), m.hoursPerYear(), m.hoursLeft());
        discounting = new Discounting(calendar, m.terms());
        gridPerHour = GRID / m.hoursLeft();
        fixes = new FixTable(m.crew().fixes());
        entries = m.entries();
        Map<String, Article> byId = new LinkedHashMap<>();
        for (ResolvedMachine.Entry entry : entries) {
            for (Position p : Position.values()) {
                byId.computeIfAbsent(entry.at(p), id -> new Article(byId.size(), m.assembly(entry, p), m));
            }
        }
        articles = List.copyOf(byId.values());
        int n = entries.size();
        purchases = new Purchase[n];
        driveCourse = new int[n];
        casterCourse = new int[n];
        for (int e = 0; e < n; e++) {
            ResolvedMachine.Entry entry = entries.get(e);
            purchases[e] = Purchase.of(m, entry, calendar);
            driveCourse[e] = course(entry, Position.DRIVE, byId);
            casterCourse[e] = course(entry, Position.CASTER, byId);
        }
        driveArticles =
                articles.stream().filter(a -> a.position == Position.DRIVE).toArray(Article[]::new);
        casterArticles =
                articles.stream().filter(a -> a.position == Position.CASTER).toArray(Article[]::new);
        weekOfDay = weeks(m.crew());
        double trade = calendar.place(m.hoursLeft());
        int tradeDay = HourCalendar.dayOf(trade);
        firstYear = m.asOf().getYear();
        years = calendar.date(tradeDay).getYear() - firstYear + 1;
        yearOfDay = new int[calendar.days()];
        nominalHoursByYear = nominalHoursByYear(tradeDay);
        presentAtTrade = discounting.present(trade);
        nominalAtTrade = discounting.nominal(trade);
        double toPresent = presentAtTrade / nominalAtTrade;
        nominalReliefAtTrade = new double[n];
        reliefAtTrade = new double[n];
        for (int e = 0; e < n; e++) {
            nominalReliefAtTrade[e] = m.terms().taxRate() * purchases[e].undeducted();
            reliefAtTrade[e] = nominalReliefAtTrade[e] * toPresent;
        }
        monthly = MonthlyTerms.of(m, calendar);
        nominalHoursMonthly = discounting.nominalHours(calendar.place(monthly.untilHour()));
    }

    private double[] nominalHoursByYear(int tradeDay) {
        double[] byYear = new double[years + 1];
        for (int day = 0; day < yearOfDay.length; day++) {
            yearOfDay[day] = Math.min(calendar.date(day).getYear() - firstYear, years - 1);
            if (day <= tradeDay) {
                byYear[yearOfDay[day] + 1] = discounting.nominalHoursBefore(day + 1);
            }
        }
        byYear[years] = discounting.nominalHours(calendar.place(machine.hoursLeft()));
        for (int y = 1; y <= years; y++) {
            byYear[y] = Math.max(byYear[y], byYear[y - 1]);
        }
        return byYear;
    }

    /** The calendar year of an operating day, counted from the year of asOf. */
    int yearOf(int day) {
        return yearOfDay[day];
    }

    private int course(ResolvedMachine.Entry entry, Position p, Map<String, Article> byId) {
        Article carried = article(byId, machine.carried().at(p));
        Article wanted = article(byId, entry.at(p));
        boolean atOnce = entry.when() == When.NOW && wanted != carried;
        boolean treated = atOnce && machine.assembly(entry, p).madeByTreating(machine.assembly(machine.carried(), p));
        Course course = new Course(p, carried, wanted, atOnce ? wanted : carried, !atOnce || treated);
        int known = courses.indexOf(course);
        if (known < 0) {
            courses.add(course);
            return courses.size() - 1;
        }
        return known;
    }

    private static Article article(Map<String, Article> byId, String id) {
        Article found = byId.get(id);
        if (found == null) {
            throw new IllegalStateException("no article " + id);
        }
        return found;
    }

    /** For each operating day the number of its full week, from 1; 0 for other days. */
    private int[] weeks(ResolvedCrew crew) {
        int[] week = new int[calendar.days()];
        List<ResolvedCrew.FullWeeks> all = crew.fullWeeks();
        for (int day = 0; day < week.length; day++) {
            for (int i = all.size() - 1; i >= 0; i--) {
                if (all.get(i).days().contains(calendar.date(day))) {
                    week[day] = i + 1;
                }
            }
        }
        return week;
    }

    /** Upkeep per hour of the sets an entry starts with. */
    double upkeepPerHour(int e) {
        return courses.get(driveCourse[e]).atStart().upkeepPerHour
                + courses.get(casterCourse[e]).atStart().upkeepPerHour;
    }

    /** The step of the grid over the hours left that hour x falls within. */
    int step(double x) {
        return Math.min(GRID, (int) Math.ceil(x * gridPerHour));
    }

    /** True if no entry's course at a position differs from another's and only differences are wanted. */
    boolean leavesOut(Position position) {
        return differencesOnly
                && courses.stream().filter(c -> c.position() == position).count() == 1;
    }

    /** The articles that may be fitted at a position. */
    Article[] articlesAt(Position position) {
        return position == Position.DRIVE ? driveArticles : casterArticles;
    }

    /** What each entry's start and the tax on it add to its cost. */
    double[] entryConstants() {
        double[] constants = new double[entries.size()];
        for (int e = 0; e < constants.length; e++) {
            constants[e] = purchases[e].presentValue() - reliefAtTrade[e];
        }
        return constants;
    }
}
