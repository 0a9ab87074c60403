package footing.core.compare;

import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Origin;
import footing.core.fleet.Values;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The inputs in force that differ for a machine of two versions, stated or not. */
final class Changes {
    private final Case before;
    private final Case after;
    private final Set<Ledger.Spot> common;
    private final Set<Changed> found = new LinkedHashSet<>();

    private Changes(Case before, Case after) {
        this.before = before;
        this.after = after;
        common = Ledger.common(before, after);
    }

    static List<Changed> of(Case before, Case after, List<String> machines) {
        Changes changes = new Changes(before, after);
        machines.forEach(changes::add);
        List<Changed> sorted = new ArrayList<>(changes.found);
        sorted.sort(Comparator.comparing(c -> c.input().key().place()));
        return sorted;
    }

    private void add(String machine) {
        Map<Input, InForce> was = inForce(before, machine);
        Map<Input, InForce> is = inForce(after, machine);
        Set<Input> all = new LinkedHashSet<>(was.keySet());
        all.addAll(is.keySet());
        for (Input input : all) {
            InForce old = was.get(input);
            InForce now = is.get(input);
            if (common.contains(Ledger.Spot.of(input)) && differ(old, now)) {
                found.add(new Changed(input, old, now, isDefault(old) && isDefault(now)));
            }
        }
    }

    private static boolean differ(@Nullable InForce old, @Nullable InForce now) {
        return old == null || now == null || !old.value().equals(now.value());
    }

    private static boolean isDefault(@Nullable InForce number) {
        return number != null && number.origin() == Origin.DEFAULT;
    }

    private static Map<Input, InForce> inForce(Case c, String machine) {
        Map<Input, InForce> numbers = new LinkedHashMap<>();
        new Values(c, c.machine(machine)).all().forEach(n -> numbers.put(n.input(), n));
        return numbers;
    }
}
