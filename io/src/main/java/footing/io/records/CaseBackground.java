package footing.io.records;

import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Position;
import footing.core.fleet.Values;
import footing.core.records.Background;
import footing.core.records.LifePrior;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a case knows beside its records. Only what learning doesn't replace counts here, so that a case learns the same
 * whether its own figures or learned ones stand in it.
 */
public final class CaseBackground implements Background {
    /** Typical lives by kind, in hours, and how unsure; common practice, no source. */
    private static final double AIR_LIFE = 650;

    private static final double CASTER_LIFE = 900;
    private static final double AIRLESS_LIFE = 1600;
    private static final double LIFE_UNSURE = 0.6;

    private final Case stated;

    public CaseBackground(Case stated) {
        this.stated = stated;
    }

    private Optional<Case.Machine> machine(String id) {
        return stated.machines().stream().filter(m -> m.id().equals(id)).findFirst();
    }

    private Optional<Case.Assembly> assembly(String id) {
        return stated.assemblies().stream().filter(a -> a.id().equals(id)).findFirst();
    }

    @Override
    public String crew(String machine) {
        return machine(machine).map(Case.Machine::crew).orElse("");
    }

    @Override
    public Set<String> machines() {
        Set<String> ids = new LinkedHashSet<>();
        stated.machines().forEach(m -> ids.add(m.id()));
        return ids;
    }

    @Override
    public double flatsAt(String machine, Spot spot) {
        return machine(machine)
                .map(m -> {
                    Key key = spot == Spot.DRIVE ? Key.FLATS_AT_DRIVE : Key.FLATS_AT_CASTER;
                    return new Values(stated, m).get(Input.of(key, machine)).mean();
                })
                .orElseGet(() -> Background.super.flatsAt(machine, spot));
    }

    /** The share of hits that are a flat on this assembly, of those that are one on air; by the crew's fixes. */
    @Override
    public double ofAir(String machine, String assembly) {
        Optional<Case.Machine> m = machine(machine);
        Optional<Case.Assembly> a = assembly(assembly);
        if (m.isEmpty() || a.isEmpty()) {
            return 1;
        }
        Values values = new Values(stated, m.get());
        double sealed = values.get(Input.of(Key.FLAT_FACTOR, assembly)).mean();
        double ruined = values.get(Input.of(Key.RUIN_FACTOR, assembly)).mean();
        double open = a.get().kind().holdsAir() ? 1 : 0;
        Map<String, Double> shares = fixes(m.get().crew());
        double ofAir = 0;
        for (Case.Fix fix : stated.crew(m.get().crew()).fixes()) {
            double here = fix.replacesTire() ? ruined : fix.sealable() ? sealed : open;
            ofAir += here * shares.getOrDefault(fix.name(), 0.0);
        }
        return ofAir;
    }

    @Override
    public String carried(String machine, Spot spot) {
        Position position = spot == Spot.DRIVE ? Position.DRIVE : Position.CASTER;
        return machine(machine).map(m -> m.carries().at(position)).orElse("");
    }

    /** Hours a year times the seasons between the two days, parts of a season by its days. */
    @Override
    public OptionalDouble hours(String machine, LocalDate from, LocalDate to) {
        Optional<Case.Machine> m = machine(machine);
        if (m.isEmpty() || to.isBefore(from)) {
            return OptionalDouble.empty();
        }
        double seasons = 0;
        for (int year = from.getYear() - 1; year <= to.getYear(); year++) {
            LocalDate start = stated.season().startIn(year);
            LocalDate end = stated.season().endOfSeasonFrom(year);
            LocalDate first = start.isAfter(from) ? start : from;
            LocalDate last = end.isBefore(to) ? end : to;
            if (!last.isBefore(first)) {
                seasons += (ChronoUnit.DAYS.between(first, last) + 1.0) / (ChronoUnit.DAYS.between(start, end) + 1.0);
            }
        }
        double perYear = new Values(stated, m.get())
                .get(Input.of(Key.HOURS_PER_YEAR, machine))
                .mean();
        return OptionalDouble.of(perYear * seasons);
    }

    @Override
    public Set<String> takers(String assembly) {
        Set<String> takers = new LinkedHashSet<>();
        for (Case.Machine m : stated.machines()) {
            if (m.carries().drive().equals(assembly) || m.carries().caster().equals(assembly)) {
                takers.add(m.id());
            }
        }
        return takers;
    }

    @Override
    public Map<String, Double> fixes(String crew) {
        Map<String, Double> shares = new LinkedHashMap<>();
        stated.crews().stream()
                .filter(c -> c.id().equals(crew))
                .map(Case.Crew::fixes)
                .flatMap(List::stream)
                .forEach(f -> shares.merge(
                        f.name(),
                        f.numbers().before(Key.FIX_SHARE).orElseThrow().likely(),
                        Double::sum));
        return shares;
    }

    @Override
    public LifePrior life(String assembly) {
        LifePrior common = LifePrior.COMMON;
        return assembly(assembly)
                .map(a -> new LifePrior(typical(a), LIFE_UNSURE, common.shape(), common.shapeUnsure()))
                .orElse(common);
    }

    private static double typical(Case.Assembly a) {
        if (a.kind() == Kind.AIRLESS) {
            return AIRLESS_LIFE;
        }
        return a.position() == Position.CASTER ? CASTER_LIFE : AIR_LIFE;
    }
}
