package footing.io.figure;

import footing.core.answer.EntryAnswer;
import footing.io.words.Advice;
import footing.io.words.Levels;
import footing.io.words.Odds;
import java.util.ArrayList;
import java.util.List;

/** The three prices of an hour: what a change saves counting parts alone, paid time as well, and lost work too. */
public final class PricesOfAnHour {
    private PricesOfAnHour() {}

    static Figure of(Advice advice, EntryAnswer about) {
        List<String> names = new ArrayList<>();
        List<Point> losses = new ArrayList<>();
        List<Point> gains = new ArrayList<>();
        for (EntryAnswer.Level level : about.levels()) {
            int at = names.size();
            names.add(counting(level.counting()) + ": pays in " + Odds.sentence(level.chance()));
            (level.mean() < 0 ? losses : gains).add(Point.of(at, level.mean()));
        }
        List<Series> series = new ArrayList<>();
        if (!losses.isEmpty()) {
            series.add(new Series("it costs more", Shape.BAR, Tone.LOSS, Stroke.SOLID, losses));
        }
        if (!gains.isEmpty()) {
            series.add(new Series("it saves", Shape.BAR, Tone.GAIN, Stroke.SOLID, gains));
        }
        return new Figure(
                "prices-of-an-hour",
                "Three prices of an hour",
                "What " + advice.piecesWhen() + " save over its life if an hour of trouble costs only the parts, the"
                        + " paid time as well, or the work that is lost too. "
                        + Levels.overtime(advice.machine().machine().crew()),
                Kind.STACKED,
                Axis.named("counting", names),
                Axis.of("saving over its life", Unit.MONEY),
                series,
                List.of(new Figure.Mark(0, "no difference")));
    }

    /** What is counted, as its bar is called. */
    public static String counting(EntryAnswer.Counting counting) {
        return switch (counting) {
            case PARTS -> "Only parts and shop time";
            case PARTS_AND_TIME -> "And the crew's paid time";
            case ALL -> "And the work that is lost";
        };
    }
}
