package footing.core.fitting;

import footing.core.fleet.Place;
import footing.core.fleet.Position;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether a package fits a machine: every test with its numbers.
 *
 * @param wheels the package's id
 */
public record Fit(String wheels, List<Finding> findings) {
    public Fit {
        findings = List.copyOf(findings);
    }

    public static Fit of(FitQuestion question) {
        List<Finding> all = new ArrayList<>();
        all.addAll(new Mounting(question).findings());
        all.addAll(new Room(question).findings());
        all.addAll(new Rating(question).findings());
        all.addAll(new Obstacles(question).findings());
        return new Fit(question.wanted().id(), all);
    }

    /** The worst of all. */
    public Fits verdict() {
        return findings.stream().map(Finding::verdict).reduce(Fits.FITS, Fits::worse);
    }

    /**
     * One act that settles what is open at a wheel: bolting one on and turning it, or reading its rating; or at the
     * machine, such as finding out its top speed, which settles both pairs.
     *
     * @param position null for the machine
     */
    public record Open(@Nullable Position position, Aspect.Group group, List<Finding> findings) {
        public Open {
            findings = List.copyOf(findings);
        }
    }

    /** What is left to find out, at most two acts for each wheel. */
    public List<Open> open() {
        List<Finding> checks =
                findings.stream().filter(f -> f.verdict() == Fits.CHECK).toList();
        Set<List<Object>> acts = new LinkedHashSet<>();
        checks.forEach(f -> acts.add(act(f)));
        List<Open> open = new ArrayList<>();
        for (List<Object> act : acts) {
            List<Finding> together =
                    checks.stream().filter(f -> act(f).equals(act)).toList();
            Position position = act.get(0) instanceof Position p ? p : null;
            open.add(new Open(position, together.get(0).aspect().group(), together));
        }
        return open;
    }

    private static List<Object> act(Finding finding) {
        Position position = finding.position();
        Aspect.Group group = finding.aspect().group();
        boolean machine = position == null || (group == Aspect.Group.RATING && isOfMachine(finding.settle()));
        return List.of(machine ? "machine" : position, group);
    }

    private static boolean isOfMachine(@Nullable Settle settle) {
        return settle != null && settle.measure() != null && settle.measure().place() == Place.MACHINE;
    }
}
