package footing.core.compare;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Something measured of a body that both versions have, stated differently or in one of them only. It moves no money of
 * itself; it can change what fits, and what the ground and the bay say.
 *
 * @param owner the id of the machine or the assembly
 * @param before in SI units; not there if it was not stated
 */
public record MeasureChange(String owner, Measure measure, OptionalDouble before, OptionalDouble after) {
    /** All of two versions, machines first. */
    static List<MeasureChange> all(Case before, Case after) {
        List<MeasureChange> all = new ArrayList<>();
        before.machines()
                .forEach(m -> same(after.machines(), Case.Machine::id, m.id())
                        .ifPresent(is -> between(Place.MACHINE, m.id(), m.measures(), is.measures(), all)));
        before.assemblies()
                .forEach(a -> same(after.assemblies(), Case.Assembly::id, a.id())
                        .ifPresent(is -> between(Place.ASSEMBLY, a.id(), a.measures(), is.measures(), all)));
        return List.copyOf(all);
    }

    private static <T> Optional<T> same(List<T> others, Function<T, String> id, String wanted) {
        return others.stream().filter(t -> id.apply(t).equals(wanted)).findFirst();
    }

    private static void between(Place place, String owner, Measures was, Measures is, List<MeasureChange> all) {
        if (Objects.equals(was, is)) {
            return;
        }
        for (Measure m : Measure.of(place)) {
            if (!was.get(m).equals(is.get(m))) {
                all.add(new MeasureChange(owner, m, was.get(m), is.get(m)));
            }
        }
    }

    /** The place in the case file. */
    public String path() {
        return (measure.place() == Place.MACHINE ? "machines." : "assemblies.") + owner + "." + measure.key();
    }
}
