package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.io.catalog.AssemblyForm;
import footing.io.form.At;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The wheel packages of a case, and combinations made of its assemblies. */
final class PackageRack {
    private final Map<String, Found> parts;
    private final Map<String, Case.WheelPackage> packages = new LinkedHashMap<>();
    private final Shelf shelf;
    private final Problems problems;

    PackageRack(Map<String, Found> parts, Shelf shelf, Problems problems) {
        this.parts = parts;
        this.shelf = shelf;
        this.problems = problems;
        parts.forEach((id, part) -> {
            String drive = assembly(part.get("drive"), Position.DRIVE);
            String caster = assembly(part.get("caster"), Position.CASTER);
            if (drive != null && caster != null) {
                warnOfTwin(part.at(), new Case.WheelPackage(id, drive, caster));
            }
        });
    }

    private void warnOfTwin(At at, Case.WheelPackage added) {
        Case.WheelPackage twin = with(added.drive(), added.caster());
        if (twin != null) {
            problems.warn(at, "", "the same assemblies as package " + twin.id(), "one of the two is enough");
        }
        packages.put(added.id(), added);
    }

    /** The assembly of an id that was found before. */
    Optional<Case.Assembly> named(@Nullable String id) {
        return shelf.named(id);
    }

    /** The id of an assembly of this position; null if it is none, which is reported. */
    @Nullable
    String assembly(Found at, Position position) {
        String id = at.text();
        Case.Assembly assembly = shelf.find(id, at.at());
        if (assembly == null) {
            return null;
        }
        if (assembly.position() != position) {
            String is = AssemblyForm.word(assembly.position());
            problems.error(
                    at.at(),
                    assembly.id(),
                    "a " + is + " assembly can't stand at the " + AssemblyForm.word(position) + " position",
                    "name an assembly with position: " + AssemblyForm.word(position));
            return null;
        }
        return assembly.id();
    }

    /** True for a package that is there but was found wrong; what refers to it is not to blame. */
    boolean isBroken(String id) {
        return parts.containsKey(id) && !packages.containsKey(id);
    }

    /** The package of this id; null if there is none, which is reported. */
    Case.@Nullable WheelPackage find(Found at) {
        String id = at.text();
        if (id != null && !parts.isEmpty() && !parts.containsKey(id)) {
            problems.unknown(at.at(), id, "no such package", parts.keySet());
        }
        return id == null ? null : packages.get(id);
    }

    /** The named package of exactly these assemblies; null if there is none. */
    Case.@Nullable WheelPackage with(String drive, String caster) {
        return packages.values().stream()
                .filter(p -> p.drive().equals(drive) && p.caster().equals(caster))
                .findFirst()
                .orElse(null);
    }

    List<Case.WheelPackage> all() {
        return List.copyOf(packages.values());
    }
}
