package footing.web.bay;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Place;
import footing.io.edit.MeasureEdit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Where a measure stands in a case file: whose it is, and its key. Ids may hold dots. */
record Spot(Place place, String owner, String key) {
    static Optional<Spot> of(String path, Case stated) {
        boolean machine = path.startsWith("machines.");
        Place place = machine ? Place.MACHINE : Place.ASSEMBLY;
        Stream<String> ids = machine
                ? stated.machines().stream().map(Case.Machine::id)
                : stated.assemblies().stream().map(Case.Assembly::id);
        return ids.filter(id -> path.startsWith(MeasureEdit.owner(place, id) + "."))
                .max(Comparator.comparingInt(String::length))
                .map(id -> new Spot(
                        place, id, path.substring(MeasureEdit.owner(place, id).length() + 1)));
    }

    Optional<Measure> measure() {
        return Arrays.stream(Measure.values())
                .filter(m -> m.place() == place && m.key().equals(key))
                .findFirst();
    }
}
