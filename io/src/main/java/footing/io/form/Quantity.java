package footing.io.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A physical quantity and the units it may be written in.
 *
 * <p>Factors are exact by definition: inch 25.4 mm, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s² (B. N.
 * Taylor, A. Thompson, "Guide for the Use of the International System of Units", NIST SP 811, 2008, appendix B); psi
 * and lb/in follow from them.
 */
public enum Quantity {
    /** In hours. A day is left out: a route day and a day of the calendar differ. */
    TIME("a time", "35 min", unit("s", 1, 3600), unit("min", 1, 60), unit("h", 1, 1)),
    /** In meters. */
    LENGTH(
            "a length",
            "24 in",
            unit("in", 254, 10_000),
            unit("ft", 3048, 10_000),
            unit("mm", 1, 1000),
            unit("cm", 1, 100),
            unit("m", 1, 1)),
    /** In kilograms. */
    MASS("a mass", "900 lb", unit("lb", 45_359_237, 1e8), unit("kg", 1, 1)),
    /** In pascals. */
    PRESSURE(
            "a pressure",
            "13 psi",
            unit("psi", 4.4482216152605, 0.00064516),
            unit("kPa", 1000, 1),
            unit("bar", 1e5, 1)),
    /** In meters per second. */
    SPEED("a speed", "9 mph", unit("mph", 44_704, 1e5), unit("km/h", 1000, 3600)),
    /** In newtons per meter. */
    STIFFNESS(
            "a stiffness",
            "900 lb/in",
            unit("lb/in", 4.4482216152605, 0.0254),
            unit("N/mm", 1000, 1),
            unit("kN/m", 1000, 1)),
    /** In newtons. */
    FORCE("a force", "420 lbf", unit("lbf", 4.4482216152605, 1), unit("N", 1, 1), unit("kN", 1000, 1)),
    /** In square meters. */
    AREA("an area", "45 in2", unit("in2", 64_516, 1e8), unit("cm2", 1, 1e4), unit("mm2", 1, 1e6), unit("m2", 1, 1)),
    /** In degrees. */
    ANGLE("an angle", "12 deg", unit("deg", 1, 1)),
    /** In meters per second squared. */
    ACCELERATION("an acceleration", "0.8 m/s2", unit("m/s2", 1, 1), unit("g", 9.80665, 1));

    private final String words;
    private final String example;
    private final List<Unit> units;

    Quantity(String words, String example, Unit... units) {
        this.words = words;
        this.example = example;
        this.units = List.of(units);
    }

    /** A unit and how much of the quantity's own unit it is, as a fraction so that 35 min is 35/60 h to the last bit. */
    public record Unit(String name, double numerator, double denominator) {
        /** A value in this unit, in the quantity's own. */
        public double toOwn(double value) {
            return value * numerator / denominator;
        }

        /** A value in the quantity's own unit, in this one. */
        public double fromOwn(double value) {
            return value * denominator / numerator;
        }
    }

    private static Unit unit(String name, double numerator, double denominator) {
        return new Unit(name, numerator, denominator);
    }

    /** The quantity in words, with its article. */
    public String words() {
        return words;
    }

    public String example() {
        return example;
    }

    public List<Unit> units() {
        return units;
    }

    public Optional<Unit> unit(String name) {
        return units.stream().filter(u -> u.name().equals(name)).findFirst();
    }

    /** The names of the units, for a message. */
    public String unitNames() {
        return units.stream().map(Unit::name).collect(Collectors.joining(", "));
    }

    /** The quantity that has a unit of this name. */
    static Optional<Quantity> having(String unit) {
        return Arrays.stream(values()).filter(q -> q.unit(unit).isPresent()).findFirst();
    }
}
