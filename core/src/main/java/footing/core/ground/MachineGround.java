package footing.core.ground;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import footing.core.fleet.WheelPair;
import footing.core.quantity.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * A machine on the ground under each of its packages, the carried one first.
 *
 * <p>{@link #ceiling} goes with every slope figure: the slope the manual states or, where none is stated, 15°, the usual
 * ceiling (California Code of Regulations, Title 8, §3563). It is a limit, not a permission: the operator's manual and
 * local rules come first.
 */
public record MachineGround(MachineBody machine, Angle ceiling, boolean ceilingStated, List<PackageGround> packages) {
    /** Title 8, section 3563(d): where the maker states no limit. */
    public static final Angle USUAL_CEILING = Angle.ofDegrees(15);

    public MachineGround {
        packages = List.copyOf(packages);
    }

    /**
     * The ground side of one machine of a case.
     *
     * @throws IllegalArgumentException if there is no such machine
     */
    public static MachineGround of(Case stated, String id) {
        Case.Machine m = stated.machine(id);
        WheelPair carried = WheelPair.of(stated, m.carries());
        MachineBody body = new MachineBody(id, m.measures(), carried.drive());
        List<PackageGround> all = new ArrayList<>();
        all.add(new PackageGround(body, carried, carried));
        for (Case.WheelPackage p : m.consider()) {
            if (!p.id().equals(carried.id())) {
                all.add(new PackageGround(body, carried, WheelPair.of(stated, p)));
            }
        }
        boolean isStated = m.measures().has(Measure.SLOPE_LIMIT);
        Angle ceiling =
                isStated ? Angle.ofDegrees(m.measures().get(Measure.SLOPE_LIMIT).orElseThrow()) : USUAL_CEILING;
        return new MachineGround(body, ceiling, isStated, all);
    }

    public PackageGround carried() {
        return packages.get(0);
    }

    /** True if nobody measured anything a figure could be worked out from. */
    public boolean isSilent() {
        return packages.stream()
                .allMatch(p -> p.patch(Position.DRIVE).value().isEmpty()
                        && p.stance().value().isEmpty());
    }
}
