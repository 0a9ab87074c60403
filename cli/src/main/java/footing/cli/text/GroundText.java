package footing.cli.text;

import footing.core.fleet.Case;
import footing.core.fleet.Position;
import footing.core.ground.Judged;
import footing.core.ground.MachineGround;
import footing.core.ground.Marking;
import footing.core.ground.PackageGround;
import footing.core.ground.Patch;
import footing.core.ground.Wetness;
import footing.core.quantity.Angle;
import footing.io.words.Figures;
import footing.io.words.GroundWords;
import footing.io.words.Lacking;
import footing.io.words.Lists;
import footing.io.words.Quantities;
import footing.io.words.SlopeCaution;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A machine on the ground under each of its packages, side by side, as a page for the terminal. */
public final class GroundText {
    private static final String NONE = "-";

    private final Case stated;
    private final MachineGround ground;
    private final GroundWords words;
    private final Quantities quantities;
    private final Lacking lacking = new Lacking();
    private final Lines lines;

    private GroundText(Case stated, MachineGround ground, Letters letters) {
        this.stated = stated;
        this.ground = ground;
        words = new GroundWords(stated.heading().si());
        quantities = new Quantities(stated.heading().si());
        lines = new Lines(letters);
    }

    public static String of(Case stated, MachineGround ground, Letters letters) {
        return new GroundText(stated, ground, letters).page();
    }

    private String page() {
        Case.Machine machine = stated.machine(ground.machine().id());
        lines.paragraph(machine.id() + (machine.kind().isEmpty() ? "" : " (" + machine.kind() + ")")
                + " on the ground; it carries " + machine.carries().id() + ".");
        pressure();
        marking();
        inflation();
        turn();
        other();
        slope();
        if (!lacking.told().isEmpty()) {
            lines.head("Not told, because it is not measured or not known to hold");
            lacking.told().forEach(lines::item);
        }
        lines.blank().paragraph(SlopeCaution.of(ground));
        return lines.toString();
    }

    private void each(Table table, Function<PackageGround, List<String>> cells) {
        ground.packages().forEach(p -> table.row(p.wheels().id(), cells.apply(p)));
        table.print(lines);
    }

    private <T> String cell(Judged<T> judged, Function<T, String> shown) {
        return lacking.note(judged).value().map(shown).orElse(NONE);
    }

    private void pressure() {
        lines.head("Pressure on firm ground, under the heavier wheel of each pair");
        each(
                new Table("drives", "their|print", "down|" + words.depth(), "casters", "their|print"),
                p -> List.of(
                        cell(p.patch(Position.DRIVE), words::pressure),
                        cell(p.patch(Position.DRIVE), x -> quantities.area(x.area())),
                        cell(p.below(), quantities::pressure),
                        cell(p.patch(Position.CASTER), words::pressure),
                        cell(p.patch(Position.CASTER), x -> quantities.area(x.area()))));
        for (PackageGround p : ground.packages()) {
            List<String> notes = new ArrayList<>();
            words.ends(p).ifPresent(notes::add);
            p.patch(Position.DRIVE)
                    .value()
                    .filter(x -> x.basis() == Patch.Basis.PRIOR)
                    .ifPresent(x -> notes.add("drives by " + GroundWords.basis(x.basis())));
            if (!notes.isEmpty()) {
                lines.item(p.wheels().id() + ": " + Lists.and(notes) + ".");
            }
        }
    }

    private void marking() {
        Judged<Patch> now = ground.carried().patch(Position.DRIVE);
        if (now.value().isEmpty() || ground.packages().size() < 2) {
            return;
        }
        lines.head("The drives mark a lawn, against what it carries");
        Table table = new Table("dry", "damp", "wet");
        for (PackageGround p : ground.packages().subList(1, ground.packages().size())) {
            List<String> cells = new ArrayList<>();
            for (Wetness w : Wetness.values()) {
                Judged<Marking> marks =
                        now.then(was -> p.patch(Position.DRIVE).map(is -> Marking.of(was.mean(), is.mean(), w)));
                cells.add(cell(marks, GroundWords::marking));
            }
            table.row(p.wheels().id(), cells);
        }
        table.print(lines);
        lines.item(GroundWords.promiseNothing());
    }

    private void inflation() {
        List<PackageGround> aired =
                ground.packages().stream().filter(p -> !p.curve().isEmpty()).toList();
        if (aired.isEmpty()) {
            return;
        }
        lines.head("Ground pressure of the drives against their inflation");
        for (PackageGround p : aired) {
            List<String> points = new ArrayList<>();
            for (PackageGround.Point point : p.curve()) {
                if (Math.rint(point.inflation().psi()) % 2 == 0) {
                    points.add(quantities.pressure(point.inflation()) + ": " + quantities.pressure(point.ground()));
                }
            }
            lines.hanging("  " + p.wheels().id() + "  ", String.join(", ", points));
        }
        lines.item("Inflate as the operator's manual says; never above what the sidewall allows.");
    }

    private void turn() {
        words.turn(ground.carried()).ifPresent(t -> lines.head("In a turn").item(t));
    }

    private void other() {
        lines.head("Against what it carries");
        each(
                new Table("drive axle|rises", "caster axle|rises", "ground|speed", "stiffness of|the drives"),
                p -> List.of(
                        cell(p.change().rise(Position.DRIVE), r -> quantities.shift(r.by())),
                        cell(p.change().rise(Position.CASTER), r -> quantities.shift(r.by())),
                        cell(p.change().speed(), s -> signed(100 * (s.ratio() - 1))),
                        cell(p.change().stiffness(), x -> "x " + Figures.decimals(x, 2))));
    }

    private static String signed(double percent) {
        String text = Figures.decimals(percent, 1);
        return (percent > 0 && !text.equals("0") ? "+" : "") + text + " %";
    }

    private void slope() {
        lines.head("Standing still on a slope, it would begin to slide or tip at about");
        each(
                new Table("slide|wet", "slide|damp", "slide|dry", "climb|wet", "tip|sideways", "or, axle|swings"),
                p -> List.of(
                        hold(p, Wetness.WET),
                        hold(p, Wetness.DAMP),
                        hold(p, Wetness.DRY),
                        cell(p.climb(Wetness.WET.likely()), GroundText::degrees),
                        cell(p.tip(), GroundText::degrees),
                        cell(p.tipIfPivoted(), GroundText::degrees)));
        lines.item("In degrees; wet, damp and dry are ranges of friction, low to high. No wheel is known to grip"
                + " better than another: only height, track and weight tell them apart here.");
        words.across(ground, ground.carried()).ifPresent(lines::item);
    }

    private String hold(PackageGround p, Wetness wetness) {
        return cell(
                p.hold(wetness.low())
                        .then(low -> p.hold(wetness.high()).map(high -> degrees(low) + " to " + degrees(high))),
                x -> x);
    }

    private static String degrees(Angle x) {
        return Figures.decimals(x.degrees(), 0);
    }
}
