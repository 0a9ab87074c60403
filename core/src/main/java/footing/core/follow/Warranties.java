package footing.core.follow;

import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import footing.core.fleet.Values;
import footing.core.records.Happened;
import footing.core.records.Log;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The warranties of the sets on the machines of a case: by the log where it tells, else by the case. */
public final class Warranties {
    private final Case stated;
    private final LocalDate on;

    private Warranties(Case stated, LocalDate on) {
        this.stated = stated;
        this.on = on;
    }

    /**
     * How each set stands whose assembly has terms.
     *
     * @param on the day it is looked at
     */
    public static List<Warranty> of(Case stated, Log log, LocalDate on) {
        Warranties all = new Warranties(stated, on);
        List<Warranty> found = new ArrayList<>();
        for (Case.Machine m : stated.machines()) {
            Optional<Happened> happened =
                    Happened.since(log, m.id(), stated.heading().asOf());
            for (Position position : Position.values()) {
                all.of(m, position, happened, log).ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Warranty> of(Case.Machine m, Position position, Optional<Happened> since, Log log) {
        Spot spot = position == Position.DRIVE ? Spot.DRIVE : Spot.CASTER;
        Optional<Happened.On> set = Happened.since(log, m.id(), LocalDate.MIN).stream()
                .flatMap(h -> h.on().stream())
                .filter(s -> s.spot() == spot)
                .findFirst();
        String assembly = set.map(Happened.On::assembly).orElse(m.carries().at(position));
        Optional<Case.Assembly> known = stated.assemblies().stream()
                .filter(a -> a.id().equals(assembly))
                .findFirst();
        Optional<Warranty.Terms> terms = known.flatMap(Warranties::terms);
        if (known.isEmpty() || terms.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble hours = set.isPresent() ? set.get().hours() : worn(m, position, since);
        return Optional.of(new Warranty(
                m.id(),
                position,
                assembly,
                set.map(Happened.On::fitted),
                hours,
                terms.get(),
                on,
                price(m, known.get())));
    }

    private static Optional<Warranty.Terms> terms(Case.Assembly a) {
        OptionalDouble hours = a.measures().get(Measure.WARRANTY_HOURS);
        OptionalDouble months = a.measures().get(Measure.WARRANTY_MONTHS);
        return hours.isEmpty() && months.isEmpty() ? Optional.empty() : Optional.of(new Warranty.Terms(hours, months));
    }

    /** Hours on a set of which the log tells nothing: those of the case, and what the machine has run since. */
    private OptionalDouble worn(Case.Machine m, Position position, Optional<Happened> since) {
        Key key = position == Position.DRIVE ? Key.WORN_DRIVE : Key.WORN_CASTER;
        double worn = new Values(stated, m).get(Input.of(key, m.id())).likely();
        boolean known = m.isNew() || m.numbers().get(key).isPresent();
        return known ? OptionalDouble.of(worn + since.map(Happened::hours).orElse(0.0)) : OptionalDouble.empty();
    }

    private double price(Case.Machine m, Case.Assembly a) {
        Values values = new Values(stated, m);
        Key count = a.position() == Position.DRIVE ? Key.COUNT_DRIVE : Key.COUNT_CASTER;
        return values.get(Input.of(count, m.id())).likely()
                * values.get(Input.of(Key.PRICE, a.id())).likely();
    }
}
