package footing.web.cases;

import footing.io.interview.Choice;
import footing.io.interview.Field;
import footing.io.interview.FieldKind;
import footing.io.interview.Interview;
import footing.io.interview.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A question as the page shows it. */
record QuestionView(int number, String id, String text, String why, List<FieldView> fields) {
    static List<QuestionView> all(Map<String, String> answers, Map<String, String> faults) {
        List<QuestionView> all = new ArrayList<>();
        for (Question q : Interview.questions()) {
            List<FieldView> fields = q.fields().stream()
                    .map(f -> new FieldView(f, answers.getOrDefault(f.id(), ""), FieldLook.of(f, answers, faults)))
                    .toList();
            all.add(new QuestionView(all.size() + 1, q.id(), q.text(), q.why(), fields));
        }
        return all;
    }

    /** The fields with a fault, in the order of the questions. */
    static List<Field> faulty(Map<String, String> faults) {
        return Interview.fields().values().stream()
                .filter(f -> faults.containsKey(f.id()))
                .toList();
    }

    /**
     * A field as the page shows it.
     *
     * @param typed to the letter, right or wrong
     */
    record FieldView(Field field, String typed, FieldLook look) {
        public boolean isChoice() {
            return field.shape().kind() == FieldKind.CHOICE;
        }

        public List<Choice> choices() {
            return field.shape().choices();
        }

        /** Which keys a phone should offer. */
        public String inputMode() {
            return switch (field.shape().kind()) {
                case NUMBER, MONEY, HOURS, SHARE -> "decimal";
                default -> "text";
            };
        }

        /** Names fit a wide box, numbers a narrow one. */
        public String width() {
            return switch (field.shape().kind()) {
                case TEXT -> "wide";
                case CHOICE -> "choice";
                default -> "narrow";
            };
        }
    }
}
