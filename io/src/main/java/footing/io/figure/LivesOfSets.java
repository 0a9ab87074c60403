package footing.io.figure;

import footing.core.records.Learned;
import footing.core.records.LifePosterior;
import footing.core.records.Limits;
import footing.core.records.SurvivalCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The lives of an assembly's sets, drawn: the share still running at each age, counted set by set, as it is reckoned
 * with, and by the best fit to the records alone.
 */
public final class LivesOfSets {
    private static final int STEPS = 30;
    private static final String COUNTED = "counted set by set";

    private LivesOfSets() {}

    /**
     * The figure; empty if no set of known age was seen.
     *
     * @param number tells the figures of a page apart
     */
    public static Optional<Figure> of(Learned.SetLife life, int number) {
        return life.sets() == 0 ? Optional.empty() : Optional.of(drawn(life, number));
    }

    private static Figure drawn(Learned.SetLife life, int number) {
        List<SurvivalCurve.Step> steps = life.curve().steps();
        double last = steps.isEmpty() ? 0 : steps.get(steps.size() - 1).age();
        double most = Math.max(life.posterior().life(0.95), 1.1 * last);
        List<Series> series = new ArrayList<>();
        series.add(curve("reckoned with", Tone.CHOICE, Stroke.SOLID, most, survival(life.posterior())));
        if (!steps.isEmpty()) {
            series.add(new Series(COUNTED, Shape.LINE, Tone.PART_1, Stroke.SOLID, stairs(steps, most)));
            series.add(new Series(COUNTED, Shape.BAND, Tone.PART_1, Stroke.SOLID, edges(steps, most)));
        }
        life.fit()
                .ifPresent(fit ->
                        series.add(curve("best fit, records alone", Tone.QUIET, Stroke.DOTTED, most, fit::survival)));
        return new Figure(
                "learned-life-" + number,
                (life.assembly().isEmpty() ? "Sets nobody named" : life.assembly()) + ": how long sets last",
                CAPTION,
                Kind.LINES,
                Axis.of("hours of a set", Unit.HOURS),
                Axis.of("still running", Unit.SHARE),
                series,
                List.of());
    }

    private static final String CAPTION =
            "The share of sets that still run at each age. The stairs are counted set by set,"
                    + " no shape assumed, shaded where they lie four times in five; the smooth line is what a case reckons with, what"
                    + " is usual included.";

    /** At the middle of what is known: S(t) = 2^(−(t/median)^shape). */
    private static DoubleUnaryOperator survival(LifePosterior known) {
        double shape = known.shape().median();
        double median = known.median().median();
        return age -> Math.pow(2, -Math.pow(age / median, shape));
    }

    private static Series curve(String name, Tone tone, Stroke stroke, double most, DoubleUnaryOperator survival) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double age = Math.rint(most * i / STEPS);
            points.add(Point.of(age, survival.applyAsDouble(age)));
        }
        return new Series(name, Shape.LINE, tone, stroke, points);
    }

    private static List<Point> stairs(List<SurvivalCurve.Step> steps, double most) {
        List<Point> points = new ArrayList<>();
        double before = 1;
        points.add(Point.of(0, before));
        for (SurvivalCurve.Step s : steps) {
            points.add(Point.of(s.age(), before));
            points.add(Point.of(s.age(), s.survival()));
            before = s.survival();
        }
        if (before > 0) {
            points.add(Point.of(Math.rint(most), before));
        }
        return points;
    }

    /** Until the share is 0, for which no limits can be given. */
    private static List<Point> edges(List<SurvivalCurve.Step> steps, double most) {
        List<Point> points = new ArrayList<>();
        Point.Span before = new Point.Span(1, 1, "", "");
        points.add(new Point(0, 1, before));
        double value = 1;
        for (SurvivalCurve.Step s : steps) {
            points.add(new Point(s.age(), value, before));
            if (!(s.survival() > 0)) {
                return points;
            }
            Limits limits = s.limits(Limits.SHARE);
            before = new Point.Span(limits.low(), limits.high(), "", "");
            value = s.survival();
            points.add(new Point(s.age(), value, before));
        }
        points.add(new Point(Math.rint(most), value, before));
        return points;
    }
}
