package footing.core.compare;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Numbers;
import footing.core.fleet.Origin;
import footing.core.fleet.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A case with some of its numbers stated as in another one, or left to their defaults as there. */
final class Mixture {
    private final Map<Ledger.Spot, Map<Input, Optional<Spread>>> puts = new HashMap<>();

    private Mixture(Map<Input, Optional<Spread>> puts) {
        puts.forEach((input, value) -> this.puts
                .computeIfAbsent(Ledger.Spot.of(input), s -> new HashMap<>())
                .put(input, value));
    }

    static Case of(Case base, Map<Input, Optional<Spread>> puts) {
        return puts.isEmpty() ? base : new Mixture(puts).mixed(base);
    }

    private Case mixed(Case c) {
        return new Case(
                c.heading(),
                c.season(),
                money(c.money()),
                c.crews().stream().map(this::crew).toList(),
                c.assemblies().stream().map(this::assembly).toList(),
                c.packages(),
                c.machines().stream().map(this::machine).toList());
    }

    private Case.Money money(Case.Money m) {
        Case.Loan loan = m.loan();
        Case.Tax tax = m.tax();
        return new Case.Money(
                numbers(m.numbers(), Place.MONEY, "", ""),
                loan == null ? null : new Case.Loan(numbers(loan.numbers(), Place.LOAN, "", ""), loan.newOnly()),
                tax == null ? null : new Case.Tax(numbers(tax.numbers(), Place.TAX, "", ""), tax.schedule()));
    }

    private Case.Crew crew(Case.Crew c) {
        List<Case.FullWeek> weeks = new ArrayList<>();
        for (Case.FullWeek w : c.fullWeeks()) {
            String part = Integer.toString(weeks.size());
            weeks.add(new Case.FullWeek(w.days(), numbers(w.numbers(), Place.FULL_WEEK, c.id(), part)));
        }
        List<Case.Fix> fixes = new ArrayList<>();
        for (Case.Fix f : c.fixes()) {
            String part = Integer.toString(fixes.size());
            fixes.add(new Case.Fix(
                    f.name(), f.replacesTire(), f.statedSealable(), numbers(f.numbers(), Place.FIX, c.id(), part)));
        }
        return new Case.Crew(c.id(), numbers(c.numbers(), Place.CREW, c.id(), ""), weeks, fixes);
    }

    private Case.Assembly assembly(Case.Assembly a) {
        return a.with(numbers(a.numbers(), Place.ASSEMBLY, a.id(), ""));
    }

    private Case.Machine machine(Case.Machine m) {
        Map<String, Double> upcharge = new HashMap<>(m.upcharge());
        at(Place.MACHINE, m.id(), "").forEach((input, value) -> {
            if (input.key() == Key.UPCHARGE) {
                upcharge.remove(input.part());
                value.ifPresent(x -> upcharge.put(input.part(), x.likely()));
            }
        });
        return m.with(numbers(m.numbers(), Place.MACHINE, m.id(), ""), upcharge);
    }

    private Map<Input, Optional<Spread>> at(Place place, String owner, String part) {
        return puts.getOrDefault(new Ledger.Spot(place, owner, part), Map.of());
    }

    private Numbers numbers(Numbers before, Place place, String owner, String part) {
        Map<Input, Optional<Spread>> here = at(place, owner, part);
        if (here.isEmpty()) {
            return before;
        }
        Map<Key, Numbers.Stated> stated = new TreeMap<>(before.stated());
        here.forEach((input, value) -> {
            if (input.key() != Key.UPCHARGE) {
                stated.remove(input.key());
                value.ifPresent(x -> stated.put(input.key(), new Numbers.Stated(x, Origin.STATED)));
            }
        });
        return new Numbers(stated);
    }
}
