package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.core.answer.HourBand;
import footing.core.answer.MachineAnswer;
import footing.core.future.CostSoFar;
import footing.io.words.Advice;
import footing.io.words.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Money over the hours: what each entry has cost on the mean by each hour of the meter, in today's money, and where the
 * answer has them the bands within which eight in ten futures lie. The last point stands after the trade, so that each
 * line ends at the entry's mean cost.
 */
final class OverHours {
    private static final int STEPS = CostSoFar.STEPS;
    private static final List<Stroke> OTHERS = List.of(Stroke.DOTTED, Stroke.DASH_DOT, Stroke.LONG_DASH);

    private static final String CAPTION =
            "What each choice has cost by each hour of the meter, on average and in today's"
                    + " money: its price at the start, then everything on the way; the drop at the end is the trade. The dashed"
                    + " line is what it has now.";

    private OverHours() {}

    static Figure of(Advice advice, double hoursNow) {
        MachineAnswer machine = advice.machine();
        List<Series> series = new ArrayList<>();
        series.add(line(advice, machine.carried(), hoursNow, Tone.CARRIED, Stroke.DASHED));
        band(advice, machine.carried(), hoursNow, Tone.CARRIED, Stroke.DASHED).ifPresent(series::add);
        EntryAnswer about = advice.about();
        if (about != null) {
            series.add(line(advice, about, hoursNow, Tone.CHOICE, Stroke.SOLID));
            band(advice, about, hoursNow, Tone.CHOICE, Stroke.SOLID).ifPresent(series::add);
        }
        List<EntryAnswer> others = cheapestFirst(machine).stream()
                .filter(e -> !EntryName.isCarried(advice, e) && !e.equals(about))
                .toList();
        for (int i = 0; i < Math.min(others.size(), OTHERS.size()); i++) {
            series.add(line(advice, others.get(i), hoursNow, Tone.QUIET, OTHERS.get(i)));
        }
        return new Figure(
                "over-hours",
                "Money over the hours",
                CAPTION + left(others.size()) + stray(machine),
                Kind.LINES,
                Axis.of("hour meter", Unit.METER_HOURS),
                Axis.of("cost so far", Unit.MONEY),
                series,
                List.of());
    }

    private static String left(int others) {
        return others > OTHERS.size()
                ? " Of the others the " + Figures.word(OTHERS.size()) + " cheapest are drawn in gray."
                : "";
    }

    private static String stray(MachineAnswer machine) {
        List<HourBand> bands = machine.bands();
        return bands == null || bands.isEmpty()
                ? " Lines are averages alone; how far one life strays from them is told under 'How sure'."
                : " Between the thin edges around a line lie eight in ten of the ways it could go: between dashed"
                        + " edges with what it has now, shaded with the change. The edges come from the first "
                        + Figures.money(bands.get(0).futures()) + " of them.";
    }

    private static Optional<Series> band(Advice advice, EntryAnswer entry, double hoursNow, Tone tone, Stroke stroke) {
        List<HourBand> bands = advice.machine().bands();
        return bands == null
                ? Optional.empty()
                : bands.stream()
                        .filter(b -> b.entry().equals(entry.entry()))
                        .findFirst()
                        .map(b ->
                                new Series(EntryName.of(advice, entry), Shape.BAND, tone, stroke, edges(b, hoursNow)));
    }

    private static List<Point> edges(HourBand band, double hoursNow) {
        List<Point> points = new ArrayList<>();
        band.stands().forEach(s -> points.add(edge(s, hoursNow)));
        points.add(edge(band.afterTrade(), hoursNow));
        return points;
    }

    private static Point edge(HourBand.Stand s, double hoursNow) {
        return Point.range(hoursNow + s.hours(), s.mean(), s.p10(), s.p90());
    }

    private static List<EntryAnswer> cheapestFirst(MachineAnswer machine) {
        return machine.entries().stream()
                .sorted(Comparator.comparingDouble(e -> e.cost().mean()))
                .toList();
    }

    private static Series line(Advice advice, EntryAnswer entry, double hoursNow, Tone tone, Stroke stroke) {
        List<Double> running = entry.outcome().running();
        double purchase = entry.parts().purchase();
        double hours = advice.machine().machine().hoursLeft();
        int last = running.size() - 1;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            points.add(Point.of(hoursNow + CostSoFar.hour(i, hours), purchase + running.get(i * last / STEPS)));
        }
        points.add(Point.of(
                hoursNow + hours, purchase + running.get(last) - entry.parts().tradeIn()));
        return new Series(EntryName.of(advice, entry), Shape.LINE, tone, stroke, points);
    }
}
