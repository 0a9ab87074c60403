package footing.core.compare;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Every number a case states, by its input, and the spots where one could stand. */
final class Ledger {
    private final Map<Input, Spread> stated = new LinkedHashMap<>();
    private final Set<Spot> spots = new LinkedHashSet<>();

    /** One group of numbers: of a crew, of a fix. */
    record Spot(Place place, String owner, String part) {
        static Spot of(Input input) {
            String part = input.key() == Key.UPCHARGE ? "" : input.part();
            return new Spot(input.key().place(), input.owner(), part);
        }
    }

    Ledger(Case c) {
        add(new Spot(Place.MONEY, "", ""), c.money().numbers());
        Case.Loan loan = c.money().loan();
        Case.Tax tax = c.money().tax();
        if (loan != null) {
            add(new Spot(Place.LOAN, "", ""), loan.numbers());
        }
        if (tax != null) {
            add(new Spot(Place.TAX, "", ""), tax.numbers());
        }
        c.crews().forEach(this::addCrew);
        c.assemblies().forEach(a -> add(new Spot(Place.ASSEMBLY, a.id(), ""), a.numbers()));
        for (Case.Machine m : c.machines()) {
            add(new Spot(Place.MACHINE, m.id(), ""), m.numbers());
            m.upcharge().keySet().stream()
                    .sorted()
                    .forEach(p -> stated.put(
                            new Input(Key.UPCHARGE, m.id(), p),
                            Spread.of(m.upcharge().getOrDefault(p, 0.0))));
        }
    }

    private void addCrew(Case.Crew crew) {
        add(new Spot(Place.CREW, crew.id(), ""), crew.numbers());
        for (int i = 0; i < crew.fullWeeks().size(); i++) {
            add(
                    new Spot(Place.FULL_WEEK, crew.id(), Integer.toString(i)),
                    crew.fullWeeks().get(i).numbers());
        }
        for (int i = 0; i < crew.fixes().size(); i++) {
            add(
                    new Spot(Place.FIX, crew.id(), Integer.toString(i)),
                    crew.fixes().get(i).numbers());
        }
    }

    private void add(Spot spot, Numbers numbers) {
        spots.add(spot);
        for (Key key : Key.of(spot.place())) {
            numbers.get(key).ifPresent(x -> stated.put(new Input(key, spot.owner(), spot.part()), x));
        }
    }

    Optional<Spread> get(Input input) {
        return Optional.ofNullable(stated.get(input));
    }

    /** The spots of two cases that are the same one: fixes by their names, full weeks by their days, else ids. */
    static Set<Spot> common(Case a, Case b) {
        Set<Spot> common = new HashSet<>(new Ledger(a).spots);
        common.retainAll(new Ledger(b).spots);
        common.removeIf(s -> switch (s.place()) {
            case FIX -> !fixes(a, s).equals(fixes(b, s));
            case FULL_WEEK -> !weeks(a, s).equals(weeks(b, s));
            default -> false;
        });
        return common;
    }

    private static List<String> fixes(Case c, Spot s) {
        return c.crew(s.owner()).fixes().stream().map(Case.Fix::name).toList();
    }

    private static List<Object> weeks(Case c, Spot s) {
        return c.crew(s.owner()).fullWeeks().stream()
                .<Object>map(Case.FullWeek::days)
                .toList();
    }

    /** Inputs at a common spot that are stated differently, or in one case only. */
    static List<Input> differing(Case a, Case b) {
        Ledger first = new Ledger(a);
        Ledger second = new Ledger(b);
        Set<Spot> common = common(a, b);
        Set<Input> all = new LinkedHashSet<>(first.stated.keySet());
        all.addAll(second.stated.keySet());
        List<Input> differing = new ArrayList<>();
        for (Input input : all) {
            if (common.contains(Spot.of(input)) && !first.get(input).equals(second.get(input))) {
                differing.add(input);
            }
        }
        return differing;
    }
}
