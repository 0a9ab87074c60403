package footing.io.card;

import footing.core.fitting.Fit;
import footing.core.fitting.FitQuestion;
import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.core.quantity.Pressure;
import footing.io.paper.Markup;
import footing.io.paper.Paper;
import footing.io.paper.Press;
import footing.io.paper.Typefaces;
import footing.io.sketch.Sketch;
import footing.io.sketch.Sketches;
import footing.io.words.Cautions;
import footing.io.words.FitWords;
import footing.io.words.Lacking;
import footing.io.words.Quantities;
import footing.io.words.SetUpWords;
import footing.io.words.SlopeCaution;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The fitting card of a machine and a package, as a PDF to take to the bay. */
public final class FittingCard {
    private static final double PRINTED = 0.92;

    private final Case stated;
    private final Case.Machine machine;
    private final Case.WheelPackage wheels;
    private final Fit fit;
    private final SetUp setUp;
    private final Quantities q;
    private final SetUpWords words;
    private final Lacking lacking = new Lacking();

    private FittingCard(Case stated, String id, Case.WheelPackage wheels, SetUp setUp) {
        this.stated = stated;
        this.wheels = wheels;
        this.setUp = setUp;
        machine = stated.machine(id);
        fit = Fit.of(FitQuestion.of(stated, id, wheels));
        boolean si = stated.heading().si();
        q = new Quantities(si);
        words = new SetUpWords(si, lacking);
    }

    /**
     * Prints the card.
     *
     * @param setUp of this machine and package, with the target to reach
     * @throws IOException if it can't be written
     */
    public static void write(Case stated, Case.WheelPackage wheels, SetUp setUp, Paper paper, OutputStream to)
            throws IOException {
        new FittingCard(stated, setUp.machine(), wheels, setUp).print(paper, to);
    }

    private void print(Paper paper, OutputStream to) throws IOException {
        Markup out = new Markup(new Typefaces());
        Sheet sheet = new Sheet(out);
        String title = "Fitting card: " + wheels.id() + " on " + machine.id();
        out.raw("<!DOCTYPE html>").open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
        out.open("head").element("title", title);
        out.empty("meta", "name", "subject", "content", "What to do in the bay, in order");
        out.empty("meta", "name", "description", "content", "What to do in the bay, in order");
        out.open("style").raw(Sheet.style()).close().close();
        out.open("body").open("div", "class", "footer");
        out.element("span", title + ", " + stated.heading().title()).close();
        out.element("h1", title);
        sheet.paragraph(
                (machine.kind().isEmpty() ? "" : machine.kind() + ". ") + "It carries "
                        + machine.carries().id() + " now. By what is known, " + wheels.id() + ": "
                        + FitWords.verdict(fit.verdict()) + ". As of "
                        + stated.heading().asOf() + ".",
                "who");
        sheet.paragraph(Cautions.AT_WORK.get(0), "caution");
        before(sheet);
        lifting(sheet);
        fits(sheet);
        fitting(sheet);
        level(sheet);
        drawings(sheet);
        out.close().close();
        Press.print(out.written(), paper, to);
    }

    private void before(Sheet sheet) {
        sheet.head("1. Before: write down");
        sheet.boxes(List.of(
                List.of("Hour meter", ""),
                List.of("Done by, date", ""),
                List.of("Axle height, drive", known(Position.DRIVE, Measure.LOADED_RADIUS)),
                List.of("Axle height, caster", known(Position.CASTER, Measure.LOADED_RADIUS)),
                List.of("Rear blade tip, left and right", ""),
                List.of("Front blade tip, left and right", "")));
    }

    private String known(Position position, Measure measure) {
        OptionalDouble x = setUp.change().before().at(position).get(measure);
        return x.isEmpty() ? "" : "stated: " + q.value(measure.physical(), x.getAsDouble());
    }

    private void lifting(Sheet sheet) {
        sheet.head("2. Lift and block");
        sheet.list(Cautions.AT_WORK.subList(1, 4));
    }

    private void fits(Sheet sheet) {
        FitWords say = new FitWords(stated.heading().si());
        sheet.head("3. Does it fit?");
        List<List<String>> rows = new ArrayList<>();
        fit.findings()
                .forEach(f -> rows.add(
                        List.of(FitWords.subject(f), say.numbers(f), say.margin(f), FitWords.verdict(f.verdict()))));
        sheet.table(List.of("test", "compared", "to spare", ""), rows);
        sheet.list(fit.open().stream().map(FitWords::act).toList());
    }

    private void fitting(Sheet sheet) {
        sheet.head("4. Fit, tighten, inflate");
        sheet.list(Cautions.AT_WORK.subList(4, 5));
        List<List<String>> boxes = new ArrayList<>();
        boxes.add(List.of("Torque of the lug nuts, from the operator's manual", ""));
        boxes.add(List.of("Tightened again after about 2 h and 10 h (common practice, no source)", ""));
        for (Position position : Position.values()) {
            WheelFacts wheel = setUp.change().after().at(position);
            if (wheel.kind().holdsAir()) {
                OptionalDouble run = wheel.get(Measure.PRESSURE);
                String due = run.isEmpty()
                        ? "as the manual says"
                        : "the case states " + q.pressure(new Pressure(run.getAsDouble())) + "; the manual rules";
                String name = position == Position.DRIVE ? "drives" : "casters";
                boxes.add(List.of("Pressure of the " + name + ", both alike: " + due, ""));
            }
        }
        sheet.boxes(boxes);
    }

    private void level(Sheet sheet) {
        sheet.head("5. Level and rake");
        List<List<String>> rows = new ArrayList<>();
        words.changes(setUp).forEach(l -> rows.add(List.of(l.label(), l.words())));
        words.turns(setUp).forEach(l -> rows.add(List.of(l.label() + ", to do", l.words())));
        setUp.blades().value().ifPresent(b -> {
            rows.add(List.of("rear blade tips, to reach", q.length(b.wanted().rearHeight())));
            rows.add(List.of("front blade tips, to reach", q.length(b.wanted().frontHeight())));
        });
        sheet.table(List.of("what", "changes, or is to be reached"), rows);
        sheet.paragraph(
                "Rake and height as the machine's manual says; where it is unknown, the front 1/8 to 1/4 in lower and side"
                        + " to side within 1/8 in (common practice, no source). Pressures first, then level.",
                "note");
        sheet.boxes(List.of(
                List.of("Rear left tip", kept(Measure.FITTED_REAR_LEFT)),
                List.of("Rear right tip", kept(Measure.FITTED_REAR_RIGHT)),
                List.of("Front left tip", kept(Measure.FITTED_FRONT_LEFT)),
                List.of("Front right tip", kept(Measure.FITTED_FRONT_RIGHT)),
                List.of("Turns given, rear hangers", kept(Measure.TURNED_REAR)),
                List.of("Turns given, front hangers", kept(Measure.TURNED_FRONT)),
                List.of("Gauge reads right again", ""),
                List.of("Test cut even, left to right", "")));
        sheet.list(Measured.kept(machine, setUp).stream()
                .map(j -> words.judged(j))
                .map(l -> l.label() + ": " + l.words())
                .toList());
        if (!lacking.told().isEmpty()) {
            sheet.paragraph("Not told, because it is not measured or not known to hold:", "note");
            sheet.list(lacking.told());
        }
    }

    /** What the case keeps of this package's fitting. */
    private String kept(Measure measure) {
        Measures measures = machine.measures();
        String on = machine.fitted();
        OptionalDouble x = measures.get(measure);
        return x.isEmpty() || (on != null && !on.equals(wheels.id()))
                ? ""
                : q.value(measure.physical(), x.getAsDouble());
    }

    private void drawings(Sheet sheet) {
        Sketches sketches = new Sketches(stated.heading().si());
        MachineGround ground = MachineGround.of(stated, machine.id());
        List<Sketch> all = new ArrayList<>();
        sketches.bolts(FitQuestion.of(stated, machine.id(), wheels)).ifPresent(all::add);
        sketches.deck(setUp).ifPresent(all::add);
        PackageGround here = new PackageGround(ground.machine(), setUp.change());
        sketches.slope(ground, here).ifPresent(all::add);
        List<Sketch> prints = sketches.prints(ground, here);
        if (!prints.isEmpty()) {
            all.add(prints.get(prints.size() - 1));
        }
        if (!all.isEmpty()) {
            sheet.head("Drawn to scale");
            sheet.out().open("table", "class", "drawings").open("tbody");
            for (int i = 0; i < all.size(); i += 2) {
                sheet.out().open("tr");
                drawing(sheet, all.get(i));
                if (i + 1 < all.size()) {
                    drawing(sheet, all.get(i + 1));
                } else {
                    sheet.out().element("td", "");
                }
                sheet.out().close();
            }
            sheet.out().close().close();
        }
        sheet.paragraph(SlopeCaution.of(ground) + " " + Cautions.AT_WORK.get(5), "caution");
    }

    private static void drawing(Sheet sheet, Sketch sketch) {
        sheet.out().open("td").element("p", sketch.title());
        sheet.out().raw(sketch.onPaper(PRINTED)).close();
    }
}
