package footing.core.fleet;

import footing.core.chance.Spread;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One machine's question, self-contained: everything its futures depend on. Arrays by {@link Position} are lists of
 * two, drive first.
 *
 * @param hoursLeft operating hours to the trade, X
 * @param flatsPerSeason flats of the whole machine on air tires in a year of {@code hoursPerYear}
 * @param assemblies those the entries use, by id
 * @param entries what is compared; the first is the carried package
 */
public record ResolvedMachine(
        String id,
        String kind,
        boolean isNew,
        LocalDate asOf,
        Season season,
        double hoursLeft,
        double hoursPerYear,
        double crewOutput,
        Spread flatsPerSeason,
        List<Double> flatsAt,
        double wornTireEffect,
        double groundWear,
        List<Integer> counts,
        List<Double> worn,
        double noNewSetWithin,
        double runOut,
        double relevel,
        Terms terms,
        ResolvedCrew crew,
        Map<String, ResolvedAssembly> assemblies,
        List<Entry> entries) {
    /**
     * A package with its time.
     *
     * @param upcharge the stated price of ordering it on a new machine
     */
    public record Entry(String id, When when, String drive, String caster, OptionalDouble upcharge) {
        public String at(Position position) {
            return position == Position.DRIVE ? drive : caster;
        }
    }

    public ResolvedMachine {
        flatsAt = List.copyOf(flatsAt);
        counts = List.copyOf(counts);
        worn = List.copyOf(worn);
        assemblies = Map.copyOf(assemblies);
        entries = List.copyOf(entries);
        if (!(hoursLeft > 0)) {
            throw new IllegalArgumentException("machine " + id + " has no hours left: " + hoursLeft);
        }
    }

    public Entry carried() {
        return entries.get(0);
    }

    public ResolvedAssembly assembly(Entry entry, Position position) {
        ResolvedAssembly found = assemblies.get(entry.at(position));
        if (found == null) {
            throw new IllegalArgumentException("no assembly '" + entry.at(position) + "'");
        }
        return found;
    }

    public double flatsAt(Position position) {
        return flatsAt.get(index(position));
    }

    public int count(Position position) {
        return counts.get(index(position));
    }

    /** Hours on the set that is on the machine now. */
    public double worn(Position position) {
        return worn.get(index(position));
    }

    private static int index(Position position) {
        return position == Position.DRIVE ? 0 : 1;
    }

    /** True if the entry carries another assembly than the machine does now. */
    public boolean differs(Entry entry, Position position) {
        return !entry.at(position).equals(carried().at(position));
    }

    /** The same question about some of the entries; the first must be the carried one. */
    public ResolvedMachine about(List<Entry> some) {
        return changed(flatsPerSeason, some);
    }

    /** The same question with flats coming {@code factor} times as often. */
    public ResolvedMachine withFlatsTimes(double factor) {
        return changed(flatsPerSeason.times(factor), entries);
    }

    private ResolvedMachine changed(Spread flats, List<Entry> some) {
        return new ResolvedMachine(
                id,
                kind,
                isNew,
                asOf,
                season,
                hoursLeft,
                hoursPerYear,
                crewOutput,
                flats,
                flatsAt,
                wornTireEffect,
                groundWear,
                counts,
                worn,
                noNewSetWithin,
                runOut,
                relevel,
                terms,
                crew,
                assemblies,
                some);
    }
}
