package footing.core.follow;

import footing.core.fleet.Position;
import footing.core.future.Followed;
import footing.core.records.Happened;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** One machine's forecast beside what its rows tell. */
final class Told {
    private static final double MINUTES = 60;

    private final Forecast all;
    private final Forecast.Machine forecast;
    private final Happened happened;
    private final List<Came> came = new ArrayList<>();
    private final Set<String> others = new TreeSet<>();

    /** Something that came. */
    private record Came(LocalDate date, double hours, Map<Followed, Double> more) {}

    Told(Forecast all, Forecast.Machine forecast, Happened happened) {
        this.all = all;
        this.forecast = forecast;
        this.happened = happened;
        for (Happened.Flat flat : happened.flats()) {
            came.add(new Came(
                    flat.date(),
                    flat.hours(),
                    Map.of(
                            Followed.FLATS, flat.count(),
                            Followed.DOWN_HOURS, flat.minutes().orElse(0) / MINUTES,
                            Followed.PAID, flat.cost().orElse(0))));
        }
        sets();
        came.sort(Comparator.comparingDouble(Came::hours));
    }

    /** Sets put on, but for those the plan changes over to at the start and those already on. */
    private void sets() {
        Set<Position> changed = EnumSet.noneOf(Position.class);
        Set<Position> there = EnumSet.noneOf(Position.class);
        for (Happened.Fitted set : happened.fitted()) {
            Position at = set.spot() == Spot.DRIVE ? Position.DRIVE : Position.CASTER;
            boolean planned = set.assembly().equals(forecast.plan().wanted(at));
            if (!planned && !set.assembly().equals(forecast.plan().before(at))) {
                others.add(set.assembly());
            }
            boolean start = planned && forecast.plan().changesNow(at) && changed.add(at);
            if (!start && !(wasOn(set, at) && there.add(at))) {
                came.add(new Came(set.date(), set.hours(), Map.of(Followed.SETS, 1.0)));
            }
        }
    }

    /**
     * True if a row of the first day, or of the day the forecast was made with no hour run by then, only tells which
     * set is on: the one from before, or the wanted one where recording began after the change.
     */
    private boolean wasOn(Happened.Fitted set, Position at) {
        boolean known = set.assembly().equals(forecast.plan().before(at))
                || (late() && set.assembly().equals(forecast.plan().wanted(at)));
        boolean unrun = set.hours() == 0 && !set.date().isAfter(all.made());
        return known && (unrun || set.date().equals(happened.from()));
    }

    /** True if recording began only after the day of the forecast. */
    private boolean late() {
        return happened.from().isAfter(all.asOf());
    }

    FollowUp.Machine machine() {
        List<Step> steps = new ArrayList<>(List.of(Step.START));
        for (Came c : came) {
            steps.add(last(steps).plus(c.hours, c.more));
        }
        steps.add(last(steps).at(happened.hours()));
        List<Line> lines = Line.of(last(steps), forecast.bands(), withoutMinutes(), withoutCost());
        return new FollowUp.Machine(forecast, happened, late(), steps, lines, others);
    }

    static FollowUp.Fleet fleet(List<Told> all, Bands bands) {
        List<Came> came = new ArrayList<>();
        all.forEach(t -> came.addAll(t.came));
        came.sort(Comparator.comparing(Came::date));
        List<Step> steps = new ArrayList<>(List.of(Step.START));
        for (Came c : came) {
            double hours =
                    all.stream().mapToDouble(t -> t.happened.hoursBy(c.date)).sum();
            steps.add(last(steps).plus(Math.max(hours, last(steps).hours()), c.more));
        }
        steps.add(
                last(steps).at(all.stream().mapToDouble(t -> t.happened.hours()).sum()));
        int minutes = all.stream().mapToInt(Told::withoutMinutes).sum();
        int cost = all.stream().mapToInt(Told::withoutCost).sum();
        return new FollowUp.Fleet(steps, Line.of(last(steps), bands, minutes, cost));
    }

    private static Step last(List<Step> steps) {
        return steps.get(steps.size() - 1);
    }

    private int withoutMinutes() {
        return without(Happened.Flat::minutes);
    }

    private int withoutCost() {
        return without(Happened.Flat::cost);
    }

    private int without(java.util.function.Function<Happened.Flat, OptionalDouble> what) {
        return (int) happened.flats().stream()
                .filter(f -> what.apply(f).isEmpty())
                .mapToDouble(Happened.Flat::count)
                .sum();
    }
}
