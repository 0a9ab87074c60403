package footing.core.fleet;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What is known of the wheels of a package. */
public record WheelPair(String id, WheelFacts drive, WheelFacts caster) {
    public static WheelPair of(Case stated, Case.WheelPackage wheels) {
        return of(wheels, stated::assembly);
    }

    /** {@code assemblies} finds an assembly by its id. */
    public static WheelPair of(Case.WheelPackage wheels, Function<String, Case.Assembly> assemblies) {
        return new WheelPair(wheels.id(), facts(wheels.drive(), assemblies), facts(wheels.caster(), assemblies));
    }

    private static WheelFacts facts(String id, Function<String, Case.Assembly> assemblies) {
        Case.Assembly assembly = assemblies.apply(id);
        @Nullable String treats = assembly.treats();
        return WheelFacts.of(assembly, treats == null ? null : assemblies.apply(treats));
    }

    public WheelFacts at(Position position) {
        return position == Position.DRIVE ? drive : caster;
    }
}
