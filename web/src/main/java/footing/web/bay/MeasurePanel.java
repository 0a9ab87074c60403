package footing.web.bay;

import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Place;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import footing.io.edit.MeasureEdit;
import footing.io.edit.Standing;
import footing.io.form.BodyFields;
import footing.io.words.Pieces;
import footing.web.answer.FieldView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The boxes for what is measured: of the wheels looked at and the wheels it carries, and of the machine, in the order in
 * which the work goes.
 *
 * @param fitted what is written down after fitting
 */
record MeasurePanel(List<Section> wheels, List<Section> machine, Section fitted) {
    /**
     * Boxes of one wheel, or of one stop of the work.
     *
     * @param note what to know of them; empty if nothing
     */
    record Section(String id, String title, String note, List<FieldView> fields) {
        /** '9 of 17 yours'. */
        public String count() {
            long yours = fields.stream().filter(f -> !f.guess()).count();
            return fields.isEmpty() ? "" : yours + " of " + fields.size() + " yours";
        }

        public String html(String address) {
            return fields.stream().map(f -> f.htmlAt(address)).collect(Collectors.joining());
        }
    }

    static MeasurePanel of(Bench bench) {
        Standing standing = Standing.of(bench.kept().text());
        MeasureFields make = new MeasureFields(standing, bench.si());
        List<Section> wheels = new ArrayList<>();
        wheels(bench).values().forEach(w -> wheels.add(wheel(bench.stated(), w, standing, make)));
        List<Section> machine = new ArrayList<>();
        for (MeasureGroup group : MeasureGroup.values()) {
            List<FieldView> fields = new ArrayList<>();
            group.measures().forEach(m -> fields.add(make.ofMachine(bench.machine(), m)));
            if (group == MeasureGroup.HUBS) {
                fields.add(
                        2,
                        make.seat(
                                Place.MACHINE,
                                bench.machine().id(),
                                bench.machine().measures().seat()));
            }
            machine.add(new Section(group.name().toLowerCase(java.util.Locale.ROOT), group.title(), "", fields));
        }
        return new MeasurePanel(wheels, machine, fitted(bench, make));
    }

    private static Section fitted(Bench bench, MeasureFields make) {
        String on = bench.machine().fitted();
        boolean others = on != null && !on.equals(bench.wheels().id());
        List<FieldView> fields = MeasureGroup.FITTED.stream()
                .map(m -> others
                        ? make.empty(MeasureEdit.path(m, bench.machine().id()), m)
                        : make.ofMachine(bench.machine(), m))
                .toList();
        String note = others
                ? "What the case keeps was measured with " + on + " on; a value typed here takes its place."
                : "";
        return new Section("fitted", "Measured after fitting", note, fields);
    }

    private static Map<String, WheelFacts> wheels(Bench bench) {
        WheelPair wanted = WheelPair.of(bench.stated(), bench.wheels());
        WheelPair carried = WheelPair.of(bench.stated(), bench.machine().carries());
        Map<String, WheelFacts> all = new LinkedHashMap<>();
        for (WheelPair pair : List.of(wanted, carried)) {
            for (Position position : Position.values()) {
                all.putIfAbsent(pair.at(position).id(), pair.at(position));
            }
        }
        return all;
    }

    private static Section wheel(Case stated, WheelFacts wheel, Standing standing, MeasureFields make) {
        String title = wheel.id() + ", " + Pieces.kind(wheel.kind())
                + (wheel.position() == Position.DRIVE ? " drive" : " caster");
        if (!standing.has(MeasureEdit.owner(Place.ASSEMBLY, wheel.id()))) {
            String note = "It stands in the catalog. State it in the case file to measure it here.";
            return new Section("wheel-" + wheel.id().hashCode(), title, note, List.of());
        }
        List<FieldView> fields = new ArrayList<>();
        fields.add(make.size(stated.assembly(wheel.id())));
        MeasureGroup.ofWheel(wheel.position(), wheel.kind().holdsAir())
                .forEach(m -> fields.add(make.ofWheel(wheel, m)));
        if (wheel.position() == Position.DRIVE) {
            int behindCircle = 1
                    + fields.stream()
                            .map(FieldView::path)
                            .toList()
                            .indexOf(MeasureEdit.path(Measure.CIRCLE, wheel.id()));
            fields.add(
                    behindCircle,
                    make.seat(Place.ASSEMBLY, wheel.id(), wheel.measures().seat()));
        }
        return new Section("wheel-" + wheel.id().hashCode(), title, "", fields);
    }

    Optional<FieldView> find(String path) {
        return Stream.of(wheels.stream(), machine.stream(), Stream.of(fitted))
                .flatMap(s -> s)
                .flatMap(s -> s.fields().stream())
                .filter(f -> f.path().equals(path))
                .findFirst();
    }

    /** The box to go to for what lacks at a path; of a group such as wheel loads its first one. */
    Optional<FieldView> nearest(String path) {
        return find(path)
                .or(() -> Stream.concat(machine.stream(), wheels.stream())
                        .flatMap(s -> s.fields().stream())
                        .filter(f -> f.path().startsWith(path + "."))
                        .findFirst());
    }

    static String seatPath(Place place, String owner) {
        return MeasureEdit.owner(place, owner) + "." + BodyFields.seatPath(place);
    }
}
