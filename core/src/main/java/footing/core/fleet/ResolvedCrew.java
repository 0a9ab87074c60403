package footing.core.fleet;

import footing.core.chance.Spread;
import java.util.List;

/**
 * A crew with every number in force.
 *
 * @param hourlyCost wage with burden, per person
 * @param makeUpToday slack the crew can add to a day, hours
 * @param makeUpLater share of the rest made up another day
 */
public record ResolvedCrew(
        String id,
        double people,
        double hourlyCost,
        double overtimePremium,
        double billing,
        double variableCost,
        double day,
        double makeUpToday,
        Spread makeUpLater,
        List<FullWeeks> fullWeeks,
        List<ResolvedFix> fixes) {
    public ResolvedCrew {
        fullWeeks = List.copyOf(fullWeeks);
        fixes = List.copyOf(fixes);
    }

    /** Days on which less can be made up; where {@code makeUpLater} is no single share it is the crew's own unknown. */
    public record FullWeeks(Season days, double makeUpToday, Spread makeUpLater) {}

    /** A fix: its share of the flats, the delay in hours, what it costs and what goes on meanwhile. */
    public record ResolvedFix(
            String name,
            double share,
            Spread delay,
            double cost,
            boolean replacesTire,
            boolean sealable,
            double output) {}
}
