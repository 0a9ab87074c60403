package footing.io.casefile;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Values;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.core.records.LifePosterior;
import footing.core.records.Log;
import footing.core.records.Posterior;
import footing.io.records.CaseBackground;
import java.util.List;

/**
 * What a log teaches, where a case says {@code {learned: …}}. A rate of flats is unknown: its three-point is the
 * posterior's 10th, 50th and 90th percentile. A life varies about an unknown middle: its three-point is that of one set
 * at the posterior medians, and lifeUnsure the standard deviation of the logarithm of the median life, unless that is
 * stated.
 */
final class FilledIn {
    private static final double WEAR_LIMIT = 1.6;

    private final Case stated;
    private final Log log;

    FilledIn(Case stated, Log log) {
        this.stated = stated;
        this.log = log;
    }

    /** True if a case takes any number from its records. */
    static boolean isAsked(Case stated) {
        return stated.machines().stream().anyMatch(m -> isLearned(m.numbers(), m.flatsKey()))
                || stated.assemblies().stream().anyMatch(a -> isLearned(a.numbers(), Key.LIFE));
    }

    private static boolean isLearned(Numbers numbers, Key key) {
        return numbers.get(key).isPresent() && numbers.origin(key) == Origin.LEARNED;
    }

    Case filledIn() {
        CaseBackground background = new CaseBackground(stated);
        Learned learned = Learner.learn(log, background, WEAR_LIMIT);
        Case filled = stated;
        for (Case.Machine m : stated.machines()) {
            if (isLearned(m.numbers(), m.flatsKey())) {
                filled = filled.with(Input.of(m.flatsKey(), m.id()), flats(m, learned));
            }
        }
        for (Case.Assembly a : stated.assemblies()) {
            if (isLearned(a.numbers(), Key.LIFE)) {
                filled = withLife(filled, a, posterior(a.id(), learned, background));
            }
        }
        return filled;
    }

    private Spread flats(Case.Machine m, Learned learned) {
        Posterior rate = learned.flats().stream()
                .filter(f -> f.machine().equals(m.id()))
                .findFirst()
                .orElseThrow()
                .rate();
        double perYear =
                new Values(stated, m).get(Input.of(Key.HOURS_PER_YEAR, m.id())).likely();
        return threePoint(rate, m.flatsKey() == Key.FLATS_PER_1000H ? 1000 : perYear);
    }

    private static LifePosterior posterior(String assembly, Learned learned, CaseBackground background) {
        return learned.lives().stream()
                .filter(l -> l.assembly().equals(assembly))
                .findFirst()
                .map(Learned.SetLife::posterior)
                .orElseGet(() -> LifePosterior.of(List.of(), List.of(), background.life(assembly)));
    }

    private static Case withLife(Case filled, Case.Assembly a, LifePosterior posterior) {
        Spread life = new Metalog(posterior.life(0.1), posterior.life(0.5), posterior.life(0.9), Bounds.POSITIVE);
        Case with = filled.with(Input.of(Key.LIFE, a.id()), life);
        double unsure =
                Math.min(posterior.median().deviation(), Key.LIFE_UNSURE.range().most());
        return isLearned(a.numbers(), Key.LIFE_UNSURE)
                ? with.with(Input.of(Key.LIFE_UNSURE, a.id()), Spread.of(unsure))
                : with;
    }

    /** The posterior's percentiles as a metalog takes them; a middle too far to one side is moved to where it fits. */
    private static Spread threePoint(Posterior p, double per) {
        double low = p.quantile(0.1) * per;
        double high = p.quantile(0.9) * per;
        double at = Metalog.position(low, p.median() * per, high, Bounds.POSITIVE);
        double likely = at > 0.17 && at < 0.83
                ? p.median() * per
                : Metalog.valueAt(Math.min(Math.max(at, 0.17), 0.83), low, high, Bounds.POSITIVE);
        return new Metalog(low, likely, high, Bounds.POSITIVE);
    }
}
