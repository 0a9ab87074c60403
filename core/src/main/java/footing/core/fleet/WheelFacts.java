package footing.core.fleet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one assembly: its own measures; where its tire is another assembly's treated in place, what treating
 * doesn't change; and what the size on the sidewall says. In SI units.
 *
 * @param treats the id of the assembly it is made of in place; null if none
 * @param nominal diameter, width and rim as on the sidewall, where nobody measured them
 */
public record WheelFacts(
        String id,
        Kind kind,
        Position position,
        @Nullable String treats,
        Measures measures,
        Map<Measure, Double> nominal) {
    /** Treating leaves the wheel and the outside of the tire as they are. */
    private static final List<Measure> KEPT = List.of(
            Measure.DIAMETER,
            Measure.WIDTH,
            Measure.RIM,
            Measure.BOLTS,
            Measure.CIRCLE,
            Measure.OFFSET,
            Measure.MAX_LOAD,
            Measure.MAX_LOAD_AT,
            Measure.MAX_SPEED,
            Measure.AXLE,
            Measure.HUB_LENGTH);

    /** Sealant leaves an air tire an air tire; foam doesn't. */
    private static final List<Measure> KEPT_BY_AIR = List.of(
            Measure.LOADED_RADIUS,
            Measure.PRESSURE,
            Measure.STIFFNESS,
            Measure.PRINT_LENGTH,
            Measure.PRINT_WIDTH,
            Measure.PRINT_SHAPE,
            Measure.PRINT_LOAD,
            Measure.PRINT_PRESSURE);

    public WheelFacts {
        nominal = Map.copyOf(nominal);
    }

    /** {@code treated} is the assembly it is made of in place; null if it is made of none. */
    public static WheelFacts of(Case.Assembly assembly, Case.@Nullable Assembly treated) {
        Measures all = assembly.measures();
        if (treated != null) {
            all = all.orElse(kept(treated, assembly.kind()));
        }
        String size = assembly.size() == null && treated != null ? treated.size() : assembly.size();
        Map<Measure, Double> nominal = new LinkedHashMap<>();
        Optional.ofNullable(size).flatMap(SidewallSize::of).ifPresent(s -> {
            nominal.put(Measure.DIAMETER, s.diameter());
            nominal.put(Measure.WIDTH, s.width());
            nominal.put(Measure.RIM, s.rim());
        });
        nominal.keySet().removeAll(all.stated().keySet());
        return new WheelFacts(assembly.id(), assembly.kind(), assembly.position(), assembly.treats(), all, nominal);
    }

    private static Measures kept(Case.Assembly treated, Kind kind) {
        Measures kept = treated.measures();
        for (Measure m : treated.measures().stated().keySet()) {
            boolean stays = KEPT.contains(m) || (kind.holdsAir() && KEPT_BY_AIR.contains(m));
            boolean ofNoAir = m == Measure.MAX_LOAD_AT && !kind.holdsAir();
            kept = stays && !ofNoAir ? kept : kept.without(m);
        }
        return kept;
    }

    /** The value; measured, typical or by size. */
    public OptionalDouble get(Measure measure) {
        OptionalDouble own = measures.get(measure);
        Double bySize = nominal.get(measure);
        return own.isPresent() || bySize == null ? own : OptionalDouble.of(bySize);
    }

    public boolean has(Measure measure) {
        return get(measure).isPresent();
    }

    /** True for what only the size on the sidewall says. */
    public boolean isNominal(Measure measure) {
        return nominal.containsKey(measure);
    }

    /** True if it is the same wheel with the same tire, at most treated: what bolts on for one bolts on for the other. */
    public boolean isSameWheel(WheelFacts other) {
        return id.equals(other.id) || id.equals(other.treats) || other.id.equals(treats);
    }
}
