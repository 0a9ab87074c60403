package footing.io.words;

import footing.core.fleet.Measure;
import footing.core.ground.Judged;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Why figures are not there: what was not measured, and what it would take; or where a relation ends. */
public final class Lacking {
    private final Set<String> paths = new LinkedHashSet<>();
    private final Set<String> reasons = new LinkedHashSet<>();

    /** Notes why a figure lacks, if it does, and gives it back. */
    public <T> Judged<T> note(Judged<T> judged) {
        if (judged instanceof Judged.Lacks<T> lacks) {
            paths.addAll(lacks.needed());
        } else if (judged instanceof Judged.Outside<T> outside) {
            reasons.add(outside.why());
        }
        return judged;
    }

    /** Something to measure, by its place in the case file, and what it takes. */
    public record Need(String path, String what) {}

    /** What to measure. */
    public List<Need> needs() {
        return paths.stream().map(p -> new Need(p, what(p))).toList();
    }

    /** The limits met. */
    public List<String> limits() {
        return reasons.stream().map(r -> Lists.capital(r) + ".").toList();
    }

    /** A line for each thing to measure and each limit met. */
    public List<String> told() {
        List<String> lines = new ArrayList<>();
        needs().forEach(n -> lines.add(n.path() + ": " + n.what()));
        lines.addAll(limits());
        return lines;
    }

    /** What it takes to measure the thing of this path. */
    static String what(String path) {
        String place = path.startsWith("assemblies.") ? "ASSEMBLY" : "MACHINE";
        String how = path.endsWith(".print")
                ? "length and width of a painted print on paper, with the load and pressure at which it was made"
                : path.endsWith(".wheelLoads") ? "each wheel on a scale, operator on, half a tank" : "";
        return how.isEmpty()
                ? Arrays.stream(Measure.values())
                        .filter(m -> m.place().name().equals(place) && path.endsWith("." + m.key()))
                        .reduce((one, other) ->
                                one.key().length() >= other.key().length() ? one : other)
                        .map(Measure::label)
                        .orElse("to be measured")
                : how;
    }
}
