package footing.web.answer;

import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.Chance;
import footing.core.fleet.Dimension;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.io.figure.Curve;
import footing.io.form.Written;
import footing.io.words.Lists;
import footing.io.words.Naming;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An input beside the answer.
 *
 * @param id of its element
 * @param unit what a bare number counts; empty where the value carries its unit
 * @param boxes one, or three of a three-point
 * @param provenance where the value comes from
 * @param turns true for a guess that could turn the verdict
 * @param canForget true if a guess would stand in for it
 * @param faults what is wrong with what was typed
 */
public record FieldView(
        String id,
        String path,
        String label,
        String unit,
        List<Box> boxes,
        String hint,
        String provenance,
        boolean guess,
        boolean turns,
        boolean canForget,
        @Nullable Curve curve,
        List<String> faults) {
    /** An editable value; its name is that of the form's parameter. */
    public record Box(String name, String label, String value) {}

    /** Where what somebody stated comes from. */
    public static final String YOURS = "yours";

    private static final List<String> NAMES = List.of("low", "likely", "high");

    static String id(Input input) {
        return id(input.path());
    }

    /** The id of the element of what stands at a path of a case file. */
    public static String id(String path) {
        return "in-" + path.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("-$", "") + "-"
                + Integer.toHexString(path.hashCode());
    }

    /** A value alone in its box, such as what was measured; emptying the box takes it back. */
    public static FieldView of(String path, String label, String unit, String value, String hint, String provenance) {
        boolean guess = !provenance.equals(YOURS);
        Box box = new Box("value", "", value);
        return new FieldView(
                id(path), path, label, unit, List.of(box), hint, provenance, guess, false, false, null, List.of());
    }

    static FieldView of(InForce number, Case stated, boolean turns) {
        Input input = number.input();
        Key key = input.key();
        Dimension dimension = key.dimension();
        return new FieldView(
                id(input),
                input.path(),
                label(stated, input),
                dimension == Dimension.MONEY ? stated.heading().currency() : "",
                key.chance() == Chance.NONE ? one(number.value(), dimension) : three(number.value(), key),
                key.chance() == Chance.NONE ? "" : BoxNames.hint(key),
                Naming.provenance(stated, number),
                Naming.isGuess(number),
                turns,
                number.origin() == Origin.STATED && key.fallback().isPresent(),
                number.value() instanceof Metalog m ? Curve.of(m) : null,
                List.of());
    }

    private static String label(Case stated, Input input) {
        String label = input.key().label();
        String whole = label.startsWith("of ") ? "share " + label : label;
        return Lists.capital(
                input.key() == Key.UPCHARGE
                        ? whole + " with " + Called.in(stated).wheels(input.part())
                        : whole);
    }

    private static List<Box> one(Spread value, Dimension dimension) {
        return List.of(new Box("value", "", written(dimension, value.likely(), inMinutes(dimension, value.likely()))));
    }

    /** Times read in minutes where one of them is below an hour, or is not in whole hours, halves and quarters. */
    static boolean inMinutes(Dimension dimension, double... all) {
        return dimension == Dimension.TIME
                && Arrays.stream(all).anyMatch(x -> x > 0 && (x < 1 || 4 * x != Math.rint(4 * x)));
    }

    /** As a case file would have it. */
    private static String written(Dimension dimension, double x, boolean minutes) {
        return minutes ? Written.number(60 * x) + " min" : Written.value(dimension, x);
    }

    /** A single value stands in the middle, with nothing on either side. */
    private static List<Box> three(Spread value, Key key) {
        List<String> labels = BoxNames.of(key);
        Dimension d = key.dimension();
        boolean minutes =
                value instanceof Metalog m ? inMinutes(d, m.low(), m.likely(), m.high()) : inMinutes(d, value.likely());
        String low = value instanceof Metalog m ? written(d, m.low(), minutes) : "";
        String high = value instanceof Metalog m ? written(d, m.high(), minutes) : "";
        return List.of(
                new Box(NAMES.get(0), labels.get(0), low),
                new Box(NAMES.get(1), labels.get(1), written(d, value.likely(), minutes)),
                new Box(NAMES.get(2), labels.get(2), high));
    }

    /** The same as somebody typed it, with what is wrong with it. */
    public FieldView refused(Map<String, String> typed, List<String> wrong) {
        List<Box> kept = boxes.stream()
                .map(b -> new Box(b.name(), b.label(), typed.getOrDefault(b.name(), b.value())))
                .toList();
        return new FieldView(
                id, path, label, unit, kept, hint, provenance, guess, turns, canForget, curve, List.copyOf(wrong));
    }

    /** As the page has it. */
    public String html(String caseId) {
        return htmlAt("/cases/" + caseId + "/inputs");
    }

    /** The same, whose changes are taken at an address. */
    public String htmlAt(String address) {
        return FieldHtml.of(this, address);
    }

    public boolean isWrong() {
        return !faults.isEmpty();
    }
}
