package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.core.future.Parts;
import footing.io.words.Advice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Where the money goes: the parts of each entry's cost over life, one after the other. Money in lies below zero. */
final class WhereItGoes {
    private record Part(String name, Tone tone, ToDoubleFunction<Parts> value) {}

    private static final List<Part> PARTS = List.of(
            new Part("at the start", Tone.PART_1, Parts::purchase),
            new Part("new sets", Tone.PART_2, Parts::renewals),
            new Part("repairs", Tone.PART_3, Parts::repairs),
            new Part("paid time", Tone.PART_4, Parts::crewTime),
            new Part("lost work", Tone.PART_5, Parts::lostWork),
            new Part("upkeep", Tone.PART_6, Parts::upkeep),
            new Part("trade-in", Tone.PART_7, p -> -p.tradeIn()));

    private WhereItGoes() {}

    static Figure of(Advice advice) {
        List<EntryAnswer> entries = advice.machine().entries().stream()
                .sorted(Comparator.comparingDouble(e -> e.cost().mean()))
                .toList();
        List<Series> series = new ArrayList<>();
        for (Part part : PARTS) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < entries.size(); i++) {
                points.add(Point.of(i, part.value().applyAsDouble(entries.get(i).parts())));
            }
            series.add(new Series(part.name(), Shape.BAR, part.tone(), Stroke.SOLID, points));
        }
        return new Figure(
                "where-it-goes",
                "Where the money goes",
                "What each choice costs over the machine's life, part by part, in today's money; the cheapest first."
                        + " What lies left of zero is money in.",
                Kind.STACKED,
                Axis.named(
                        "choice",
                        entries.stream().map(e -> EntryName.of(advice, e)).toList()),
                Axis.of("cost over its life", Unit.MONEY),
                series,
                List.of(new Figure.Mark(0, "")));
    }
}
