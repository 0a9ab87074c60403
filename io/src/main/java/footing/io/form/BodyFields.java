package footing.io.form;

import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.Seat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The fields of what is measured of an assembly or a machine, and their reading. A key like {@code track.drive} becomes
 * the field {@code drive} of a group; a load rating is a mass, or {load, at} with the pressure it is for.
 */
public final class BodyFields {
    private static final String SEAT = "seat";
    private static final WordForm SEATS =
            WordForm.of(Arrays.stream(Seat.values()).map(BodyFields::word).toArray(String[]::new));

    /** Where a machine says which package was on it when the rest of {@code fitted} was measured. */
    public static final String FITTED = "fitted.wheels";

    private BodyFields() {}

    /** All of a place. */
    public static List<Field> of(Place place) {
        Map<String, Form> forms = forms(Measure.of(place));
        forms.put(seatPath(place), SEATS);
        if (place == Place.MACHINE) {
            forms.put(FITTED, TextForm.id("the id of the package that was on it when it was measured"));
        }
        return fields(forms);
    }

    /** Some of them. */
    public static List<Field> of(Measure... some) {
        return fields(forms(List.of(some)));
    }

    private static Map<String, Form> forms(Collection<Measure> measures) {
        Map<String, Form> forms = new LinkedHashMap<>();
        for (Measure m : measures) {
            if (m != Measure.MAX_LOAD_AT) {
                forms.put(m.key(), m == Measure.MAX_LOAD ? rating() : new BodyForm(m));
            }
        }
        return forms;
    }

    private static Form rating() {
        BodyForm load = new BodyForm(Measure.MAX_LOAD);
        return new ScalarOrGroup(
                load, GroupForm.of(Field.must("load", load), Field.may("at", new BodyForm(Measure.MAX_LOAD_AT))));
    }

    private static List<Field> fields(Map<String, Form> forms) {
        Map<String, Map<String, Form>> below = new LinkedHashMap<>();
        forms.forEach((path, form) -> {
            int dot = path.indexOf('.');
            String name = dot < 0 ? path : path.substring(0, dot);
            below.computeIfAbsent(name, n -> new LinkedHashMap<>()).put(dot < 0 ? "" : path.substring(dot + 1), form);
        });
        List<Field> fields = new ArrayList<>();
        below.forEach((name, inside) -> {
            Form alone = inside.get("");
            fields.add(Field.may(name, alone == null ? GroupForm.of(fields(inside)) : alone));
        });
        return fields;
    }

    /** What could be read of a place. */
    public static Measures read(Found found, Place place, Origin origin) {
        Map<Measure, Measures.Stated> stated = new TreeMap<>();
        for (Measure m : Measure.of(place)) {
            Double value = part(found, m).body(m);
            if (value != null) {
                stated.put(m, new Measures.Stated(value, origin));
            }
        }
        String seat = at(found, seatPath(place)).text();
        return new Measures(
                stated,
                Arrays.stream(Seat.values())
                        .filter(s -> word(s).equals(seat))
                        .findFirst()
                        .orElse(null));
    }

    /** Where a value stands. */
    public static Found part(Found found, Measure measure) {
        Found part = at(found, measure.key());
        return measure == Measure.MAX_LOAD && part.isGroup() ? part.get("load") : part;
    }

    private static Found at(Found found, String path) {
        Found part = found;
        for (String name : path.split("\\.", -1)) {
            part = part.get(name);
        }
        return part;
    }

    /** Where an assembly or a machine says how its lug nuts seat. */
    public static String seatPath(Place place) {
        return place == Place.ASSEMBLY ? SEAT : "hub.drive." + SEAT;
    }

    private static String word(Seat seat) {
        return seat.name().toLowerCase(Locale.ROOT);
    }
}
