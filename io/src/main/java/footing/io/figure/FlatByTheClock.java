package footing.io.figure;

import footing.core.fleet.ResolvedCrew;
import footing.core.future.FixOutcome;
import footing.io.words.Figures;
import footing.io.words.Lists;
import java.util.ArrayList;
import java.util.List;

/**
 * The mean flat of one fix, by the clock: how long the machine waits and what becomes of the crew's minutes it pushes
 * out of their place.
 *
 * <p>What is lost and made up follows from the money exactly: lost crew-hours = lost work / (billing · (1 − variable
 * cost)), made up = displaced − lost, and the hours one person works after the day are what paid time is left.
 */
public record FlatByTheClock(
        FixOutcome fix, double waiting, double pushedBack, double madeUp, double lost, double after) {
    private static final int MINUTES = 60;

    public static FlatByTheClock of(ResolvedCrew crew, FixOutcome fix) {
        double price = crew.billing() * (1 - crew.variableCost());
        double lost = price > 0 ? Math.min(fix.lost() / price, fix.displaced()) : 0;
        double madeUp = fix.displaced() - lost;
        double hour = crew.hourlyCost() * (1 + crew.overtimePremium());
        double after = hour > 0 ? Math.max(0, fix.paid() / hour - madeUp * crew.people()) : 0;
        return new FlatByTheClock(
                fix,
                MINUTES * fix.delay(),
                MINUTES * fix.displaced(),
                MINUTES * madeUp,
                MINUTES * lost,
                MINUTES * after);
    }

    /** 'Of those minutes 44 are made up and 30 lost.'; empty if none are pushed back. */
    public String told() {
        return Figures.shows(pushedBack)
                ? "Of those minutes " + Figures.money(madeUp) + " are made up and " + Figures.money(lost) + " lost."
                : "";
    }

    Figure figure(String machine) {
        List<String> rows = new ArrayList<>(List.of("the machine waits"));
        List<Series> series = new ArrayList<>();
        series.add(span("it does not cut", Tone.CARRIED, 0, 0, waiting));
        if (pushedBack > 0) {
            rows.add("crew-minutes pushed back");
            series.add(span("pushed back", Tone.QUIET, 1, 0, pushedBack));
            rows.add("what becomes of them");
            series.add(span("made up", Tone.CHOICE, 2, 0, madeUp));
            series.add(span("lost", Tone.LOSS, 2, madeUp, pushedBack));
        }
        if (after >= 1) {
            rows.add("one person, after the day");
            series.add(span("paid late", Tone.PART_4, rows.size() - 1, 0, after));
        }
        return new Figure(
                "flat-by-the-clock",
                "One flat on " + machine + ", by the clock",
                Lists.capital(fix.name()) + ", the fix that costs most in all: on average the machine waits "
                        + Figures.money(waiting)
                        + " min, which pushes " + Figures.money(pushedBack)
                        + " minutes of the crew's mowing out of their place.",
                Kind.TIMELINE,
                Axis.named("what", rows),
                Axis.of("minutes", Unit.MINUTES),
                series,
                List.of());
    }

    private static Series span(String name, Tone tone, int row, double from, double to) {
        return new Series(name, Shape.SPAN, tone, Stroke.SOLID, List.of(Point.range(row, to, from, to)));
    }
}
