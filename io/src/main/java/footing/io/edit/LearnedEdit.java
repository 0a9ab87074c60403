package footing.io.edit;

import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Values;
import footing.core.records.Learned;
import footing.core.records.LifePosterior;
import footing.core.records.Limits;
import footing.io.form.LearnedForm;
import footing.io.form.Written;
import footing.io.words.TakenInWords;
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
     * @param told what was replaced by what, a sentence each
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
                text = flats(text, f);
            }
        }
        for (Learned.SetLife life : learned.lives()) {
            boolean known = stated.assemblies().stream().anyMatch(a -> a.id().equals(life.assembly()));
            if (known && (life.sets() > 0 || life.bought().isPresent())) {
                text = life(text, life);
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
        List<String> sentences = new ArrayList<>();
        for (int i = 0; i < crew.fixes().size(); i++) {
            Case.Fix fix = crew.fixes().get(i);
            put(typed, sentences, new Input(Key.FIX_SHARE, crew.id(), Integer.toString(i)), fix);
            if (seen.delays().stream()
                    .anyMatch(d -> d.name().equals(fix.name()) && d.minutes().isPresent())) {
                put(typed, sentences, new Input(Key.DELAY, crew.id(), Integer.toString(i)), fix);
            }
        }
        if (typed.isEmpty() || !(CaseEdit.set(text, typed) instanceof Edited.Changed changed)) {
            return text;
        }
        told.addAll(sentences);
        return changed.text();
    }

    private static void put(Map<String, String> typed, List<String> sentences, Input input, Case.Fix fix) {
        Numbers.Stated before = fix.numbers().stated().get(input.key());
        if (before == null || before.origin() == Origin.LEARNED) {
            return;
        }
        LearnedForm.written(input.key(), Written.spread(input.key().dimension(), before.value()))
                .ifPresent(value -> {
                    typed.put(input.path(), value);
                    sentences.add(TakenInWords.fix(input, fix.name(), before));
                });
    }

    private String flats(String text, Learned.Flats f) {
        return stated.machines().stream()
                .filter(m -> m.id().equals(f.machine()))
                .findFirst()
                .map(m -> flats(text, f, m))
                .orElse(text);
    }

    private String flats(String text, Learned.Flats f, Case.Machine m) {
        double perYear =
                new Values(stated, m).get(Input.of(Key.HOURS_PER_YEAR, m.id())).likely();
        double per = m.flatsKey() == Key.FLATS_PER_1000H ? 1000 : perYear;
        Limits limits = f.rate().limits(Limits.SHARE);
        Put put = new Put(Input.of(m.flatsKey(), m.id()), "{learned: flats}", limits.low() * per, limits.high() * per);
        return replaced(text, put, m.numbers());
    }

    private String life(String text, Learned.SetLife life) {
        Numbers numbers = stated.assembly(life.assembly()).numbers();
        LifePosterior known = life.posterior();
        Put put = new Put(Input.of(Key.LIFE, life.assembly()), "{learned: life}", known.life(0.1), known.life(0.9));
        return replaced(text, put, numbers);
    }

    /** What is put where, and what it amounts to: one in ten is below low, one in ten above high. */
    private record Put(Input input, String value, double low, double high) {}

    private String replaced(String text, Put put, Numbers numbers) {
        Input input = put.input();
        Optional<Numbers.Stated> before = Optional.ofNullable(numbers.stated().get(input.key()));
        Optional<String> after = changed(text, input.path(), put.value());
        told.add(
                after.isEmpty()
                        ? TakenInWords.stays(stated, input, before)
                        : TakenInWords.put(stated, input, put.low(), put.high(), before));
        return after.orElse(text);
    }

    private static Optional<String> changed(String text, String path, String typed) {
        return CaseEdit.set(text, Map.of(path, typed)) instanceof Edited.Changed changed
                ? Optional.of(changed.text())
                : Optional.empty();
    }
}
