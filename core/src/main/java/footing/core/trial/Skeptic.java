package footing.core.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.hipparchus.stat.inference.OneWayAnova;

/** Looks for what else could explain the result of a trial. */
final class Skeptic {
    /** By how much the shares of a name may differ between the sides before it counts. */
    private static final double UNEVEN_SHARE = 0.34;

    private static final int FEWEST_FOR_ORDER = 3;
    private static final List<Condition> OF_A_PULL = List.of(Condition.MASS, Condition.PRESSURE, Condition.OPERATOR);

    private final Trial trial;

    Skeptic(Trial trial) {
        this.trial = trial;
    }

    /** About measured runs. */
    List<Caveat> about(Pairing pairing) {
        List<Caveat> caveats = new ArrayList<>();
        List<Conditions> a = conditions(pairing, Side.A);
        List<Conditions> b = conditions(pairing, Side.B);
        for (Condition condition : Condition.values()) {
            compare(condition, a, b, caveats);
        }
        order(pairing, caveats);
        lanes(caveats);
        surfaces(pairing, caveats);
        return caveats;
    }

    /** About opposed pulls, whose conditions are those of the two sides. */
    List<Caveat> aboutBouts() {
        List<Caveat> caveats = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            compare(condition, List.of(trial.a().usual()), List.of(trial.b().usual()), caveats);
        }
        for (Condition condition : OF_A_PULL) {
            boolean a = isNoted(condition, trial.a().usual());
            boolean b = isNoted(condition, trial.b().usual());
            if (!a || !b) {
                caveats.add(new Caveat.NotNoted(condition, !a && !b ? null : a ? Side.B : Side.A));
            }
        }
        return caveats;
    }

    private static boolean isNoted(Condition condition, Conditions at) {
        return at.number(condition) != null || at.name(condition) != null;
    }

    private List<Conditions> conditions(Pairing pairing, Side side) {
        return pairing.pairs().stream()
                .map(p -> trial.conditions(side == Side.A ? p.a() : p.b()))
                .toList();
    }

    private static void compare(Condition condition, List<Conditions> a, List<Conditions> b, List<Caveat> to) {
        if (condition.isMeasured()) {
            double[] ofA = numbers(condition, a);
            double[] ofB = numbers(condition, b);
            if (ofA.length > 0 && ofB.length > 0) {
                double meanA = java.util.Arrays.stream(ofA).average().orElse(0);
                double meanB = java.util.Arrays.stream(ofB).average().orElse(0);
                if (condition.differs(meanA, meanB)) {
                    to.add(new Caveat.Uneven(condition, meanA, meanB));
                }
            }
            return;
        }
        Map<String, Long> ofA = names(condition, a);
        Map<String, Long> ofB = names(condition, b);
        if (!ofA.isEmpty() && !ofB.isEmpty() && isOneSided(ofA, ofB)) {
            to.add(new Caveat.OneSided(condition, commonest(ofA), commonest(ofB)));
        }
    }

    private static double[] numbers(Condition condition, List<Conditions> all) {
        return all.stream()
                .map(c -> c.number(condition))
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static Map<String, Long> names(Condition condition, List<Conditions> all) {
        return all.stream()
                .map(c -> c.name(condition))
                .filter(Objects::nonNull)
                .collect(Collectors.groupingBy(n -> n, LinkedHashMap::new, Collectors.counting()));
    }

    private static boolean isOneSided(Map<String, Long> a, Map<String, Long> b) {
        double ofA = a.values().stream().mapToLong(Long::longValue).sum();
        double ofB = b.values().stream().mapToLong(Long::longValue).sum();
        double apart = 0;
        for (Map.Entry<String, Long> e : a.entrySet()) {
            apart += Math.max(0, e.getValue() / ofA - b.getOrDefault(e.getKey(), 0L) / ofB);
        }
        return apart > UNEVEN_SHARE;
    }

    private static String commonest(Map<String, Long> names) {
        return names.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private static void order(Pairing pairing, List<Caveat> caveats) {
        List<Side> first = pairing.pairs().stream().map(Pair::first).distinct().toList();
        if (first.size() == 1 && pairing.pairs().size() >= FEWEST_FOR_ORDER) {
            caveats.add(new Caveat.SameOrder(first.get(0)));
        }
        if (pairing.apart() > 0) {
            caveats.add(new Caveat.Apart(pairing.apart()));
        }
        if (!pairing.left().isEmpty()) {
            caveats.add(new Caveat.Unpaired(pairing.left().size()));
        }
    }

    private void lanes(List<Caveat> caveats) {
        Map<String, Long> lanes = new LinkedHashMap<>();
        for (Run run : trial.runs()) {
            if (run.lane() != null) {
                lanes.merge(run.surface().isEmpty() ? run.lane() : run.lane() + " on " + run.surface(), 1L, Long::sum);
            }
        }
        lanes.entrySet().stream()
                .filter(e -> e.getValue() > 1)
                .max(Comparator.comparingLong(Map.Entry::getValue))
                .ifPresent(e ->
                        caveats.add(new Caveat.UsedLane(e.getKey(), e.getValue().intValue())));
    }

    private static void surfaces(Pairing pairing, List<Caveat> caveats) {
        List<double[]> blocks = pairing.bySurface().values().stream()
                .filter(b -> b.size() >= 2)
                .map(b -> b.stream().mapToDouble(Pair::difference).toArray())
                .toList();
        boolean varies = blocks.stream().anyMatch(b -> PairedTest.of(b).spread() > 0);
        if (blocks.size() >= 2 && varies) {
            double p = new OneWayAnova().anovaPValue(blocks);
            if (p < Power.ALPHA) {
                caveats.add(new Caveat.SurfacesDisagree(p));
            }
        }
    }
}
