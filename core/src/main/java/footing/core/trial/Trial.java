package footing.core.trial;

import java.util.Comparator;
import java.util.List;

/** A trial as made: measured runs or opposed pulls, in the order in which they were made. */
public record Trial(Question question, Contender a, Contender b, List<Run> runs, List<Bout> bouts) {
    public Trial {
        if (!runs.isEmpty() && !bouts.isEmpty()) {
            throw new IllegalArgumentException("a trial has measured runs or opposed pulls, not both");
        }
        runs = runs.stream().sorted(Comparator.comparingInt(Run::order)).toList();
        bouts = bouts.stream().sorted(Comparator.comparingInt(Bout::order)).toList();
    }

    public Contender of(Side side) {
        return side == Side.A ? a : b;
    }

    /** The conditions of a run, with those of its side where it notes none. */
    Conditions conditions(Run run) {
        return run.conditions().over(of(run.side()).usual());
    }
}
