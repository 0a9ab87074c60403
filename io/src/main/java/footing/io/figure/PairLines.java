package footing.io.figure;

import footing.core.trial.Pair;
import footing.core.trial.PairedResult;
import footing.core.trial.TrialResult;
import footing.io.words.Lists;
import footing.io.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pairs of a field trial: a line from what one side gave to what the other did. */
public final class PairLines {
    private PairLines() {}

    /** Empty for opposed pulls, and as long as there is no pair. */
    public static Optional<Figure> of(TrialResult result, Shown shown) {
        PairedResult together = result.together();
        if (together == null || together.pairs().isEmpty()) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>();
        List<Point> a = new ArrayList<>();
        List<Point> b = new ArrayList<>();
        for (Pair pair : together.pairs()) {
            String surface = pair.surface().isEmpty() ? "" : ", " + pair.surface();
            a.add(Point.of(names.size(), shown.factor() * pair.a().value()));
            b.add(Point.of(names.size(), shown.factor() * pair.b().value()));
            names.add("pair " + (names.size() + 1) + surface);
        }
        String unit = shown.unit().isEmpty() ? "" : ", " + shown.unit();
        return Optional.of(new Figure(
                "pair-lines",
                "Pair by pair",
                "Each line joins the two runs of a pair. Lines that run the same way agree; lines that cross don't.",
                Kind.PAIRS,
                Axis.named("pair", names),
                Axis.of(Lists.capital(shown.words()) + unit, Unit.MEASURED),
                List.of(
                        new Series(result.trial().a().name(), Shape.LINE, Tone.CARRIED, Stroke.DASHED, a),
                        new Series(result.trial().b().name(), Shape.LINE, Tone.CHOICE, Stroke.SOLID, b)),
                List.of()));
    }
}
