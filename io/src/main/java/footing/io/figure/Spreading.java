package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.core.chance.Sample;
import footing.io.words.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * How sure: in what share of the futures a saving falls into each step of money. Zero is always the edge of a step, so
 * that each bar is wholly gain or wholly loss.
 */
final class Spreading {
    private static final double TAIL = 0.005;
    private static final int MOST_STEPS = 48;

    private final double[] savings;
    private final double step;
    private final int first;
    private final int[] counts;

    private Spreading(double[] savings) {
        this.savings = savings;
        double[] ends = new Sample(savings).percentiles(TAIL, 1 - TAIL);
        step = niceStep((ends[1] - ends[0]) / MOST_STEPS);
        first = (int) Math.floor(ends[0] / step);
        counts = new int[(int) Math.floor(ends[1] / step) - first + 1];
        for (double s : savings) {
            int k = (int) Math.floor(s / step) - first;
            if (k >= 0 && k < counts.length) {
                counts[k]++;
            }
        }
    }

    /** The next of 1, 2, 5, 10, 20 ... at or above a width. */
    static double niceStep(double width) {
        double least = Math.max(width, 0.01);
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * power >= least * (1 - 1e-9)) {
                return times * power;
            }
        }
        return 10 * power;
    }

    static Figure of(EntryAnswer about, double[] savings) {
        Spreading spread = new Spreading(savings);
        return new Figure(
                "how-sure",
                "How sure",
                "In how many of the ways it could go the saving comes to so much. Each bar is "
                        + Figures.money(spread.step) + " wide; the outermost one in two hundred at either end is left"
                        + " out.",
                Kind.BARS,
                Axis.of("saving over its life, steps from", Unit.MONEY),
                Axis.of("share of the ways it could go", Unit.SHARE),
                List.of(spread.bars("it costs more", Tone.LOSS, false), spread.bars("it saves", Tone.GAIN, true)),
                List.of(
                        new Figure.Mark(0, "no difference"),
                        new Figure.Mark(about.saving().mean(), "average")));
    }

    private Series bars(String name, Tone tone, boolean gain) {
        List<Point> points = new ArrayList<>();
        for (int k = 0; k < counts.length; k++) {
            double from = (first + k) * step;
            if (from >= 0 == gain) {
                double share = (double) counts[k] / savings.length;
                points.add(new Point(from, share, new Point.Span(from, from + step, "", "")));
            }
        }
        return new Series(name, Shape.BAR, tone, Stroke.SOLID, points);
    }
}
