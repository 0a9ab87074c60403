package footing.core.answer;

import footing.core.chance.Bounds;
import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Measures;
import footing.core.fleet.Numbers;
import footing.core.fleet.Position;
import footing.core.fleet.Season;
import footing.core.fleet.When;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A small case to be changed: one rider of one crew on air all round, and four other packages: sealant poured in,
 * airless drives, airless all round, and the carried set under another id. All figures are invented.
 */
public final class SmallCase {
    public static final String RIDER = "rider";
    public static final String CREW = "north";

    static final Case.WheelPackage PLAIN = new Case.WheelPackage("plain", "air-drive", "air-caster");
    static final Case.WheelPackage SEALED = new Case.WheelPackage("sealed", "sealed-drive", "air-caster");
    static final Case.WheelPackage FIRM = new Case.WheelPackage("firm", "firm-drive", "air-caster");
    static final Case.WheelPackage FIRM_ALL = new Case.WheelPackage("firm-all", "firm-drive", "firm-caster");
    static final Case.WheelPackage TWIN = new Case.WheelPackage("twin", "air-drive", "air-caster");

    private SmallCase() {}

    public static Case build() {
        return new Case(
                new Case.Heading("Small", null, Case.Prepared.NOBODY, LocalDate.of(2027, 3, 15), "USD", false),
                new Season(MonthDay.of(4, 1), MonthDay.of(11, 15)),
                new Case.Money(Numbers.NONE, null, null),
                List.of(crew(CREW)),
                assemblies(),
                List.of(PLAIN, SEALED, FIRM, FIRM_ALL, TWIN),
                List.of(machine(RIDER, CREW)));
    }

    /** The same machine about to be bought, with a loan on every start cost and tax. */
    public static Case buying() {
        Case c = build();
        Case.Loan loan =
                new Case.Loan(numbers(Map.of(Key.LOAN_RATE, 0.069, Key.LOAN_MONTHS, 36, Key.LOAN_DOWN, 0.1)), false);
        Case.Tax tax =
                new Case.Tax(numbers(Map.of(Key.TAX_RATE, 0.27)), List.of(0.2, 0.32, 0.192, 0.1152, 0.1152, 0.0576));
        Case.Machine m = c.machine(RIDER);
        Numbers fresh = m.numbers()
                .with(Key.HOURS_NOW, Spread.of(0))
                .with(Key.WORN_DRIVE, Spread.of(0))
                .with(Key.WORN_CASTER, Spread.of(0));
        Case.Machine bought = new Case.Machine(
                m.id(),
                m.kind(),
                m.crew(),
                true,
                fresh,
                m.carries(),
                m.consider(),
                List.of(When.NOW),
                Map.of("firm", 910.0));
        return machines(money(c, new Case.Money(c.money().numbers(), loan, tax)), all -> List.of(bought));
    }

    /** Its machine with what was measured of it, and the package that was on it when it was fitted. */
    public static Case.Machine measured(Measures measures, @Nullable String fitted) {
        Case.Machine m = build().machine(RIDER);
        return new Case.Machine(
                m.id(),
                m.kind(),
                m.crew(),
                m.isNew(),
                m.numbers(),
                m.carries(),
                m.consider(),
                m.when(),
                m.upcharge(),
                measures,
                fitted);
    }

    static Case.Crew crew(String id) {
        Numbers numbers = numbers(Map.of(Key.PEOPLE, 2, Key.WAGE, 21, Key.BILLING, 118))
                .with(Key.MAKE_UP_LATER, new Metalog(0.2, 0.5, 0.8, Bounds.SHARE));
        Case.FullWeek rush = new Case.FullWeek(
                new Season(MonthDay.of(4, 20), MonthDay.of(6, 10)),
                numbers(Map.of(Key.FULL_TODAY, 0, Key.FULL_LATER, 0.2)));
        return new Case.Crew(
                id,
                numbers,
                List.of(rush),
                List.of(
                        fix("plug", false, 0.5, 2, positive(0.3, 0.5, 1)),
                        fix("shop", false, 0.3, 25, positive(1, 1.75, 4)),
                        fix("ruined", true, 0.2, 15, positive(1.2, 2.5, 6))));
    }

    private static Case.Fix fix(String name, boolean replaces, double share, double cost, Spread delay) {
        Numbers numbers =
                numbers(Map.of(Key.FIX_SHARE, share, Key.FIX_COST, cost)).with(Key.DELAY, delay);
        return new Case.Fix(name, replaces, null, numbers);
    }

    static Case.Machine machine(String id, String crew) {
        Numbers numbers = numbers(Map.of(
                        Key.HOURS_NOW, 300,
                        Key.KEEP_UNTIL, 2300,
                        Key.HOURS_PER_YEAR, 450,
                        Key.CREW_OUTPUT, 0.6,
                        Key.WORN_DRIVE, 210,
                        Key.WORN_CASTER, 300))
                .with(Key.FLATS_PER_SEASON, positive(2, 4, 9));
        return new Case.Machine(
                id, "rider", crew, false, numbers, PLAIN, List.of(SEALED, FIRM, FIRM_ALL, TWIN), List.of(), Map.of());
    }

    private static List<Case.Assembly> assemblies() {
        return List.of(
                assembly(
                        "air-drive",
                        Kind.AIR,
                        null,
                        positive(400, 650, 1000),
                        Map.of(
                                Key.PRICE,
                                245,
                                Key.TIRE_PRICE,
                                165,
                                Key.TAKE_OFF,
                                0.3,
                                Key.TRADE_DEDUCTION,
                                0.4,
                                Key.SCRAP_FEE,
                                6)),
                assembly(
                        "air-caster",
                        Kind.AIR,
                        null,
                        positive(500, 900, 1400),
                        Map.of(Key.PRICE, 95, Key.TIRE_PRICE, 62, Key.TAKE_OFF, 0.2, Key.TRADE_DEDUCTION, 0.3)),
                assembly(
                        "sealed-drive",
                        Kind.SEALANT,
                        "air-drive",
                        positive(400, 650, 1000),
                        Map.of(Key.PRICE, 265, Key.TIRE_PRICE, 185, Key.TREAT_PRICE, 19, Key.TRADE_DEDUCTION, 0.4)),
                assembly(
                        "firm-drive",
                        Kind.AIRLESS,
                        null,
                        positive(1100, 1500, 2100),
                        Map.of(Key.PRICE, 720, Key.LIFE_UNSURE, 0.2, Key.TRADE_CREDIT, 0.2, Key.CARRY_ON, 0.5)),
                assembly(
                        "firm-caster",
                        Kind.AIRLESS,
                        null,
                        positive(1500, 2500, 3600),
                        Map.of(Key.PRICE, 210, Key.TRADE_CREDIT, 0.2)));
    }

    static Case.Assembly assembly(
            String id, Kind kind, @Nullable String treats, Spread life, Map<Key, ? extends Number> values) {
        Position position = id.endsWith("drive") ? Position.DRIVE : Position.CASTER;
        return new Case.Assembly(
                id, kind, position, null, treats, numbers(values).with(Key.LIFE, life));
    }

    static Numbers numbers(Map<Key, ? extends Number> values) {
        Numbers numbers = Numbers.NONE;
        for (Map.Entry<Key, ? extends Number> e : values.entrySet()) {
            numbers = numbers.with(e.getKey(), Spread.of(e.getValue().doubleValue()));
        }
        return numbers;
    }

    static Spread positive(double low, double likely, double high) {
        return new Metalog(low, likely, high, Bounds.POSITIVE);
    }

    public static Case with(Case c, Key key, String owner, double value) {
        return c.with(Input.of(key, owner), Spread.of(value));
    }

    static Case money(Case c, Case.Money money) {
        return new Case(c.heading(), c.season(), money, c.crews(), c.assemblies(), c.packages(), c.machines());
    }

    public static Case machines(Case c, UnaryOperator<List<Case.Machine>> change) {
        return new Case(
                c.heading(),
                c.season(),
                c.money(),
                c.crews(),
                c.assemblies(),
                c.packages(),
                change.apply(c.machines()));
    }

    /** The rider considering these packages at these times. */
    public static Case considering(Case c, List<Case.WheelPackage> consider, List<When> when) {
        return machines(
                c,
                all -> all.stream()
                        .map(m -> new Case.Machine(
                                m.id(),
                                m.kind(),
                                m.crew(),
                                m.isNew(),
                                m.numbers(),
                                m.carries(),
                                consider,
                                when,
                                m.upcharge()))
                        .toList());
    }

    /** With a crew, an assembly and a package nobody uses. */
    static Case withIdleThings(Case c) {
        List<Case.Crew> crews = new ArrayList<>(c.crews());
        crews.add(0, crew("aside"));
        List<Case.Assembly> assemblies = new ArrayList<>(c.assemblies());
        assemblies.add(0, assembly("spare-drive", Kind.FOAM, null, positive(800, 1200, 1700), Map.of(Key.PRICE, 400)));
        List<Case.WheelPackage> packages = new ArrayList<>(c.packages());
        packages.add(0, new Case.WheelPackage("spare", "spare-drive", "air-caster"));
        return new Case(c.heading(), c.season(), c.money(), crews, assemblies, packages, c.machines());
    }
}
