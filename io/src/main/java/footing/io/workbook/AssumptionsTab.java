package footing.io.workbook;

import footing.core.chance.Metalog;
import footing.core.fleet.Case;
import footing.core.fleet.Dimension;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.io.words.Naming;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Every number the answer rests on: its value or three values, its unit, whose it is and where it stands in the case
 * file. A default that follows from another number is a formula.
 */
final class AssumptionsTab implements Cells {
    private static final int LOW = 1;
    private static final int LIKELY = 2;
    private static final int HIGH = 3;
    private static final int FIRST = 4;

    private static final Map<Key, String> NAMES = Map.of(
            Key.DISCOUNT_RATE, "DiscountRate",
            Key.INFLATION, "Inflation",
            Key.TAX_RATE, "TaxRate",
            Key.LOAN_RATE, "LoanRate",
            Key.LOAN_MONTHS, "LoanMonths",
            Key.LOAN_DOWN, "LoanDown");

    private final Tab tab;
    private final Case stated;
    private final Map<Input, Integer> rows = new LinkedHashMap<>();
    private int row = FIRST;

    AssumptionsTab(Tab tab, Case stated) {
        this.tab = tab;
        this.stated = stated;
    }

    void write(Book book, Iterable<InForce> numbers) {
        tab.text(0, 0, "Assumptions", Look.TITLE);
        tab.note(
                1,
                6,
                "Low, likely and high: one time in ten it is below the low, one in ten above the high. Times are in hours.");
        tab.note(
                2,
                6,
                "Rates, prices at the start and the loan move the cash flow sheets; everything else moves 'Change me' and"
                        + " the engines, and the cash flows when Footing answers anew.");
        tab.heads(
                FIRST - 1, 0, 7, List.of("number", "low", "value", "high", "unit", "whose", "place in the case file"));
        book.name("AsOf", date());
        List<InForce> all = new ArrayList<>();
        numbers.forEach(all::add);
        for (InForce number : all) {
            rows.put(number.input(), row++);
        }
        all.forEach(n -> write(book, n));
        for (Map.Entry<Key, String> name : NAMES.entrySet()) {
            Input input = Input.of(name.getKey(), "");
            if (!rows.containsKey(input)) {
                book.name(name.getValue(), none(name.getKey()));
            }
        }
        At growth = tab.formula(row, LIKELY, "(1+Inflation)/(1+DiscountRate)", Look.FACTOR);
        tab.text(row, 0, "what a price of today counts for, a year on");
        tab.text(row, 5, "follows from the two rates");
        book.name("Growth", growth);
        tab.widths(0, 54, 12, 12, 12, 8, 54, 44);
        tab.freeze(FIRST, 1);
    }

    private At date() {
        tab.text(row, 0, "date of every present value");
        tab.text(row, 5, "yours");
        tab.text(row, 6, "asOf");
        return tab.date(row++, LIKELY, stated.heading().asOf(), Look.DATE);
    }

    private At none(Key key) {
        tab.text(row, 0, key.label());
        tab.text(row, 5, key.place() == footing.core.fleet.Place.TAX ? "no tax in this case" : "no loan in this case");
        return tab.number(row++, LIKELY, 0, look(key.dimension()));
    }

    private void write(Book book, InForce number) {
        Input input = number.input();
        int at = rows.getOrDefault(input, FIRST);
        Dimension dimension = input.key().dimension();
        Look look = look(dimension);
        tab.wrapped(at, 0, Naming.of(stated, input));
        if (number.value() instanceof Metalog m) {
            tab.number(at, LOW, m.low(), look);
            tab.number(at, HIGH, m.high(), look);
        }
        String formula = number.origin() == Origin.DEFAULT ? derived(number) : "";
        At cell = formula.isEmpty()
                ? tab.number(at, LIKELY, number.value().likely(), look)
                : tab.formula(at, LIKELY, formula, look);
        tab.text(at, 4, unit(dimension, stated.heading().currency()));
        tab.wrapped(at, 5, Naming.provenance(stated, number));
        tab.wrapped(at, 6, input.path());
        String name = NAMES.get(input.key());
        if (name != null) {
            book.name(name, cell);
        }
    }

    /** The formula of a default that is another number; empty if it is none. */
    private String derived(InForce number) {
        Input input = number.input();
        String owner = input.owner();
        return switch (input.key()) {
            case TIRE_PRICE -> likely(Input.of(Key.PRICE, owner));
            case RENEWAL_PRICE ->
                likely(Input.of(stated.assembly(owner).kind().holdsAir() ? Key.TIRE_PRICE : Key.PRICE, owner));
            case FLATS_AT_CASTER -> "1-" + likely(Input.of(Key.FLATS_AT_DRIVE, owner));
            case FULL_TODAY -> likely(Input.of(Key.MAKE_UP_TODAY, owner));
            default -> "";
        };
    }

    static Look look(Dimension dimension) {
        return switch (dimension) {
            case MONEY -> Look.MONEY;
            case SHARE -> Look.SHARE;
            case COUNT, METER_HOURS, TIME -> Look.NUMBER;
        };
    }

    static String unit(Dimension dimension, String currency) {
        return switch (dimension) {
            case MONEY -> currency;
            case SHARE -> "share";
            case COUNT -> "count";
            case METER_HOURS, TIME -> "h";
        };
    }

    private String ref(Input input, int column) {
        Integer at = rows.get(input);
        if (at == null) {
            throw new IllegalArgumentException("nobody stated " + input.path());
        }
        return tab.at(at, column).toString();
    }

    @Override
    public String likely(Input input) {
        return ref(input, LIKELY);
    }

    @Override
    public String low(Input input) {
        return ref(input, LOW);
    }

    @Override
    public String high(Input input) {
        return ref(input, HIGH);
    }
}
