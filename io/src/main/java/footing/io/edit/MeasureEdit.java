package footing.io.edit;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Place;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Changes one measure of a machine or an assembly in a case file. An empty text takes it back. A load rating and the
 * pressure it is for are one value of the file; what is measured after fitting belongs to the package that was on.
 *
 * @param text of the case file
 * @param stated what it states
 * @param owner id of the machine or assembly
 */
public record MeasureEdit(String text, Case stated, String owner) {
    private static final String RATING = ".maxLoad";

    /** Where a measure of an owner stands. */
    public static String path(Measure measure, String owner) {
        return owner(measure.place(), owner) + "." + measure.key();
    }

    /** Where everything of an owner stands. */
    public static String owner(Place place, String id) {
        return (place == Place.MACHINE ? "machines." : "assemblies.") + id;
    }

    /** Sets a measure as typed, in the manner of {@link TapeText}. */
    public Edited set(Measure measure, String typed) {
        String value = typed.isBlank()
                ? ""
                : TapeText.whole(measure, typed, stated.heading().si());
        if (measure == Measure.MAX_LOAD || measure == Measure.MAX_LOAD_AT) {
            return rating(measure, value);
        }
        return set(text, path(measure, owner), value);
    }

    /** Sets a text of an owner, such as the size on the sidewall. */
    public Edited set(Place place, String key, String typed) {
        return set(text, owner(place, owner) + "." + key, typed.strip());
    }

    /** Sets what was measured with a package on; what was measured with another on is taken out. */
    public Edited setFitted(Measure measure, String typed, String wheels) {
        String on = stated.machine(owner).fitted();
        String before = text;
        if (on != null && !on.equals(wheels)) {
            before = CaseEdit.remove(text, owner(Place.MACHINE, owner) + ".fitted")
                    .text();
        }
        String value = TapeText.whole(measure, typed, stated.heading().si());
        if (value.isEmpty()) {
            return set(before, path(measure, owner), "");
        }
        Map<String, String> values = new LinkedHashMap<>();
        values.put(path(measure, owner), value);
        values.put(owner(Place.MACHINE, owner) + ".fitted.wheels", wheels);
        Edited edited = CaseEdit.set(before, values);
        return edited instanceof Edited.Refused refused ? new Edited.Refused(text, refused.problems()) : edited;
    }

    private Edited set(String in, String path, String value) {
        if (!value.isEmpty()) {
            return CaseEdit.set(in, path, value);
        }
        return Standing.of(in).has(path) ? CaseEdit.remove(in, path) : unchanged();
    }

    /** {@code 1500 lb}, or {@code {load: 1500 lb, at: 22 psi}}. */
    private Edited rating(Measure measure, String value) {
        String path = owner(Place.ASSEMBLY, owner) + RATING;
        Standing standing = Standing.of(text);
        boolean group = standing.isGroup(path);
        String load = standing.value(group ? path + ".load" : path).orElse("");
        String at = standing.value(path + ".at").orElse("");
        if (group && !value.isEmpty()) {
            return CaseEdit.set(text, path + (measure == Measure.MAX_LOAD ? ".load" : ".at"), value);
        }
        String newLoad = measure == Measure.MAX_LOAD ? value : load;
        String newAt = measure == Measure.MAX_LOAD ? at : value;
        return newAt.isEmpty() || newLoad.isEmpty()
                ? set(text, path, newLoad)
                : CaseEdit.set(text, path, "{load: " + newLoad + ", at: " + newAt + "}");
    }

    private Edited unchanged() {
        return new Edited.Changed(text, stated, java.util.List.of());
    }
}
