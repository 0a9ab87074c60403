package footing.io.edit;

import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.records.Learned;
import footing.io.form.LearnedForm;
import footing.io.form.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts {@code {learned: …}} into a case's text for what records tell of, and the link to them. What the records say
 * nothing of stays as it is.
 */
public final class LearnedEdit {
    private final Case stated;
    private final Learned learned;
    private final List<String> told = new ArrayList<>();

    /**
     * What came of it.
     *
     * @param told what was replaced by what, a line each
     */
    public record Result(String text, List<String> told) {
        public Result {
            told = List.copyOf(told);
        }
    }

    private LearnedEdit(Case stated, Learned learned) {
        this.stated = stated;
        this.learned = learned;
    }

    /**
     * Writes the values.
     *
     * @param link the records as the case names them
     * @return empty if the case can't name its records
     */
    public static Optional<Result> write(String text, Case stated, Learned learned, String link) {
        LearnedEdit edit = new LearnedEdit(stated, learned);
        return changed(text, "records", link).map(edit::values);
    }

    private Result values(String linked) {
        String text = linked;
        for (Learned.Flats f : learned.flats()) {
            if (!f.unwatched()) {
                text = flats(text, f.machine());
            }
        }
        for (Learned.SetLife life : learned.lives()) {
            boolean known = stated.assemblies().stream().anyMatch(a -> a.id().equals(life.assembly()));
            if (known && (life.sets() > 0 || life.bought().isPresent())) {
                text = life(text, life.assembly());
            }
        }
        for (Learned.Fixes fixes : learned.fixes()) {
            Optional<Case.Crew> crew = stated.crews().stream()
                    .filter(c -> c.id().equals(fixes.crew()))
                    .findFirst();
            text = crew.isPresent() ? fixes(text, crew.get(), fixes) : text;
        }
        return new Result(text, told);
    }

    /** All shares of a crew at once, since they add up only together; delays that were written down often enough. */
    private String fixes(String text, Case.Crew crew, Learned.Fixes seen) {
        boolean known = seen.shares().stream()
                .anyMatch(s -> s.count() > 0
                        && crew.fixes().stream().anyMatch(f -> f.name().equals(s.name())));
        if (!known) {
            return text;
        }
        Map<String, String> typed = new LinkedHashMap<>();
        for (int i = 0; i < crew.fixes().size(); i++) {
            Case.Fix fix = crew.fixes().get(i);
            put(typed, new Input(Key.FIX_SHARE, crew.id(), Integer.toString(i)), fix.numbers());
            if (seen.delays().stream()
                    .anyMatch(d -> d.name().equals(fix.name()) && d.minutes().isPresent())) {
                put(typed, new Input(Key.DELAY, crew.id(), Integer.toString(i)), fix.numbers());
            }
        }
        if (typed.isEmpty() || !(CaseEdit.set(text, typed) instanceof Edited.Changed changed)) {
            return text;
        }
        typed.forEach((path, value) -> told.add(path + ": " + value));
        return changed.text();
    }

    private static void put(Map<String, String> typed, Input input, Numbers numbers) {
        if (numbers.origin(input.key()) != Origin.LEARNED) {
            numbers.get(input.key())
                    .map(s -> Written.spread(input.key().dimension(), s))
                    .flatMap(s -> LearnedForm.written(input.key(), s))
                    .ifPresent(value -> typed.put(input.path(), value));
        }
    }

    private String flats(String text, String machine) {
        return stated.machines().stream()
                .filter(m -> m.id().equals(machine))
                .findFirst()
                .map(m -> replaced(text, Input.of(m.flatsKey(), machine), m.numbers(), "{learned: flats}"))
                .orElse(text);
    }

    private String life(String text, String assembly) {
        Numbers numbers = stated.assembly(assembly).numbers();
        return replaced(text, Input.of(Key.LIFE, assembly), numbers, "{learned: life}");
    }

    private String replaced(String text, Input input, Numbers numbers, String value) {
        String before = numbers.get(input.key())
                .map(s -> Written.spread(input.key().dimension(), s))
                .orElse("nothing");
        Optional<String> after = changed(text, input.path(), value);
        told.add(
                after.isEmpty()
                        ? input.path() + ": not written; it isn't stated in this file"
                        : input.path() + ": " + value + ", was " + before);
        return after.orElse(text);
    }

    private static Optional<String> changed(String text, String path, String typed) {
        return CaseEdit.set(text, Map.of(path, typed)) instanceof Edited.Changed changed
                ? Optional.of(changed.text())
                : Optional.empty();
    }
}
