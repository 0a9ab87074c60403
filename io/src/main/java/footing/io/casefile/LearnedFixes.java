package footing.io.casefile;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.records.FixDelay;
import footing.core.records.FixShare;
import footing.core.records.Learned;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts what records teach of fixes where a crew says {@code {learned: share, …}} and {@code {learned: delay, …}}. A
 * share is the mean of what is known of it, (stated + count)/(1 + all counts): the money is linear in shares, so their
 * own spread moves no mean. A delay varies: its three-point is the 10th, 50th and 90th percentile of the times written
 * down, or what was stated while they are too few.
 */
final class LearnedFixes {
    private static final double MINUTES = 60;

    private final Learned learned;

    LearnedFixes(Learned learned) {
        this.learned = learned;
    }

    static boolean isAsked(Case.Crew crew) {
        return crew.fixes().stream()
                .anyMatch(f ->
                        FilledIn.isLearned(f.numbers(), Key.FIX_SHARE) || FilledIn.isLearned(f.numbers(), Key.DELAY));
    }

    Case filledIn(Case stated) {
        Case filled = stated;
        for (Case.Crew crew : stated.crews()) {
            Optional<Learned.Fixes> seen = seen(crew);
            if (isAsked(crew) && seen.isPresent()) {
                filled = withFixes(filled, crew, seen.get());
            }
        }
        return filled;
    }

    private Optional<Learned.Fixes> seen(Case.Crew crew) {
        return learned.fixes().stream().filter(f -> f.crew().equals(crew.id())).findFirst();
    }

    /** Fixes the records name and a crew that learns doesn't state: nobody knows what they cost, so they don't count. */
    List<String> strangers(Case.Crew crew) {
        if (!isAsked(crew)) {
            return List.of();
        }
        return seen(crew).map(Learned.Fixes::shares).orElse(List.of()).stream()
                .filter(s -> s.count() > 0
                        && crew.fixes().stream().noneMatch(f -> f.name().equals(s.name())))
                .map(FixShare::name)
                .toList();
    }

    private Case withFixes(Case stated, Case.Crew crew, Learned.Fixes seen) {
        Case filled = stated;
        List<Double> shares = shares(crew, seen);
        for (int i = 0; i < crew.fixes().size(); i++) {
            Case.Fix fix = crew.fixes().get(i);
            String index = Integer.toString(i);
            if (FilledIn.isLearned(fix.numbers(), Key.FIX_SHARE)) {
                filled = filled.with(new Input(Key.FIX_SHARE, crew.id(), index), Spread.of(shares.get(i)));
            }
            Optional<Spread> delay = delay(fix, seen);
            if (FilledIn.isLearned(fix.numbers(), Key.DELAY) && delay.isPresent()) {
                filled = filled.with(new Input(Key.DELAY, crew.id(), index), delay.get());
            }
        }
        return filled;
    }

    /** What is known of each fix the crew states. */
    private static List<Double> shares(Case.Crew crew, Learned.Fixes seen) {
        List<Double> weights = new ArrayList<>();
        double sum = 0;
        for (Case.Fix fix : crew.fixes()) {
            double before = before(fix);
            double named = crew.fixes().stream()
                    .filter(f -> f.name().equals(fix.name()))
                    .mapToDouble(LearnedFixes::before)
                    .sum();
            double own = named > 0 ? before * (1 + count(fix, seen) / named) : count(fix, seen);
            weights.add(own);
            sum += own;
        }
        double all = sum;
        return weights.stream().map(w -> w / all).toList();
    }

    private static double before(Case.Fix fix) {
        return fix.numbers().before(Key.FIX_SHARE).map(Spread::likely).orElse(0.0);
    }

    private static int count(Case.Fix fix, Learned.Fixes seen) {
        return seen.shares().stream()
                .filter(s -> s.name().equals(fix.name()))
                .mapToInt(FixShare::count)
                .sum();
    }

    private static Optional<Spread> delay(Case.Fix fix, Learned.Fixes seen) {
        return seen.delays().stream()
                .filter(d -> d.name().equals(fix.name()))
                .findFirst()
                .flatMap(FixDelay::minutes)
                // Times all alike have no spread, a time of nothing no logarithm.
                .filter(m -> m.low() > 0 && m.low() < m.likely() && m.likely() < m.high())
                .map(m -> FilledIn.threePoint(m.low() / MINUTES, m.likely() / MINUTES, m.high() / MINUTES));
    }
}
