package footing.io.interview;

import footing.core.fleet.Kind;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The wheel packages worth comparing with what is on the mower. */
record Packages(String carried, Map<String, Pair> all) {
    /** What runs on the drives and on the casters. */
    record Pair(Kind drive, Kind caster) {}

    static Packages of(Given given) {
        Kind drive = TypicalWheels.kind(given, "driveKind");
        Kind caster = TypicalWheels.kind(given, "casterKind");
        String carried = given.is("owned", "order") ? "as-delivered" : "as-now";
        Map<String, Pair> all = new LinkedHashMap<>();
        put(all, carried, drive, caster);
        put(all, "air", Kind.AIR, caster);
        put(all, "sealant", sealed(drive), sealed(caster));
        put(all, "foam", Kind.FOAM, caster);
        put(all, "solid-casters", drive, Kind.SOLID);
        put(all, "airless", Kind.AIRLESS, caster);
        put(all, "airless-and-solid", Kind.AIRLESS, Kind.SOLID);
        return new Packages(carried, all);
    }

    private static void put(Map<String, Pair> all, String id, Kind drive, Kind caster) {
        Pair pair = new Pair(drive, caster);
        if (!all.containsValue(pair)) {
            all.put(id, pair);
        }
    }

    private static Kind sealed(Kind kind) {
        return kind == Kind.AIR ? Kind.SEALANT : kind;
    }

    /** The kinds that stand at a position in some package, and air wherever sealant is poured into it. */
    Set<Kind> kinds(boolean drives) {
        Set<Kind> kinds = new LinkedHashSet<>();
        for (Pair pair : all.values()) {
            Kind kind = drives ? pair.drive() : pair.caster();
            if (kind == Kind.SEALANT) {
                kinds.add(Kind.AIR);
            }
            kinds.add(kind);
        }
        return kinds;
    }
}
