package footing.io.words;

import footing.core.fleet.Position;
import footing.core.ground.Judged;
import footing.core.ground.MachineGround;
import footing.core.ground.Marking;
import footing.core.ground.PackageGround;
import footing.core.ground.Patch;
import footing.core.ground.Wetness;
import footing.core.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What is told of a machine on the ground under each of its packages, side by side: the same tables on every surface. */
public final class GroundTables {
    private static final String NONE = "-";

    private final MachineGround ground;
    private final GroundWords words;
    private final Quantities quantities;
    private final Lacking lacking;

    /** {@code lacking} takes note of what is not told because it was not measured. */
    public GroundTables(MachineGround ground, boolean si, Lacking lacking) {
        this.ground = ground;
        this.lacking = lacking;
        words = new GroundWords(si);
        quantities = new Quantities(si);
    }

    /** A package and what is told of it. */
    public record Row(String name, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A table under its title, and what is to be said beside it.
     *
     * @param heads of the columns behind the name; a bar parts the lines of a head
     */
    public record Block(String title, List<String> heads, List<Row> rows, List<String> notes) {
        public Block {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
        }
    }

    /** All of them, in the order they are shown; the last one is about slopes and goes with {@link SlopeCaution}. */
    public List<Block> all() {
        List<Block> all = new ArrayList<>();
        all.add(pressure());
        marking().ifPresent(all::add);
        inflation().ifPresent(all::add);
        words.turn(ground.carried()).ifPresent(t -> all.add(told("In a turn", t)));
        all.add(other());
        words.drift(ground.carried()).ifPresent(d -> all.add(told("Left and right", d)));
        all.add(slope());
        return all;
    }

    private static Block told(String title, String words) {
        return new Block(title, List.of(), List.of(), List.of(words));
    }

    private List<Row> each(List<PackageGround> packages, Function<PackageGround, List<String>> cells) {
        return packages.stream()
                .map(p -> new Row(p.wheels().id(), cells.apply(p)))
                .toList();
    }

    private <T> String cell(Judged<T> judged, Function<T, String> shown) {
        return lacking.note(judged).value().map(shown).orElse(NONE);
    }

    private Block pressure() {
        List<String> notes = new ArrayList<>();
        for (PackageGround p : ground.packages()) {
            List<String> parts = new ArrayList<>();
            words.ends(p).ifPresent(parts::add);
            p.patch(Position.DRIVE)
                    .value()
                    .filter(x -> x.basis() == Patch.Basis.PRIOR)
                    .ifPresent(x -> parts.add("drives by " + GroundWords.basis(x.basis())));
            if (!parts.isEmpty()) {
                notes.add(p.wheels().id() + ": " + Lists.and(parts) + ".");
            }
        }
        measured(Patch.Basis.PRINT).ifPresent(notes::add);
        measured(Patch.Basis.CARRIED_OVER).ifPresent(notes::add);
        notes.addAll(printed());
        return new Block(
                "Pressure on firm ground, under the heavier wheel of each pair",
                List.of("drives", "their|print", "down|" + words.depth(), "casters", "their|print"),
                each(
                        ground.packages(),
                        p -> List.of(
                                cell(p.patch(Position.DRIVE), words::pressure),
                                cell(p.patch(Position.DRIVE), x -> quantities.area(x.area())),
                                cell(p.below(), quantities::pressure),
                                cell(p.patch(Position.CASTER), words::pressure),
                                cell(p.patch(Position.CASTER), x -> quantities.area(x.area())))),
                notes);
    }

    /** Whose drives rest on a measured print, and not on what tires of their sort usually do. */
    private Optional<String> measured(Patch.Basis basis) {
        List<String> ids = ground.packages().stream()
                .filter(p -> p.patch(Position.DRIVE)
                        .value()
                        .filter(x -> x.basis() == basis)
                        .isPresent())
                .map(p -> p.wheels().id())
                .toList();
        return ids.isEmpty()
                ? Optional.empty()
                : Optional.of("Drives of " + Lists.and(ids) + ": measured, by " + GroundWords.basis(basis) + ".");
    }

    /** When and how often prints were taken that stand here. */
    private List<String> printed() {
        return ground.packages().stream()
                .map(PackageGround::wheels)
                .flatMap(w -> Stream.of(w.drive(), w.caster()))
                .flatMap(w -> Stream.ofNullable(w.measures().printed()))
                .distinct()
                .map(TakenWords::of)
                .toList();
    }

    private Optional<Block> marking() {
        Judged<Patch> now = ground.carried().patch(Position.DRIVE);
        if (now.value().isEmpty() || ground.packages().size() < 2) {
            return Optional.empty();
        }
        List<PackageGround> others =
                ground.packages().subList(1, ground.packages().size());
        return Optional.of(new Block(
                "The drives mark a lawn, against what it carries",
                List.of("dry", "damp", "wet"),
                each(
                        others,
                        p -> List.of(
                                marks(now, p, Wetness.DRY), marks(now, p, Wetness.DAMP), marks(now, p, Wetness.WET))),
                List.of(GroundWords.promiseNothing())));
    }

    private String marks(Judged<Patch> now, PackageGround p, Wetness wetness) {
        return cell(
                now.then(was -> p.patch(Position.DRIVE).map(is -> Marking.of(was.mean(), is.mean(), wetness))),
                GroundWords::marking);
    }

    /** Every second point of the curves is enough to read. */
    private Optional<Block> inflation() {
        List<PackageGround> aired =
                ground.packages().stream().filter(p -> !p.curve().isEmpty()).toList();
        List<Long> pressures = aired.stream()
                .flatMap(p -> p.curve().stream())
                .map(GroundTables::psi)
                .filter(x -> x % 2 == 0)
                .distinct()
                .sorted()
                .toList();
        if (pressures.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Block(
                "Ground pressure of the drives against their inflation",
                pressures.stream()
                        .map(x -> quantities.pressure(footing.core.quantity.Pressure.ofPsi(x)))
                        .toList(),
                each(aired, p -> pressures.stream().map(x -> at(p, x)).toList()),
                List.of("Inflate as the operator's manual says; never above what the sidewall allows.")));
    }

    private static long psi(PackageGround.Point point) {
        return Math.round(point.inflation().psi());
    }

    private String at(PackageGround p, long pressure) {
        return p.curve().stream()
                .filter(x -> psi(x) == pressure)
                .findFirst()
                .map(x -> quantities.pressure(x.ground()))
                .orElse(NONE);
    }

    private Block other() {
        return new Block(
                "Against what it carries",
                List.of("drive axle|rises", "caster axle|rises", "ground|speed", "stiffness of|the drives"),
                each(
                        ground.packages(),
                        p -> List.of(
                                cell(p.change().rise(Position.DRIVE), r -> quantities.shift(r.by())),
                                cell(p.change().rise(Position.CASTER), r -> quantities.shift(r.by())),
                                cell(p.change().speed(), s -> signed(100 * (s.ratio() - 1))),
                                cell(p.change().stiffness(), x -> "x " + Figures.decimals(x, 2)))),
                List.of());
    }

    private static String signed(double percent) {
        String text = Figures.decimals(percent, 1);
        return (percent > 0 && !text.equals("0") ? "+" : "") + text + " %";
    }

    private Block slope() {
        List<String> notes = new ArrayList<>();
        notes.add("In degrees; wet, damp and dry are ranges of friction, low to high. No wheel is known to grip better"
                + " than another: only height, track and weight tell them apart here.");
        words.across(ground, ground.carried()).ifPresent(notes::add);
        return new Block(
                "Standing still on a slope, it would begin to slide or tip at about",
                List.of("slide|wet", "slide|damp", "slide|dry", "climb|wet", "tip|sideways", "or, axle|swings"),
                each(
                        ground.packages(),
                        p -> List.of(
                                hold(p, Wetness.WET),
                                hold(p, Wetness.DAMP),
                                hold(p, Wetness.DRY),
                                cell(p.climb(Wetness.WET.likely()), GroundTables::degrees),
                                cell(p.tip(), GroundTables::degrees),
                                cell(p.tipIfPivoted(), GroundTables::degrees))),
                notes);
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
