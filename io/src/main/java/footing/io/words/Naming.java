package footing.io.words;

import footing.core.chance.Metalog;
import footing.core.fleet.Called;
import footing.core.fleet.Case;
import footing.core.fleet.Dimension;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;

/** What a number of a case is called, what it is and where it comes from. */
public final class Naming {
    private Naming() {}

    /** 'share of slipped work done another day (crew streets)'. */
    public static String of(Case stated, Input input) {
        String label = label(input);
        return switch (input.key().place()) {
            case MONEY, LOAN, TAX -> label;
            case CREW -> label + " (" + crew(input.owner()) + ")";
            case FULL_WEEK -> label + " (" + crew(input.owner()) + ")";
            case FIX ->
                label + ", "
                        + stated.crew(input.owner())
                                .fixes()
                                .get(Integer.parseInt(input.part()))
                                .name() + " (" + crew(input.owner()) + ")";
            case ASSEMBLY -> label + " (" + Called.in(stated).assembly(input.owner()) + ")";
            case MACHINE ->
                label + " (" + input.owner()
                        + (input.part().isEmpty()
                                ? ""
                                : ", " + Called.in(stated).wheels(input.part())) + ")";
        };
    }

    /** 'crew streets'; an id that says so itself is not told twice. */
    public static String crew(String id) {
        if (id.equalsIgnoreCase("crew")) {
            return "the crew";
        }
        return id.regionMatches(true, 0, "crew", 0, "crew".length()) ? id : "crew " + id;
    }

    /** What it is called where its owner stands beside it. */
    public static String withoutOwner(Case stated, Input input) {
        String label = label(input);
        return switch (input.key().place()) {
            case FULL_WEEK ->
                input.part().equals("0") ? label : label + ", stretch " + (Integer.parseInt(input.part()) + 1);
            case MACHINE ->
                input.part().isEmpty()
                        ? label
                        : label + ", " + Called.in(stated).wheels(input.part());
            default -> label;
        };
    }

    /** 'streets: plug on site'. */
    public static String fix(Case stated, Input input) {
        return input.owner() + ": "
                + stated.crew(input.owner())
                        .fixes()
                        .get(Integer.parseInt(input.part()))
                        .name();
    }

    /** 'of the flats at the drives' is a share of them. */
    static String label(Input input) {
        String label = input.key().label();
        return label.startsWith("of ") ? "share " + label : label;
    }

    /** What is moved where it is asked what moves an answer: what stays as it is beside it is said. */
    public static String moved(Case stated, Input input) {
        boolean perSeason = input.key() == Key.HOURS_PER_YEAR
                && stated.machine(input.owner()).flatsKey() == Key.FLATS_PER_SEASON;
        return of(stated, input) + (perSeason ? ", flats a season as they are" : "");
    }

    /** A value in the unit people would use; a three-point from low to high. */
    public static String value(InForce number) {
        Dimension dimension = number.input().key().dimension();
        return number.value() instanceof Metalog m
                ? value(dimension, m.low()) + " to " + value(dimension, m.high())
                : value(dimension, number.value().likely());
    }

    public static String value(Dimension dimension, double x) {
        return switch (dimension) {
            case MONEY -> x == Math.rint(x) ? Figures.money(x) : Figures.rate(x);
            case COUNT -> Figures.count(x);
            case METER_HOURS -> Figures.money(x) + " h";
            case TIME -> Figures.time(x);
            case SHARE -> share(x);
        };
    }

    private static String share(double x) {
        double percent = 100 * x;
        return Math.abs(percent - Math.rint(percent)) < 1e-9 ? Figures.percent(x) : Figures.count(percent) + " %";
    }

    /** Where a number comes from. */
    public static String provenance(InForce number) {
        return switch (number.origin()) {
            case STATED -> "yours";
            case GUESSED -> "a guess of the case file";
            case LEARNED -> "from your records";
            case TYPICAL -> "typical, not a quote";
            case DEFAULT -> "a guess: " + number.why();
        };
    }

    /** The same, knowing the case: a price nobody stated may be taken from one that was. */
    public static String provenance(Case stated, InForce number) {
        Input input = number.input();
        boolean taken = number.origin() == Origin.DEFAULT
                && (input.key() == Key.RENEWAL_PRICE || input.key() == Key.TIRE_PRICE);
        return taken ? takenFrom(stated, number) : provenance(number);
    }

    private static String takenFrom(Case stated, InForce number) {
        Case.Assembly a = stated.assembly(number.input().owner());
        boolean tire = number.input().key() == Key.RENEWAL_PRICE
                && a.kind().holdsAir()
                && a.numbers().get(Key.TIRE_PRICE).isPresent();
        Origin origin = a.numbers().origin(tire ? Key.TIRE_PRICE : Key.PRICE);
        String what = tire ? " price of the tire alone" : " price of the whole assembly";
        return switch (origin) {
            case STATED -> "a guess: taken from your" + what;
            case TYPICAL -> "a guess: taken from the typical" + what;
            default -> provenance(number);
        };
    }

    /** True for a number somebody should be told was not the user's. */
    public static boolean isGuess(InForce number) {
        return number.origin().isGuess() || number.origin() == Origin.TYPICAL;
    }
}
