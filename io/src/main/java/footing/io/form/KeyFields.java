package footing.io.form;

import footing.core.fleet.Key;
import footing.core.fleet.Place;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The fields of the numeric keys of a place. A key like {@code worn.drive} becomes the field {@code drive} of a group. */
public final class KeyFields {
    /** Without default and yet not required: one of the first two is, and an upcharge says 'not the usual reckoning'. */
    private static final Set<Key> OPTIONAL = EnumSet.of(Key.FLATS_PER_SEASON, Key.FLATS_PER_1000H, Key.UPCHARGE);

    private KeyFields() {}

    public static List<Field> of(Place place) {
        Map<String, List<Field>> grouped = new LinkedHashMap<>();
        for (Key key : Key.of(place)) {
            if (key != Key.UPCHARGE) {
                String[] parts = key.key().split("\\.", -1);
                grouped.computeIfAbsent(parts[0], n -> new ArrayList<>())
                        .add(new Field(parts[parts.length - 1], new NumberForm(key), isRequired(key)));
            }
        }
        List<Field> fields = new ArrayList<>();
        grouped.forEach((name, inside) ->
                fields.add(inside.get(0).name().equals(name) ? inside.get(0) : Field.may(name, GroupForm.of(inside))));
        return fields;
    }

    private static boolean isRequired(Key key) {
        return key.fallback().isEmpty() && !OPTIONAL.contains(key);
    }
}
