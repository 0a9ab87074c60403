package footing.io.interview;

import footing.io.form.Nearest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The eight questions a new case begins with. Answers are what was typed, by the id of the field; whatever is missing,
 * blank, a question mark or 'no idea' is 'don't know' and leaves a guess, which the case file names as one.
 */
public final class Interview {
    static final String CURRENCY = "currency";

    private static final List<Question> QUESTIONS = questionsInOrder();
    private static final Map<String, Field> FIELDS = fieldsById();

    private Interview() {}

    private static List<Question> questionsInOrder() {
        List<Question> all = new ArrayList<>(MowerQuestions.beforeWork());
        all.addAll(WorkQuestions.all());
        all.add(MowerQuestions.WHEELS);
        return List.copyOf(all);
    }

    private static Map<String, Field> fieldsById() {
        Map<String, Field> fields = new LinkedHashMap<>();
        QUESTIONS.forEach(q -> q.fields().forEach(f -> fields.put(f.id(), f)));
        return Collections.unmodifiableMap(fields);
    }

    public static List<Question> questions() {
        return QUESTIONS;
    }

    /** Every field by its id, in the order they are asked. */
    public static Map<String, Field> fields() {
        return FIELDS;
    }

    /**
     * The field of an id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Field field(String id) {
        Field field = FIELDS.get(id);
        if (field == null) {
            throw new IllegalArgumentException("no such field: " + id);
        }
        return field;
    }

    /** False for a field that has no meaning beside the other answers; what is typed there is not looked at. */
    public static boolean isAsked(Field field, Map<String, String> answers) {
        return given(answers).isAsked(field);
    }

    /** The value taken for a field if nobody knows, beside the other answers. */
    public static Taken guess(Field field, Map<String, String> answers) {
        Map<String, String> others = new LinkedHashMap<>(answers);
        others.remove(field.id());
        return taken(field, given(others));
    }

    /** What stands behind the value of a field: its unit, or for an amount the currency the answers name. */
    public static String unit(Field field, Map<String, String> answers) {
        return field.shape().kind() == FieldKind.MONEY
                ? given(answers).text(CURRENCY)
                : field.shape().unit();
    }

    /**
     * A guess in force.
     *
     * @param value as it could be typed
     * @param from where it comes from and who would know better
     */
    public record Taken(Field field, String value, String from) {
        /** The value with the words of the choice or the unit. */
        public String shown() {
            Optional<String> words = field.shape().choices().stream()
                    .filter(c -> c.value().equals(value))
                    .map(Choice::words)
                    .findFirst();
            boolean hours = field.shape().kind() == FieldKind.HOURS;
            return words.orElse(hours ? value + " h" : value);
        }
    }

    /** Everything the answers leave to guesses, in the order of the questions. */
    public static List<Taken> guesses(Map<String, String> answers) {
        Given given = given(answers);
        return FIELDS.values().stream()
                .filter(f -> given.isAsked(f) && !given.isYours(f.id()))
                .map(f -> taken(f, given))
                .toList();
    }

    private static Taken taken(Field field, Given given) {
        return new Taken(field, given.text(field.id()), field.guess().told());
    }

    /** What is wrong with the answers, by field, each with what would fit; empty if a case can be written. */
    public static Map<String, String> faults(Map<String, String> answers) {
        Map<String, String> faults = new LinkedHashMap<>();
        Given given = given(answers);
        answers.forEach((id, typed) -> {
            Field field = FIELDS.get(id);
            if (field == null) {
                faults.put(id, "there is no such field; " + Nearest.advice(id, FIELDS.keySet()));
            } else if (given.isAsked(field)) {
                field.fault(typed).ifPresent(f -> faults.put(id, f));
            }
        });
        new Together(given).faults().forEach(faults::putIfAbsent);
        return faults;
    }

    /**
     * The case file: YAML with a comment behind every value that says whose it is.
     *
     * @param today the day prices and hours count from
     * @throws IllegalArgumentException if {@link #faults} has any
     */
    public static String caseText(Map<String, String> answers, LocalDate today) {
        Map<String, String> faults = faults(answers);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.toString());
        }
        return new CaseText(given(answers), today, guesses(answers).size()).write();
    }

    private static Given given(Map<String, String> answers) {
        return new Given(FIELDS, answers);
    }
}
