package footing.core.fleet;

import footing.core.chance.Spread;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The numbers in force for one machine of a case: stated ones as stated, the rest by the defaults of {@link Key}. */
public final class Values {
    private final Case stated;
    private final Case.Machine machine;
    private final Case.Crew crew;

    public Values(Case stated, Case.Machine machine) {
        this.stated = stated;
        this.machine = machine;
        this.crew = stated.crew(machine.crew());
    }

    /** The number in force; empty for a key without default that nobody stated. */
    public Optional<InForce> find(Input input) {
        if (input.key() == Key.UPCHARGE) {
            return Optional.ofNullable(machine.upcharge().get(input.part()))
                    .map(x -> new InForce(input, Spread.of(x), Origin.STATED, ""));
        }
        Numbers numbers = numbers(input);
        Optional<Spread> own = numbers.get(input.key());
        if (own.isPresent()) {
            return Optional.of(new InForce(input, own.get(), numbers.origin(input.key()), ""));
        }
        return input.key()
                .fallback()
                .map(d -> new InForce(input, d.rule().value(beside(input)), Origin.DEFAULT, d.why()));
    }

    /**
     * The value in force.
     *
     * @throws IllegalArgumentException if the key has no default and nobody stated it
     */
    public Spread get(Input input) {
        return find(input)
                .map(InForce::value)
                .orElseThrow(() -> new IllegalArgumentException("nobody stated " + input.path()));
    }

    /**
     * What a number that nobody stated may well be elsewhere, where its default says there is none of it; within its
     * range. Empty for others: a fifth more or less shows what they can do.
     */
    public Optional<Spread> elsewhere(Input input) {
        return input.key()
                .elsewhere()
                .filter(rule ->
                        find(input).filter(x -> x.origin() == Origin.DEFAULT).isPresent())
                .map(rule -> Spread.of(
                        input.key().range().clamp(rule.value(beside(input)).likely())));
    }

    /** Every number this machine's answer may depend on, in the order of a case file. */
    public List<InForce> all() {
        List<Input> inputs = new ArrayList<>();
        Key.of(Place.MONEY).forEach(k -> inputs.add(Input.of(k, "")));
        if (stated.money().loan() != null) {
            Key.of(Place.LOAN).forEach(k -> inputs.add(Input.of(k, "")));
        }
        if (stated.money().tax() != null) {
            Key.of(Place.TAX).forEach(k -> inputs.add(Input.of(k, "")));
        }
        Key.of(Place.CREW).forEach(k -> inputs.add(Input.of(k, crew.id())));
        listed(inputs, Place.FULL_WEEK, crew.fullWeeks().size());
        listed(inputs, Place.FIX, crew.fixes().size());
        for (String assembly : assembliesInPlay()) {
            Key.of(Place.ASSEMBLY).stream()
                    .filter(k -> counts(k, stated.assembly(assembly)))
                    .forEach(k -> inputs.add(Input.of(k, assembly)));
        }
        Key.of(Place.MACHINE).forEach(k -> inputs.add(Input.of(k, machine.id())));
        machine.upcharge().keySet().stream()
                .sorted()
                .forEach(p -> inputs.add(new Input(Key.UPCHARGE, machine.id(), p)));
        return inputs.stream().flatMap(i -> find(i).stream()).toList();
    }

    /** False for what treating costs where nothing is treated and nobody says otherwise. */
    private static boolean counts(Key key, Case.Assembly assembly) {
        boolean ofTreating = key == Key.TREAT_PRICE || key == Key.TREAT_HOURS;
        return !ofTreating
                || assembly.treats() != null
                || assembly.numbers().get(key).isPresent();
    }

    /** The ids of the assemblies of the carried and the considered packages. */
    public Set<String> assembliesInPlay() {
        Set<String> ids = new LinkedHashSet<>();
        List<Case.WheelPackage> packages = new ArrayList<>(machine.consider());
        packages.add(0, machine.carries());
        for (Case.WheelPackage p : packages) {
            ids.add(p.drive());
            ids.add(p.caster());
        }
        return ids;
    }

    private void listed(List<Input> inputs, Place place, int size) {
        for (int i = 0; i < size; i++) {
            for (Key key : Key.of(place)) {
                inputs.add(new Input(key, crew.id(), Integer.toString(i)));
            }
        }
    }

    private Numbers numbers(Input input) {
        Case.Loan loan = stated.money().loan();
        Case.Tax tax = stated.money().tax();
        return switch (input.key().place()) {
            case MONEY -> stated.money().numbers();
            case LOAN -> loan == null ? Numbers.NONE : loan.numbers();
            case TAX -> tax == null ? Numbers.NONE : tax.numbers();
            case CREW -> crew.numbers();
            case FULL_WEEK ->
                crew.fullWeeks().get(Integer.parseInt(input.part())).numbers();
            case FIX -> crew.fixes().get(Integer.parseInt(input.part())).numbers();
            case ASSEMBLY -> stated.assembly(input.owner()).numbers();
            case MACHINE -> machine.numbers();
        };
    }

    private Default.Beside beside(Input input) {
        return new Default.Beside() {
            @Override
            public Spread get(Key key) {
                String owner = key.place() == Place.CREW ? crew.id() : input.owner();
                return Values.this.get(
                        new Input(key, owner, key.place() == input.key().place() ? input.part() : ""));
            }

            @Override
            public Spread ofCarried(Position position, Key key) {
                Case.WheelPackage carried = machine.carries();
                String assembly = position == Position.DRIVE ? carried.drive() : carried.caster();
                return Values.this.get(Input.of(key, assembly));
            }

            @Override
            public Kind kind() {
                return stated.assembly(input.owner()).kind();
            }
        };
    }
}
