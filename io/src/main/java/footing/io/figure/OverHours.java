package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.core.answer.MachineAnswer;
import footing.io.words.Advice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Money over the hours: what each entry has cost on the mean by each hour of the meter, in today's money. The last
 * point stands after the trade, so that each line ends at the entry's mean cost.
 */
final class OverHours {
    private static final int STEPS = 50;
    private static final List<Stroke> OTHERS =
            List.of(Stroke.DOTTED, Stroke.DASH_DOT, Stroke.LONG_DASH, Stroke.DASH_DOT_DOT);

    private OverHours() {}

    static Figure of(Advice advice, double hoursNow) {
        MachineAnswer machine = advice.machine();
        List<Series> series = new ArrayList<>();
        series.add(line(advice, machine.carried(), hoursNow, Tone.CARRIED, Stroke.DASHED));
        EntryAnswer about = advice.about();
        if (about != null) {
            series.add(line(advice, about, hoursNow, Tone.CHOICE, Stroke.SOLID));
        }
        int others = 0;
        for (EntryAnswer e : cheapestFirst(machine)) {
            if (!EntryName.isCarried(advice, e) && !e.equals(about)) {
                series.add(line(advice, e, hoursNow, Tone.QUIET, OTHERS.get(others++ % OTHERS.size())));
            }
        }
        return new Figure(
                "over-hours",
                "Money over the hours",
                "What each choice has cost by each hour of the meter, on average and in today's money: its price at the"
                        + " start, then everything on the way; the drop at the end is the trade. The dashed line is"
                        + " what it has now. Lines are averages alone; how far one life strays from them is told"
                        + " under 'How sure'.",
                Kind.LINES,
                Axis.of("hour meter", Unit.METER_HOURS),
                Axis.of("cost so far", Unit.MONEY),
                series,
                List.of());
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
            int g = i * last / STEPS;
            points.add(Point.of(hoursNow + hours * g / last, purchase + running.get(g)));
        }
        points.add(Point.of(
                hoursNow + hours, purchase + running.get(last) - entry.parts().tradeIn()));
        return new Series(EntryName.of(advice, entry), Shape.LINE, tone, stroke, points);
    }
}
