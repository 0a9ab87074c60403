package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.core.future.Parts;
import footing.io.words.Advice;
import footing.io.words.Lists;
import java.util.ArrayList;
import java.util.List;

/** Cash flow: what leaves the bank account by calendar year, in that year's money. */
final class ByYear {
    private ByYear() {}

    static Figure of(Advice advice, EntryAnswer about) {
        EntryAnswer carried = advice.machine().carried();
        List<Integer> years = List.copyOf(about.yearly().keySet());
        List<Point> asItIs = new ArrayList<>();
        List<Point> changed = new ArrayList<>();
        List<Point> left = new ArrayList<>();
        double soFar = 0;
        for (int i = 0; i < years.size(); i++) {
            double without = cost(carried, years.get(i));
            double with = cost(about, years.get(i));
            soFar += without - with;
            asItIs.add(Point.of(i, without));
            changed.add(Point.of(i, with));
            left.add(Point.of(i, soFar));
        }
        return new Figure(
                "by-year",
                "Cash by year",
                "What leaves the bank account in each year or never reaches it (work lost), on average and in that year's money, the trade in the last."
                        + " The line is what the change has left you by the end of the year.",
                Kind.BARS,
                Axis.named("year", years.stream().map(String::valueOf).toList()),
                Axis.of("money out in the year", Unit.MONEY),
                List.of(
                        new Series(Lists.capital(advice.asItIs()), Shape.BAR, Tone.CARRIED, Stroke.DASHED, asItIs),
                        new Series(Lists.capital(advice.piecesWhen()), Shape.BAR, Tone.CHOICE, Stroke.SOLID, changed),
                        new Series("Left by the change so far", Shape.LINE, Tone.GAIN, Stroke.DOTTED, left)),
                List.of(new Figure.Mark(0, "")));
    }

    private static double cost(EntryAnswer entry, int year) {
        return entry.yearly().getOrDefault(year, Parts.NONE).cost();
    }
}
