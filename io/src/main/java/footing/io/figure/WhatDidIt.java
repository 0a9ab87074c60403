package footing.io.figure;

import footing.core.compare.Difference;
import footing.core.compare.Part;
import footing.core.compare.Split;
import footing.io.words.ChangeWords;
import footing.io.words.Figures;
import footing.io.words.Lists;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What changed a saving: a bar for each input that differs, the largest first. In its table the bars add up to the
 * change to the cent.
 */
public final class WhatDidIt {
    private static final int MOST = 10;

    private WhatDidIt() {}

    /**
     * The parts of a change; empty if there are none.
     *
     * @param id of the figure
     * @param whose what the saving is of, such as 'all machines'
     */
    public static Optional<Figure> of(Difference d, Split split, String id, String whose) {
        Split printed = split.toTheCent();
        List<String> names = new ArrayList<>();
        List<Point> less = new ArrayList<>();
        List<Point> more = new ArrayList<>();
        List<Part> parts = printed.parts();
        int shown = parts.size() > MOST ? MOST - 1 : parts.size();
        for (Part part : parts.subList(0, shown)) {
            (part.change() < 0 ? less : more).add(Point.of(names.size(), part.change()));
            names.add(Lists.capital(ChangeWords.cause(d, part)));
        }
        if (shown < parts.size()) {
            double rest = cents(parts.subList(shown, parts.size()));
            (rest < 0 ? less : more).add(Point.of(names.size(), rest));
            names.add("The other " + Figures.word(parts.size() - shown) + " together");
        }
        return names.isEmpty() ? Optional.empty() : Optional.of(figure(printed, names, less, more, id, whose));
    }

    private static double cents(List<Part> parts) {
        return Math.rint(100 * parts.stream().mapToDouble(Part::change).sum()) / 100;
    }

    private static Figure figure(
            Split printed, List<String> names, List<Point> less, List<Point> more, String id, String whose) {
        List<Series> series = new ArrayList<>();
        if (!less.isEmpty()) {
            series.add(new Series("saves less", Shape.BAR, Tone.LOSS, Stroke.SOLID, less));
        }
        if (!more.isEmpty()) {
            series.add(new Series("saves more", Shape.BAR, Tone.GAIN, Stroke.SOLID, more));
        }
        return new Figure(
                id,
                "What did it: " + whose,
                "How much of the change each thing that differs brought, the largest first. Together they make "
                        + ChangeWords.toTheCent(printed.change()) + ", from " + Figures.rate(printed.before()) + " to "
                        + Figures.rate(printed.after()) + ".",
                Kind.STACKED,
                Axis.named("what changed", names),
                Axis.of("change of the saving over its life", Unit.CENTS),
                series,
                List.of(new Figure.Mark(0, "")));
    }
}
