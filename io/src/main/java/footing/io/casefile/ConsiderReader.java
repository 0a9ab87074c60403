package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.io.form.Found;
import footing.io.form.Problems;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads which packages a machine considers. */
final class ConsiderReader {
    /** More than anybody compares; bounds what one answer can cost. */
    static final int MOST = 100;

    private final PackageRack packages;
    private final Problems problems;

    ConsiderReader(PackageRack packages, Problems problems) {
        this.packages = packages;
        this.problems = problems;
    }

    List<Case.WheelPackage> read(Found consider, Case.@Nullable WheelPackage carries) {
        List<Case.WheelPackage> read = packages(consider, carries);
        if (read.size() > MOST) {
            tooMany(consider, read.size());
            return List.of();
        }
        return read;
    }

    private List<Case.WheelPackage> packages(Found consider, Case.@Nullable WheelPackage carries) {
        if (consider.isList()) {
            List<Case.WheelPackage> named = new ArrayList<>();
            for (Found item : consider.items()) {
                Case.WheelPackage found = packages.find(item);
                if (found != null) {
                    named.add(found);
                }
            }
            return named;
        }
        if (consider.isGroup()) {
            return combinations(consider, carries);
        }
        return packages.all();
    }

    private List<Case.WheelPackage> combinations(Found consider, Case.@Nullable WheelPackage carries) {
        List<String> drives = assemblies(consider.get("drive"), Position.DRIVE);
        List<String> casters = assemblies(consider.get("caster"), Position.CASTER);
        if ((long) drives.size() * casters.size() > MOST) {
            tooMany(consider, (long) drives.size() * casters.size());
            return List.of();
        }
        List<Case.WheelPackage> made = new ArrayList<>();
        for (String drive : drives) {
            for (String caster : casters) {
                made.add(combination(drive, caster, carries));
            }
        }
        return made;
    }

    private Case.WheelPackage combination(String drive, String caster, Case.@Nullable WheelPackage carries) {
        if (carries != null && carries.drive().equals(drive) && carries.caster().equals(caster)) {
            return carries;
        }
        Case.WheelPackage named = packages.with(drive, caster);
        return named != null ? named : new Case.WheelPackage(drive + " + " + caster, drive, caster);
    }

    private List<String> assemblies(Found list, Position position) {
        List<String> ids = new ArrayList<>();
        for (Found item : list.items()) {
            String id = packages.assembly(item, position);
            if (id != null) {
                ids.add(id);
            }
        }
        return ids;
    }

    private void tooMany(Found consider, long count) {
        problems.error(
                consider.at(),
                count + " packages",
                "so many are not compared for one machine",
                "at most " + MOST + " would fit");
    }
}
