package footing.io.interview;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Position;
import footing.core.fleet.SidewallSize;
import footing.io.catalog.AssemblyForm;
import footing.io.catalog.Catalog;
import java.util.Comparator;
import java.util.Optional;

/** Typical figures of wheels by the size on the sidewall: of the nearest size where there are none of that size. */
final class TypicalWheels {
    private TypicalWheels() {}

    /** The typical assembly of a kind. */
    static Case.Assembly of(Position position, Kind kind, String size) {
        SidewallSize wanted = SidewallSize.of(size).orElseThrow();
        return Catalog.starter().articles().values().stream()
                .map(Catalog.Article::assembly)
                .filter(a -> a.position() == position && a.kind() == kind)
                .min(Comparator.comparingDouble(a -> sizeOf(a).distance(wanted)))
                .orElseThrow();
    }

    /** The same kind the field names. */
    static Kind kind(Given given, String field) {
        return AssemblyForm.word(Kind.values(), given.text(field)).orElseThrow();
    }

    static Position position(String field) {
        return field.startsWith("drive") ? Position.DRIVE : Position.CASTER;
    }

    /** Likely hours from a set of what is on the mower now. */
    static double life(Given given, String kindField, String sizeField) {
        return life(of(position(kindField), kind(given, kindField), given.text(sizeField)));
    }

    static double life(Case.Assembly assembly) {
        return assembly.numbers().get(Key.LIFE).orElseThrow().likely();
    }

    static double airlessPrice(Given given) {
        Case.Assembly airless = of(Position.DRIVE, Kind.AIRLESS, given.text("driveSize"));
        return airless.numbers().get(Key.PRICE).orElseThrow().likely();
    }

    private static SidewallSize sizeOf(Case.Assembly assembly) {
        return Optional.ofNullable(assembly.size())
                .flatMap(SidewallSize::of)
                .orElseThrow(() -> new IllegalStateException(assembly.id() + " has no size"));
    }
}
