package footing.core.fleet;

import footing.core.chance.Spread;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** A case with one of its numbers changed. */
final class Moved {
    private Moved() {}

    static Case with(Case c, Input input, Spread value) {
        UnaryOperator<Numbers> put = n -> n.with(input.key(), value);
        return switch (input.key().place()) {
            case MONEY, LOAN, TAX -> withMoney(c, money(c.money(), input.key().place(), put));
            case CREW, FULL_WEEK, FIX ->
                withCrews(c, replace(c.crews(), x -> x.id().equals(input.owner()), x -> crew(x, input, put)));
            case ASSEMBLY ->
                withAssemblies(
                        c,
                        replace(
                                c.assemblies(),
                                x -> x.id().equals(input.owner()),
                                x -> x.with(put.apply(x.numbers()))));
            case MACHINE ->
                withMachines(
                        c, replace(c.machines(), x -> x.id().equals(input.owner()), x -> machine(x, input, value)));
        };
    }

    private static Case.Money money(Case.Money m, Place place, UnaryOperator<Numbers> put) {
        Case.Loan loan = m.loan();
        Case.Tax tax = m.tax();
        return switch (place) {
            case LOAN ->
                new Case.Money(
                        m.numbers(),
                        loan == null ? null : new Case.Loan(put.apply(loan.numbers()), loan.newOnly()),
                        tax);
            case TAX ->
                new Case.Money(
                        m.numbers(), loan, tax == null ? null : new Case.Tax(put.apply(tax.numbers()), tax.schedule()));
            default -> new Case.Money(put.apply(m.numbers()), loan, tax);
        };
    }

    private static Case.Crew crew(Case.Crew crew, Input input, UnaryOperator<Numbers> put) {
        return switch (input.key().place()) {
            case FULL_WEEK ->
                new Case.Crew(
                        crew.id(),
                        crew.numbers(),
                        replaceAt(
                                crew.fullWeeks(),
                                input.part(),
                                w -> new Case.FullWeek(w.days(), put.apply(w.numbers()))),
                        crew.fixes());
            case FIX ->
                new Case.Crew(
                        crew.id(),
                        crew.numbers(),
                        crew.fullWeeks(),
                        replaceAt(
                                crew.fixes(),
                                input.part(),
                                f -> new Case.Fix(
                                        f.name(), f.replacesTire(), f.statedSealable(), put.apply(f.numbers()))));
            default -> new Case.Crew(crew.id(), put.apply(crew.numbers()), crew.fullWeeks(), crew.fixes());
        };
    }

    private static Case.Machine machine(Case.Machine m, Input input, Spread value) {
        Map<String, Double> upcharge = new HashMap<>(m.upcharge());
        Numbers numbers = m.numbers();
        if (input.key() == Key.UPCHARGE) {
            upcharge.put(input.part(), value.likely());
        } else {
            numbers = numbers.with(input.key(), value);
        }
        return m.with(numbers, upcharge);
    }

    private static <T> List<T> replace(List<T> list, Predicate<T> which, UnaryOperator<T> change) {
        return list.stream().map(x -> which.test(x) ? change.apply(x) : x).toList();
    }

    private static <T> List<T> replaceAt(List<T> list, String index, UnaryOperator<T> change) {
        List<T> changed = new ArrayList<>(list);
        int i = Integer.parseInt(index);
        changed.set(i, change.apply(list.get(i)));
        return changed;
    }

    private static Case withMoney(Case c, Case.Money money) {
        return new Case(c.heading(), c.season(), money, c.crews(), c.assemblies(), c.packages(), c.machines());
    }

    private static Case withCrews(Case c, List<Case.Crew> crews) {
        return new Case(c.heading(), c.season(), c.money(), crews, c.assemblies(), c.packages(), c.machines());
    }

    private static Case withAssemblies(Case c, List<Case.Assembly> assemblies) {
        return new Case(c.heading(), c.season(), c.money(), c.crews(), assemblies, c.packages(), c.machines());
    }

    private static Case withMachines(Case c, List<Case.Machine> machines) {
        return new Case(c.heading(), c.season(), c.money(), c.crews(), c.assemblies(), c.packages(), machines);
    }
}
