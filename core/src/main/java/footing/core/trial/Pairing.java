package footing.core.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Runs paired in the order they were made: on each surface the first of A with the first of B, and so on. So A B B A,
 * A B A B and B A A B all pair neighbors.
 *
 * @param left runs without a partner
 * @param apart pairs with other runs of the same surface between them
 */
public record Pairing(List<Pair> pairs, List<Run> left, int apart) {
    public Pairing {
        pairs = List.copyOf(pairs);
        left = List.copyOf(left);
    }

    /** Pairs runs that stand in the order in which they were made. */
    public static Pairing of(List<Run> runs) {
        Map<String, List<Run>> bySurface = new LinkedHashMap<>();
        runs.forEach(r ->
                bySurface.computeIfAbsent(r.surface(), s -> new ArrayList<>()).add(r));
        List<Pair> pairs = new ArrayList<>();
        List<Run> left = new ArrayList<>();
        int apart = 0;
        for (List<Run> block : bySurface.values()) {
            List<Run> a = block.stream().filter(r -> r.side() == Side.A).toList();
            List<Run> b = block.stream().filter(r -> r.side() == Side.B).toList();
            int n = Math.min(a.size(), b.size());
            for (int i = 0; i < n; i++) {
                pairs.add(new Pair(a.get(i), b.get(i)));
                apart += Math.abs(block.indexOf(a.get(i)) - block.indexOf(b.get(i))) > 1 ? 1 : 0;
            }
            left.addAll(a.subList(n, a.size()));
            left.addAll(b.subList(n, b.size()));
        }
        return new Pairing(pairs, left, apart);
    }

    /** The pairs of each surface, in the order in which the surfaces were first driven on. */
    public Map<String, List<Pair>> bySurface() {
        Map<String, List<Pair>> blocks = new LinkedHashMap<>();
        pairs.forEach(
                p -> blocks.computeIfAbsent(p.surface(), s -> new ArrayList<>()).add(p));
        return blocks;
    }
}
