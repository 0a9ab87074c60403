package footing.io.trial;

import footing.io.form.At;
import footing.io.form.Form;
import footing.io.form.MeasureForm;
import footing.io.form.Node;
import footing.io.form.Problems;
import footing.io.form.ShareForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A margin: a share of the mean, or a value as a run gives it. */
record MarginForm(Measure measure) implements Form {
    static boolean isShare(Node node) {
        return node instanceof Node.Scalar s && s.text().endsWith("%");
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        if (isShare(node)) {
            Double share = new ShareForm().read(node, at, problems);
            if (share != null && !(share > 0 && share < 1)) {
                problems.error(at, node, "a margin lies above 0 % and below 100 %", "try: " + example());
            }
        } else if (measure.quantity() != null) {
            MeasureForm.of(measure.quantity()).check(node, at, problems);
        } else {
            Double count = CountForm.read(node);
            if (count == null || !(count > 0)) {
                Form.wrongShape(
                        node, at, problems, "a margin is a share or a plain number above 0", "try: " + example());
            }
        }
    }

    /** A margin in the unit of any measure of the kind; which is judged takes two keys to see. */
    @Override
    public Map<String, Object> schema() {
        List<Map<String, Object>> fits = new ArrayList<>(List.of(new ShareForm().schema()));
        Measure.of(measure.kind()).stream()
                .filter(m -> !m.isShare())
                .map(m -> TrialForm.value(m).schema())
                .distinct()
                .forEach(fits::add);
        return Map.of("anyOf", fits);
    }

    @Override
    public String example() {
        return "10 %";
    }
}
