package footing.core.follow;

import footing.core.future.Followed;
import java.util.EnumMap;
import java.util.Map;

/** What had come by some hours, summed up since the forecast. */
public record Step(double hours, Map<Followed, Double> sums) {
    static final Step START = new Step(0, Map.of());

    public Step {
        sums = Map.copyOf(sums);
    }

    public double of(Followed what) {
        return sums.getOrDefault(what, 0.0);
    }

    Step at(double later) {
        return new Step(later, sums);
    }

    /** This and so much more, at some hours. */
    Step plus(double later, Map<Followed, Double> more) {
        Map<Followed, Double> all = new EnumMap<>(Followed.class);
        for (Followed what : Followed.values()) {
            all.put(what, of(what) + more.getOrDefault(what, 0.0));
        }
        return new Step(later, all);
    }
}
