package footing.io.figure;

import footing.core.records.Learned;
import footing.core.records.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Flats as records teach them, drawn. */
public final class FlatsByMachine {
    private static final double PER = 1000;

    private FlatsByMachine() {}

    /**
     * Flats by machine: what is known of each with its crew's machines beside it, and below it what its own count says
     * alone. Empty if no machine was watched.
     */
    public static Optional<Figure> of(List<Learned.Flats> all) {
        List<String> names = new ArrayList<>();
        List<Point> shared = new ArrayList<>();
        List<Point> alone = new ArrayList<>();
        for (Learned.Flats f : all) {
            if (!f.unwatched()) {
                Limits limits = f.rate().limits(Limits.SHARE);
                shared.add(range(names.size(), f.rate().median(), limits));
                names.add(f.machine());
                f.exact().filter(e -> e.high() < Double.POSITIVE_INFINITY).ifPresent(e -> {
                    alone.add(range(names.size(), f.counted() / f.exposure(), e));
                    names.add(f.machine() + ", its own count alone");
                });
            }
        }
        return names.isEmpty() ? Optional.empty() : Optional.of(drawn(names, shared, alone));
    }

    private static Figure drawn(List<String> names, List<Point> shared, List<Point> alone) {
        return new Figure(
                "learned-flats",
                "Flats by machine",
                "Flats in 1,000 hours on air tires: the mark is the middle, the bar where it lies four times in five."
                        + " A machine with few hours is drawn toward its crew's others; below it stands what its own"
                        + " count says alone.",
                Kind.RANGES,
                Axis.named("machine", names),
                Axis.of("flats in 1,000 h", Unit.RATE),
                List.of(
                        new Series("with its crew's machines", Shape.SPAN, Tone.CHOICE, Stroke.SOLID, shared),
                        new Series("own count alone", Shape.SPAN, Tone.CARRIED, Stroke.SOLID, alone)),
                List.of());
    }

    private static Point range(int at, double middle, Limits limits) {
        return Point.range(at, middle * PER, limits.low() * PER, limits.high() * PER);
    }
}
