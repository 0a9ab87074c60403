package footing.core.fleet;

import footing.core.chance.Spread;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One contractor's question as stated: ids, texts and the numbers somebody gave. What nobody gave is not here; {@link
 * Resolver} fills it in from {@link Key}.
 */
public record Case(
        Heading heading,
        Season season,
        Money money,
        List<Crew> crews,
        List<Assembly> assemblies,
        List<WheelPackage> packages,
        List<Machine> machines) {
    public Case {
        crews = List.copyOf(crews);
        assemblies = List.copyOf(assemblies);
        packages = List.copyOf(packages);
        machines = List.copyOf(machines);
    }

    /** What stands at the top: texts, the date of every present value, currency and display units. */
    public record Heading(
            String title, @Nullable String note, Prepared prepared, LocalDate asOf, String currency, boolean si) {}

    /** Names and date as the user wants them on paper. */
    public record Prepared(
            @Nullable String by,
            @Nullable String recipient,
            @Nullable String on) {
        public static final Prepared NOBODY = new Prepared(null, null, null);
    }

    public record Money(
            Numbers numbers, @Nullable Loan loan, @Nullable Tax tax) {}

    public record Loan(Numbers numbers, boolean newOnly) {}

    /** The schedule holds the share of the start cost deducted in each tax year. */
    public record Tax(Numbers numbers, List<Double> schedule) {
        public Tax {
            schedule = List.copyOf(schedule);
        }
    }

    public record Crew(String id, Numbers numbers, List<FullWeek> fullWeeks, List<Fix> fixes) {
        public Crew {
            fullWeeks = List.copyOf(fullWeeks);
            fixes = List.copyOf(fixes);
        }
    }

    public record FullWeek(Season days, Numbers numbers) {}

    /** What is done about a flat. Unstated, sealant would have prevented it unless it replaces a tire. */
    public record Fix(
            String name, boolean replacesTire, @Nullable Boolean statedSealable, Numbers numbers) {
        public boolean sealable() {
            return statedSealable == null ? !replacesTire : statedSealable;
        }
    }

    /**
     * An assembly.
     *
     * @param priced the day its prices are of, where a catalog says so
     */
    public record Assembly(
            String id,
            Kind kind,
            Position position,
            @Nullable String size,
            @Nullable String treats,
            @Nullable LocalDate priced,
            Numbers numbers,
            Measures measures) {
        /** One whose prices have no day and of which nobody measured anything. */
        public Assembly(
                String id,
                Kind kind,
                Position position,
                @Nullable String size,
                @Nullable String treats,
                Numbers numbers) {
            this(id, kind, position, size, treats, null, numbers, Measures.NONE);
        }

        public Assembly with(Numbers others) {
            return new Assembly(id, kind, position, size, treats, priced, others, measures);
        }

        public Assembly with(Measures others) {
            return new Assembly(id, kind, position, size, treats, priced, numbers, others);
        }
    }

    public record WheelPackage(String id, String drive, String caster) {
        public String at(Position position) {
            return position == Position.DRIVE ? drive : caster;
        }
    }

    /**
     * A machine.
     *
     * @param when empty if nobody stated it
     * @param fitted the package that was on it when what was measured after fitting was measured; null if nobody said
     */
    public record Machine(
            String id,
            String kind,
            String crew,
            boolean isNew,
            Numbers numbers,
            WheelPackage carries,
            List<WheelPackage> consider,
            List<When> when,
            Map<String, Double> upcharge,
            Measures measures,
            @Nullable String fitted) {
        public Machine {
            consider = List.copyOf(consider);
            when = List.copyOf(when);
            upcharge = Map.copyOf(upcharge);
        }

        /** One of which nobody measured anything. */
        public Machine(
                String id,
                String kind,
                String crew,
                boolean isNew,
                Numbers numbers,
                WheelPackage carries,
                List<WheelPackage> consider,
                List<When> when,
                Map<String, Double> upcharge) {
            this(id, kind, crew, isNew, numbers, carries, consider, when, upcharge, Measures.NONE, null);
        }

        public Machine with(Numbers others, Map<String, Double> charges) {
            return new Machine(id, kind, crew, isNew, others, carries, consider, when, charges, measures, fitted);
        }

        /** The key its flats are stated under. */
        public Key flatsKey() {
            return numbers.get(Key.FLATS_PER_1000H).isPresent() ? Key.FLATS_PER_1000H : Key.FLATS_PER_SEASON;
        }
    }

    /** The same case with one number changed. */
    public Case with(Input input, Spread value) {
        return Moved.with(this, input, value);
    }

    /** The same case with other measures of one assembly. */
    public Case with(String assembly, Measures measures) {
        List<Assembly> others = assemblies.stream()
                .map(a -> a.id().equals(assembly) ? a.with(measures) : a)
                .toList();
        return new Case(heading, season, money, crews, others, packages, machines);
    }

    public Crew crew(String id) {
        return find(crews.stream().filter(c -> c.id().equals(id)).findFirst(), "crew", id);
    }

    public Assembly assembly(String id) {
        return find(assemblies.stream().filter(a -> a.id().equals(id)).findFirst(), "assembly", id);
    }

    public Machine machine(String id) {
        return find(machines.stream().filter(m -> m.id().equals(id)).findFirst(), "machine", id);
    }

    private static <T> T find(Optional<T> found, String what, String id) {
        return found.orElseThrow(() -> new IllegalArgumentException("no " + what + " '" + id + "' in the case"));
    }
}
