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
import footing.core.records.LifePosterior;
import footing.core.records.Posterior;
import footing.io.form.Found;
import footing.io.form.Problems;
import footing.io.records.CaseBackground;
import footing.io.records.Lessons;
import footing.io.records.Records;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Puts what the records teach where a case says {@code {learned: …}}. A rate of flats is unknown: its three-point is
 * the posterior's 10th, 50th and 90th percentile. A life varies about an unknown middle: its three-point is that of one
 * set at the posterior medians, and lifeUnsure the standard deviation of the logarithm of the median life, unless that
 * is stated. Fixes are {@link LearnedFixes}.
 */
final class LearnedValues {
    private static final double WEAR_LIMIT = 1.6;

    private final Case stated;
    private final Found named;
    private final @Nullable Path folder;
    private final Problems problems;

    LearnedValues(Case stated, Found named, @Nullable Path folder, Problems problems) {
        this.stated = stated;
        this.named = named;
        this.folder = folder;
        this.problems = problems;
    }

    Case filledIn() {
        String name = named.text();
        boolean asked = stated.machines().stream().anyMatch(m -> isLearned(m.numbers(), m.flatsKey()))
                || stated.assemblies().stream().anyMatch(a -> isLearned(a.numbers(), Key.LIFE))
                || stated.crews().stream().anyMatch(LearnedFixes::isAsked);
        if (!asked) {
            if (name != null) {
                problems.warn(
                        named.at(),
                        "",
                        "no value is learned from these records, so they change nothing",
                        "footing learn puts {learned: flats}, {learned: life} and learned fixes into the case");
            }
            return stated;
        }
        if (name == null) {
            problems.error(
                    named.at(),
                    "",
                    "missing; a learned value needs it",
                    "name a file beside the case: records: log.csv");
            return stated;
        }
        if (folder == null) {
            problems.warn(
                    named.at(),
                    name,
                    "these records can't be read from here; what is learned stands as if nothing were known",
                    "use the file of the case itself");
            return stated;
        }
        return read(name, folder).map(this::filledIn).orElse(stated);
    }

    static boolean isLearned(Numbers numbers, Key key) {
        return numbers.get(key).isPresent() && numbers.origin(key) == Origin.LEARNED;
    }

    private Optional<Learned> read(String name, Path beside) {
        try {
            Path path = beside.resolve(name).normalize();
            if (Path.of(name).isAbsolute() || !path.startsWith(beside.normalize()) || !Files.isRegularFile(path)) {
                problems.error(named.at(), name, "no file beside or below this case", "name a file such as log.csv");
                return Optional.empty();
            }
            Lessons.Taught taught = Lessons.of(path, new CaseBackground(stated), WEAR_LIMIT);
            Records records = taught.records();
            records.unread().forEach(p -> problems.error(named.at(), name, p.message(), p.advice()));
            if (!records.refused().isEmpty()) {
                problems.warn(
                        named.at(),
                        name,
                        records.refused().size() + " of its " + records.rows() + " rows can't be and are left out",
                        "footing learn " + name + " lists them");
            }
            return records.unread().isEmpty() ? Optional.of(taught.learned()) : Optional.empty();
        } catch (InvalidPathException e) {
            problems.error(named.at(), name, "not the name of a file", "");
        } catch (IOException e) {
            problems.error(named.at(), name, "can't be read", "");
        }
        return Optional.empty();
    }

    private Case filledIn(Learned learned) {
        CaseBackground background = new CaseBackground(stated);
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
        return new LearnedFixes(learned, named, problems).filledIn(filled);
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

    private static Spread threePoint(Posterior p, double per) {
        return threePoint(p.quantile(0.1) * per, p.median() * per, p.quantile(0.9) * per);
    }

    /** Percentiles as a metalog takes them; a middle too far to one side is moved to where it fits. */
    static Spread threePoint(double low, double middle, double high) {
        double at = Metalog.position(low, middle, high, Bounds.POSITIVE);
        double likely = at > 0.17 && at < 0.83
                ? middle
                : Metalog.valueAt(Math.min(Math.max(at, 0.17), 0.83), low, high, Bounds.POSITIVE);
        return new Metalog(low, likely, high, Bounds.POSITIVE);
    }
}
