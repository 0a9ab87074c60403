package footing.web.answer;

import footing.core.answer.Saving;
import footing.io.figure.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A range on the common scale, ready for an SVG: places are percent of the width.
 *
 * @param from where the range begins
 * @param lossWidth how wide its part below zero is
 * @param gainFrom where its part above zero begins
 */
record Bar(String from, String width, String zero, String lossWidth, String gainFrom, String gainWidth, String mean) {
    /** A round value of the scale and where it lies. */
    record Tick(String at, String anchor, String label) {}

    private static final double NEAR_AN_END = 0.08;

    static Bar of(Scale scale, Saving saving) {
        double zero = scale.at(0);
        double from = scale.at(saving.p10());
        double to = scale.at(saving.p90());
        return new Bar(
                percent(from),
                percent(to - from),
                percent(zero),
                percent(Math.max(0, Math.min(to, zero) - from)),
                percent(Math.max(from, zero)),
                percent(Math.max(0, to - Math.max(from, zero))),
                percent(scale.at(saving.mean())));
    }

    static List<Tick> ticks(Scale scale) {
        List<Tick> ticks = new ArrayList<>();
        for (double t : scale.ticks()) {
            String label = t == 0 ? "no gain" : (t > 0 ? "+" : "−") + footing.io.words.Figures.size(t);
            ticks.add(new Tick(percent(scale.at(t)), anchor(scale.at(t) / Scale.WIDTH), label));
        }
        return ticks;
    }

    /** Near an end a label runs inwards. */
    private static String anchor(double share) {
        return share < NEAR_AN_END ? "start" : share > 1 - NEAR_AN_END ? "end" : "middle";
    }

    private static String percent(double thousandths) {
        return String.format(Locale.ROOT, "%.2f%%", thousandths / 10);
    }
}
