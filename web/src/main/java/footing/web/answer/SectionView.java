package footing.web.answer;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Inputs that belong to one crew, machine, set of wheels or kind of fix.
 *
 * @param first what somebody said, and guesses that could turn the verdict
 * @param rest other guesses
 */
record SectionView(String title, List<FieldView> first, List<FieldView> rest) {
    public boolean isEmpty() {
        return first.isEmpty() && rest.isEmpty();
    }

    /** '9 yours, 4 guesses'. */
    public String count() {
        long guesses = first.stream().filter(FieldView::guess).count() + rest.size();
        long yours = first.size() + rest.size() - guesses;
        String guessed = guesses + (guesses == 1 ? " guess" : " guesses");
        return yours == 0 ? guessed : guesses == 0 ? yours + " yours" : yours + " yours, " + guessed;
    }

    public String firstHtml(String caseId) {
        return first.stream().map(f -> f.html(caseId)).collect(Collectors.joining());
    }

    public String restHtml(String caseId) {
        return rest.stream().map(f -> f.html(caseId)).collect(Collectors.joining());
    }

    public boolean hasTurning() {
        return first.stream().anyMatch(FieldView::turns);
    }
}
