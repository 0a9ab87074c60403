package footing.io.figure;

import footing.core.answer.Answer;
import footing.core.answer.EntryAnswer;
import footing.io.words.Advice;
import java.util.ArrayList;
import java.util.List;

/** Every machine's saving on one scale around zero: from its 10th to its 90th percentile, marked at the mean. */
public final class FleetFigure {
    private FleetFigure() {}

    /** A row for each machine that has anything to change to. */
    public static Figure of(Answer answer) {
        List<String> names = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        for (Advice a : Advice.all(answer)) {
            EntryAnswer about = a.about();
            if (about != null) {
                points.add(Point.range(
                        names.size(),
                        about.saving().mean(),
                        about.saving().p10(),
                        about.saving().p90()));
                names.add(a.id() + ": " + a.row());
            }
        }
        names = names.isEmpty() ? List.of("no other wheels to choose from") : names;
        return new Figure(
                "fleet",
                "Saving over its life, by machine",
                "From a bad outcome (one in ten is worse) to a good one (one in ten is better), marked at the average."
                        + " Where a machine stays as it is the line shows its next best wheels.",
                Kind.RANGES,
                Axis.named("machine", names),
                Axis.of("saving over its life", Unit.MONEY),
                List.of(new Series("average", Shape.SPAN, Tone.GAIN, Stroke.SOLID, points)),
                List.of(new Figure.Mark(0, "no difference")));
    }
}
