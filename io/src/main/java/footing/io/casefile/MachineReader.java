package footing.io.casefile;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Measures;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import footing.core.fleet.When;
import footing.io.catalog.AssemblyForm;
import footing.io.catalog.Catalog;
import footing.io.form.BodyFields;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads a machine. */
final class MachineReader {
    private static final Case.WheelPackage BROKEN = new Case.WheelPackage("", "", "");

    private final Set<String> crews;
    private final PackageRack packages;
    private final Catalog catalog;
    private final Problems problems;

    MachineReader(Set<String> crews, PackageRack packages, Catalog catalog, Problems problems) {
        this.crews = crews;
        this.packages = packages;
        this.catalog = catalog;
        this.problems = problems;
    }

    Case.Machine read(Found machine) {
        String crew = text(machine, "crew");
        if (!crew.isEmpty() && !crews.isEmpty() && !crews.contains(crew)) {
            problems.unknown(machine.get("crew").at(), crew, "no such crew", crews);
        }
        boolean isNew = Boolean.TRUE.equals(machine.flag("new"));
        Numbers numbers = FlatsAt.settle(machine, machine.numbers(Place.MACHINE, Origin.STATED), problems);
        MachineChecks.check(machine, isNew, numbers, problems);
        Case.WheelPackage carries = packages.find(machine.get("carries"));
        List<Case.WheelPackage> consider =
                new ConsiderReader(packages, problems).read(machine.get("consider"), carries);
        List<When> when = when(machine.get("when"));
        Map<String, Double> upcharge = upcharge(machine, isNew, carries, consider);
        Measures measures = measures(machine);
        if (carries != null) {
            consider = new FittingChoice(machine, packages, problems).choose(measures, carries, consider);
            upcharge.keySet()
                    .retainAll(consider.stream().map(Case.WheelPackage::id).toList());
        }
        return new Case.Machine(
                text(machine, "id"),
                kind(machine),
                crew,
                isNew,
                numbers,
                carries == null ? BROKEN : carries,
                consider,
                when,
                upcharge,
                measures,
                fitted(machine, carries, consider));
    }

    /** The package that was on it when it was measured after fitting: the carried one, one it considers, or a named one. */
    private @Nullable String fitted(
            Found machine, Case.@Nullable WheelPackage carries, List<Case.WheelPackage> consider) {
        Found at = machine.get("fitted").get("wheels");
        String id = at.text();
        boolean known = id == null
                || (carries != null && carries.id().equals(id))
                || consider.stream().anyMatch(p -> p.id().equals(id));
        return known || packages.find(at) != null ? id : null;
    }

    /** What is stated, and what its class usually has where nothing is. */
    private Measures measures(Found machine) {
        Measures stated = BodyFields.read(machine, Place.MACHINE, Origin.STATED);
        MachineGeometry.check(machine, stated, problems);
        Catalog.MachineClass known = catalog.classes().get(text(machine, "kind"));
        return known == null ? stated : stated.orElse(known.measures());
    }

    /** The text, or the name of the catalog's class if it is the id of one. */
    private String kind(Found machine) {
        String kind = text(machine, "kind");
        Catalog.MachineClass known = catalog.classes().get(kind);
        return known == null ? kind : known.name();
    }

    private static List<When> when(Found list) {
        return list.items().stream()
                .map(w -> AssemblyForm.word(When.values(), w.text()))
                .flatMap(Optional::stream)
                .toList();
    }

    private Map<String, Double> upcharge(
            Found machine, boolean isNew, Case.@Nullable WheelPackage carries, List<Case.WheelPackage> consider) {
        Found part = machine.get("upcharge");
        Map<String, Double> upcharge = new LinkedHashMap<>();
        if (machine.has("upcharge") && !isNew) {
            problems.error(
                    part.at(),
                    "",
                    "only a machine that is yet to be bought can be ordered with other wheels",
                    "leave upcharge out, or state new: true");
            return upcharge;
        }
        List<String> ids = consider.stream().map(Case.WheelPackage::id).toList();
        part.named().forEach((id, price) -> {
            if (carries != null && id.equals(carries.id())) {
                problems.error(price.at(), "", "the carried package comes with the machine", "leave it out");
            } else if (!ids.isEmpty() && !ids.contains(id) && !packages.isBroken(id)) {
                problems.unknown(price.at(), id, "no package this machine considers", ids);
            }
            Spread value = price.number(Key.UPCHARGE);
            if (value != null) {
                upcharge.put(id, value.likely());
            }
        });
        return upcharge;
    }

    private static String text(Found part, String name) {
        String text = part.text(name);
        return text == null ? "" : text;
    }
}
