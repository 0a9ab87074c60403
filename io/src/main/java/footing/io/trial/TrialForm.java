package footing.io.trial;

import static footing.io.form.Field.may;
import static footing.io.form.Field.must;

import footing.core.trial.TrialKind;
import footing.io.form.At;
import footing.io.form.DateForm;
import footing.io.form.Field;
import footing.io.form.Form;
import footing.io.form.Found;
import footing.io.form.GroupForm;
import footing.io.form.ListForm;
import footing.io.form.MeasureForm;
import footing.io.form.Node;
import footing.io.form.Problems;
import footing.io.form.Quantity;
import footing.io.form.ShareForm;
import footing.io.form.TextForm;
import footing.io.form.WordForm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a trial file holds: the kind decides what a run gives. */
record TrialForm() implements Form {
    static final String FORMAT = "footing-trial/1";

    /** Far more than anybody drives; bounds what a damaged file can cost. */
    static final int MOST_RUNS = 1000;

    private static final TextForm TEXT = TextForm.text("a text");
    private static final WordForm SIDE = WordForm.of("a", "b");

    static final WordForm KIND =
            new WordForm(Arrays.stream(TrialKind.values()).map(TrialForm::word).toList());

    /** The name of a kind as files write it. */
    static String word(TrialKind kind) {
        return kind == TrialKind.SIDE_HILL ? "sideHill" : kind.name().toLowerCase(java.util.Locale.ROOT);
    }

    static TrialKind kind(String word) {
        return Arrays.stream(TrialKind.values())
                .filter(k -> word(k).equals(word))
                .findFirst()
                .orElseThrow();
    }

    @Override
    public void check(Node node, At at, Problems problems) {
        TrialKind kind = kindOf(node);
        of(kind, judged(new Found(node, at), kind)).check(node, at, problems);
    }

    /** What a file of a kind judges: what it says, else the first measure of the kind. */
    static Measure judged(Found file, TrialKind kind) {
        String judge = file.text("judge");
        return Measure.of(kind).stream()
                .filter(m -> m.key().equals(judge))
                .findFirst()
                .orElse(Measure.of(kind).get(0));
    }

    /** The kind a file states; where it states none that is known, the first, whose form then reports that. */
    static TrialKind kindOf(Node node) {
        if (node instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries()) {
                if (entry.key().text().equals("kind")
                        && KIND.words().contains(entry.value().text())) {
                    return kind(entry.value().text());
                }
            }
        }
        return TrialKind.PULL;
    }

    private static GroupForm of(TrialKind kind, Measure judged) {
        List<String> measures = Measure.of(kind).stream().map(Measure::key).toList();
        List<Field> fields = new ArrayList<>(List.of(
                must("format", WordForm.of(FORMAT)),
                must("kind", KIND),
                must("title", TextForm.text("Steady pull on dry fescue")),
                may("note", TEXT),
                may("units", WordForm.of("us", "si")),
                must("a", contender(kind)),
                must("b", contender(kind)),
                may("judge", new WordForm(measures)),
                may("better", WordForm.of("more", "less")),
                may("margin", new MarginForm(judged)),
                may("heldEqual", ListForm.of(TextForm.text("same machine and operator"), MOST_RUNS)),
                must("runs", ListForm.of(run(kind), MOST_RUNS))));
        if (kind == TrialKind.SIDE_HILL) {
            fields.add(may("over", MeasureForm.of(Quantity.LENGTH)));
        }
        if (hasLogs(kind)) {
            fields.add(may("logUnit", logUnit(kind)));
        }
        fields.addAll(PhotoFields.ofFile(kind));
        return GroupForm.of(fields);
    }

    static boolean hasLogs(TrialKind kind) {
        return kind == TrialKind.PULL || kind == TrialKind.RIDE;
    }

    private static WordForm logUnit(TrialKind kind) {
        return kind == TrialKind.PULL ? WordForm.of("lbf", "N", "kN") : WordForm.of("m/s2", "g", "mg");
    }

    private static GroupForm contender(TrialKind kind) {
        List<Field> fields = new ArrayList<>(List.of(must("name", TextForm.text("24x12-12 air"))));
        fields.addAll(PhotoFields.ofSide(kind));
        fields.addAll(conditions());
        return GroupForm.of(fields);
    }

    private static GroupForm run(TrialKind kind) {
        List<Field> fields = new ArrayList<>();
        fields.add(may("side", SIDE));
        Measure.of(kind).forEach(m -> fields.add(may(m.key(), value(m))));
        if (hasLogs(kind)) {
            fields.add(may("log", TextForm.text("run-1.csv")));
        }
        if (kind == TrialKind.PULL) {
            fields.add(may("winner", WordForm.of("a", "b", "even")));
        }
        fields.addAll(PhotoFields.ofRun(kind));
        fields.add(may("surface", TextForm.id("dry fescue")));
        fields.add(may("lane", TextForm.id("3")));
        fields.addAll(conditions());
        fields.add(may("note", TEXT));
        return GroupForm.of(fields);
    }

    static Form value(Measure measure) {
        if (measure.isShare()) {
            return new ShareForm();
        }
        var quantity = measure.quantity();
        if (quantity == null) {
            return new CountForm();
        }
        // A machine that holds does not drift, or drifts uphill.
        return new MeasureForm(quantity, measure == Measure.DRIFT);
    }

    private static List<Field> conditions() {
        return List.of(
                may("pressure", MeasureForm.of(Quantity.PRESSURE)),
                may("moisture", new ShareForm()),
                may("speed", MeasureForm.of(Quantity.SPEED)),
                may("mass", MeasureForm.of(Quantity.MASS)),
                may("tread", MeasureForm.of(Quantity.LENGTH)),
                may("operator", TextForm.id("Jo")),
                may("machine", TextForm.id("Z1")),
                may("direction", TextForm.id("out")),
                may("day", new DateForm()));
    }

    /** One alternative for each kind. */
    @Override
    public Map<String, Object> schema() {
        List<Map<String, Object>> kinds = new ArrayList<>();
        for (TrialKind kind : TrialKind.values()) {
            Map<String, Object> schema =
                    new LinkedHashMap<>(of(kind, Measure.of(kind).get(0)).schema());
            schema.put("title", word(kind));
            schema.put("properties", pinned(schema.get("properties"), kind));
            kinds.add(schema);
        }
        return Map.of("oneOf", kinds);
    }

    private static Map<String, Object> pinned(@Nullable Object properties, TrialKind kind) {
        Map<String, Object> pinned = new LinkedHashMap<>();
        if (properties instanceof Map<?, ?> map) {
            map.forEach((name, form) -> pinned.put(String.valueOf(name), form));
        }
        pinned.put("kind", Map.of("const", word(kind)));
        return pinned;
    }

    @Override
    public String example() {
        return of(TrialKind.PULL, Measure.STEADY).example();
    }
}
