package footing.io.interview;

import footing.core.chance.Metalog;
import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Dimension;
import footing.core.fleet.Key;
import footing.core.fleet.Kind;
import footing.core.fleet.Place;
import footing.core.fleet.Position;
import footing.core.fleet.SidewallSize;
import footing.io.catalog.AssemblyForm;
import java.util.ArrayList;
import java.util.List;

/** Writes the assemblies and the packages made of them. */
final class WheelsText {
    private static final String TYPICAL = "typical price, not a quote";

    private final Given given;
    private final CaseLines lines;
    private final Packages packages;
    private final Ground ground;

    WheelsText(Given given, CaseLines lines, Packages packages) {
        this.given = given;
        this.lines = lines;
        this.packages = packages;
        this.ground = new Ground(given);
    }

    /** True if every wheel is stated in the case, so that it needs no catalog. */
    static boolean isWithoutCatalog(Given given) {
        return !given.is("currency", "USD");
    }

    void write() {
        lines.comment(
                0,
                "The wheels. price: each, ready to bolt on. tirePrice: the tire alone. life: hours of a set on grass, in"
                        + " a bad, a usual and a good case. Whatever is not marked yours is a guess: typical, not a"
                        + " quote; ask for a quote by the size on the sidewall.");
        if (!isWithoutCatalog(given)) {
            lines.comment(
                    0,
                    "A wheel that is switched off comes from the starter catalog with the same figures. To put your"
                            + " own price in, take the # away from the wheel, and from 'assemblies:' if it has one.");
            lines.line(0, "catalog: starter");
        }
        noteSize("driveSize");
        noteSize("casterSize");
        lines.line(isAnyOwn(), 0, "assemblies:", "by the name that the packages below use");
        packages.kinds(true).forEach(k -> writeWheel(typical("driveSize", k)));
        packages.kinds(false).forEach(k -> writeWheel(typical("casterSize", k)));
        lines.blank();
        writePackages();
    }

    private void noteSize(String field) {
        String typical = String.valueOf(typical(field, Kind.AIR).size());
        String end = field.startsWith("drive") ? "drives" : "casters";
        String whose = "Size of the " + end + ": " + given.text(field) + " (" + Remark.of(given, field) + ").";
        boolean same = SidewallSize.of(typical).equals(SidewallSize.of(given.text(field)));
        lines.comment(
                0,
                whose + (same ? "" : " There are no typical figures for it; the nearest size stands in: " + typical));
    }

    private Case.Assembly typical(String sizeField, Kind kind) {
        return TypicalWheels.of(TypicalWheels.position(sizeField), kind, given.text(sizeField));
    }

    private boolean isAnyOwn() {
        return isWithoutCatalog(given) || given.isYours("life") || given.isYours("pairPrice");
    }

    private boolean isQuoted(Case.Assembly wheel) {
        return given.isYours("pairPrice") && wheel.position() == Position.DRIVE && wheel.kind() == Kind.AIRLESS;
    }

    private boolean isOwnLife(Case.Assembly wheel) {
        return given.isYours("life") && wheel.position() == Position.DRIVE;
    }

    private void writeWheel(Case.Assembly wheel) {
        boolean own = isWithoutCatalog(given) || isQuoted(wheel) || isOwnLife(wheel);
        if (!own) {
            lines.line(2, "#" + wheel.id() + ":", "guess: " + TYPICAL + dollars());
            lines.line(4, "#{" + String.join(", ", description(wheel)) + ",");
            lines.line(4, "# " + String.join(", ", figures(wheel)) + "}");
            return;
        }
        lines.line(2, wheel.id() + ":");
        description(wheel).forEach(part -> lines.line(4, part));
        for (Key key : Key.of(Place.ASSEMBLY)) {
            wheel.numbers()
                    .get(key)
                    .ifPresent(x -> lines.line(4, key.key() + ": " + value(wheel, key, x), remark(wheel, key)));
        }
        if (isQuoted(wheel)) {
            lines.line(4, "changeHours: 0 h", "yours: the quote is for a fitted pair");
        }
    }

    private String remark(Case.Assembly wheel, Key key) {
        if (key == Key.PRICE && isQuoted(wheel)) {
            return "yours: half of " + given.text("pairPrice") + " for a fitted pair";
        }
        if (key == Key.LIFE && isOwnLife(wheel)) {
            boolean carried = wheel.kind() == TypicalWheels.kind(given, "driveKind");
            String here = given.text("life") + " h";
            return carried ? "yours: " + here + onGrass() : "guess: in proportion to your " + here;
        }
        return "guess: " + (key.dimension() == Dimension.MONEY ? TYPICAL + dollars() : "typical");
    }

    private String dollars() {
        return given.is("currency", "USD") ? "" : ", of US dollars";
    }

    private String onGrass() {
        return ground.wear() == 100 ? "" : " where you mow, which takes this life on grass";
    }

    private static List<String> description(Case.Assembly wheel) {
        List<String> parts = new ArrayList<>();
        parts.add("kind: " + AssemblyForm.word(wheel.kind()));
        parts.add("position: " + AssemblyForm.word(wheel.position()));
        parts.add("size: " + wheel.size());
        if (wheel.treats() != null) {
            parts.add("treats: " + wheel.treats());
        }
        return parts;
    }

    private List<String> figures(Case.Assembly wheel) {
        List<String> parts = new ArrayList<>();
        for (Key key : Key.of(Place.ASSEMBLY)) {
            wheel.numbers().get(key).ifPresent(x -> parts.add(key.key() + ": " + value(wheel, key, x)));
        }
        return parts;
    }

    private String value(Case.Assembly wheel, Key key, Spread spread) {
        if (key == Key.PRICE && isQuoted(wheel)) {
            return Plain.number(Plain.part(given.number("pairPrice"), "0.5"));
        }
        double factor = key == Key.LIFE && isOwnLife(wheel) ? ground.lifeFactor() : 1;
        return spread instanceof Metalog m
                ? Plain.three(one(key, m.low() * factor), one(key, m.likely() * factor), one(key, m.high() * factor))
                : one(key, spread.likely() * factor);
    }

    private static String one(Key key, double x) {
        return switch (key.dimension()) {
            case SHARE -> Plain.number(x * 100) + " %";
            case METER_HOURS -> Plain.number(Math.rint(x));
            case MONEY, COUNT -> Plain.number(x);
            case TIME -> Plain.number(x) + " h";
        };
    }

    private void writePackages() {
        lines.comment(0, "What is compared: first what is on it, then what could be. Take away or add what you like.");
        lines.line(0, "packages:");
        packages.all()
                .forEach((id, pair) -> lines.line(
                        2,
                        id + ": {drive: " + typical("driveSize", pair.drive()).id() + ", caster: "
                                + typical("casterSize", pair.caster()).id() + "}"));
    }
}
