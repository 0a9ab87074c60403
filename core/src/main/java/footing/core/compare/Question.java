package footing.core.compare;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.Values;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What differs between two versions of one machine's question, and every mixture of the two. */
final class Question {
    private final Case before;
    private final Case after;
    private final Ledger stated;
    private final Ledger restated;
    private final String machine;
    private final List<List<Input>> groups;
    private final boolean other;

    Question(Case before, Case after, String machine) {
        this.before = before;
        this.after = after;
        this.machine = machine;
        stated = new Ledger(before);
        restated = new Ledger(after);
        List<Input> own =
                Ledger.differing(before, after).stream().filter(this::concerns).toList();
        // Too many to take apart count as what else differs.
        groups = grouped(own.size() < Sharing.MOST ? own : List.of());
        other = differsBesides(groups.stream().flatMap(List::stream).toList());
    }

    String machine() {
        return machine;
    }

    /** How many things differ. */
    int things() {
        return groups.size() + (other ? 1 : 0);
    }

    Part part(int thing, double change) {
        return thing < groups.size()
                ? new Part(Part.Kind.INPUTS, groups.get(thing), "", change)
                : new Part(Part.Kind.OTHER, List.of(), "", change);
    }

    /** The case in which the things of a bit mask are as after, all else as before. */
    Case mixed(int state) {
        int all = (1 << things()) - 1;
        boolean base = other ? (state >> groups.size() & 1) == 1 : state == all;
        Map<Input, Optional<Spread>> puts = new HashMap<>();
        for (int g = 0; g < groups.size(); g++) {
            boolean now = (state >> g & 1) == 1;
            if (now != base) {
                groups.get(g).forEach(i -> puts.put(i, (now ? restated : stated).get(i)));
            }
        }
        return Mixture.of(base ? after : before, puts);
    }

    ResolvedMachine resolved(Case mixed) {
        return Resolver.resolve(mixed, mixed.machine(machine));
    }

    private boolean concerns(Input input) {
        Case.Machine was = before.machine(machine);
        Case.Machine is = after.machine(machine);
        return switch (input.key().place()) {
            case MONEY, LOAN, TAX -> true;
            case CREW, FULL_WEEK, FIX ->
                input.owner().equals(was.crew()) || input.owner().equals(is.crew());
            case ASSEMBLY ->
                inPlay(before, was).contains(input.owner()) || inPlay(after, is).contains(input.owner());
            case MACHINE -> input.owner().equals(machine);
        };
    }

    private static Set<String> inPlay(Case c, Case.Machine m) {
        return new HashSet<>(new Values(c, m).assembliesInPlay());
    }

    /** Numbers that are wrong when only some of them are replaced go together. */
    private List<List<Input>> grouped(List<Input> inputs) {
        boolean meters = metersGoTogether();
        Map<String, List<Input>> groups = new LinkedHashMap<>();
        for (Input input : inputs) {
            String name = switch (input.key()) {
                case FIX_SHARE -> "shares of fixes of " + input.owner();
                case FLATS_PER_SEASON, FLATS_PER_1000H -> "flats";
                case HOURS_NOW, KEEP_UNTIL -> meters ? "meter" : input.path();
                default -> input.path();
            };
            groups.computeIfAbsent(name, n -> new ArrayList<>()).add(input);
        }
        return List.copyOf(groups.values());
    }

    /** True if the meter of one version and the trade of the other leave no hours between them. */
    private boolean metersGoTogether() {
        return !(until(before) > now(after) && until(after) > now(before));
    }

    private double now(Case c) {
        return c.machine(machine)
                .numbers()
                .get(Key.HOURS_NOW)
                .map(Spread::likely)
                .orElse(0.0);
    }

    private double until(Case c) {
        return c.machine(machine)
                .numbers()
                .get(Key.KEEP_UNTIL)
                .map(Spread::likely)
                .orElse(0.0);
    }

    private boolean differsBesides(List<Input> inputs) {
        Map<Input, Optional<Spread>> puts = new HashMap<>();
        inputs.forEach(i -> puts.put(i, stated.get(i)));
        return !resolved(Mixture.of(after, puts)).equals(resolved(before));
    }
}
