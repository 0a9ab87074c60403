package footing.io.figure;

import footing.core.follow.Band;
import footing.core.follow.Bands;
import footing.core.follow.Step;
import footing.core.future.Followed;
import footing.io.words.FollowWords;
import java.util.ArrayList;
import java.util.List;

/**
 * A forecast and what came, drawn: both summed up since the forecast, by the hours run. Drawn is half as far again as
 * has been run, so that the little that came in a few hours can be seen.
 */
public final class ForecastFigure {
    private static final String DUE = "due on average";
    private static final double BEYOND = 1.5;
    private static final int LEAST_STEPS = 4;

    private final Followed what;
    private final Bands bands;
    private final List<Step> came;
    private final double run;

    private ForecastFigure(Followed what, Bands bands, List<Step> came) {
        this.what = what;
        this.bands = bands;
        this.came = came;
        run = came.isEmpty() ? 0 : came.get(came.size() - 1).hours();
    }

    /**
     * The figure.
     *
     * @param id tells the figures of a page apart
     * @param of the machine, or all of them
     * @param came in the order of hours; empty draws the forecast alone, to its end
     */
    public static Figure of(
            String id, String of, String caption, Followed what, Bands bands, List<Step> came, String currency) {
        Axis values = Axis.of(FollowWords.followed(what), what == Followed.PAID ? Unit.MONEY : Unit.RATE)
                .in(currency);
        return new Figure(
                id,
                of + ": " + values.title(),
                caption,
                Kind.LINES,
                Axis.of("hours run since the forecast", Unit.HOURS),
                values,
                new ForecastFigure(what, bands, came).series(),
                List.of());
    }

    private List<Series> series() {
        List<Point> due = due();
        List<Series> series = new ArrayList<>();
        series.add(new Series(DUE, Shape.LINE, Tone.PART_2, Stroke.DOTTED, due));
        series.add(new Series(DUE, Shape.BAND, Tone.PART_2, Stroke.SOLID, due));
        if (!came.isEmpty()) {
            series.add(new Series("came", Shape.LINE, Tone.CHOICE, Stroke.SOLID, stairs()));
        }
        return series;
    }

    private List<Point> due() {
        List<Double> hours = bands.hours();
        double end = came.isEmpty()
                ? bands.until()
                : Math.max(BEYOND * run, hours.get(Math.min(LEAST_STEPS, hours.size() - 1)));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < hours.size() && (i == 0 || hours.get(i - 1) < end); i++) {
            boolean last = i == hours.size() - 1 || hours.get(i + 1) > hours.get(i);
            if (last) {
                points.add(point(hours.get(i), bands.of(what).get(i)));
            }
        }
        if (run > bands.until()) {
            points.add(point(run, bands.at(what, run)));
        }
        return points;
    }

    private static Point point(double hour, Band band) {
        return Point.range(hour, band.mean(), band.low(), band.high());
    }

    private List<Point> stairs() {
        List<Point> points = new ArrayList<>();
        double before = 0;
        for (Step step : came) {
            double now = step.of(what);
            if (points.isEmpty() || now != before) {
                points.add(Point.of(step.hours(), before));
            }
            if (now != before) {
                points.add(Point.of(step.hours(), now));
            }
            before = now;
        }
        points.add(Point.of(run, before));
        return points;
    }
}
