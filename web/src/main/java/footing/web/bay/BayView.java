package footing.web.bay;

import footing.core.fitting.Fit;
import footing.core.fitting.FitQuestion;
import footing.core.fitting.Fits;
import footing.core.fitting.Measured;
import footing.core.fitting.SetUp;
import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Physical;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.io.sketch.Sketch;
import footing.io.sketch.Sketches;
import footing.io.words.Cautions;
import footing.io.words.FitWords;
import footing.io.words.GroundTables;
import footing.io.words.Lacking;
import footing.io.words.Quantities;
import footing.io.words.SetUpWords;
import footing.io.words.SlopeCaution;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the page of the bay shows of a machine and a package. */
record BayView(
        String machine,
        String wheels,
        String verdict,
        boolean fits,
        List<GroundTables.Row> tests,
        List<String> open,
        List<SetUpWords.Line> changes,
        List<SetUpWords.Line> turns,
        List<SetUpWords.Line> judged,
        List<Box> boxes,
        List<GroundTables.Block> ground,
        List<Sketch> sketches,
        List<String> lacking,
        List<String> cautions,
        String slopeCaution) {
    /** What can be written down after fitting. */
    static final List<Measure> FITTED = List.of(
            Measure.FITTED_REAR_LEFT,
            Measure.FITTED_REAR_RIGHT,
            Measure.FITTED_FRONT_LEFT,
            Measure.FITTED_FRONT_RIGHT,
            Measure.TURNED_REAR,
            Measure.TURNED_FRONT);

    /** A box for a measured value. */
    record Box(String name, String label, String value) {}

    static BayView of(Case stated, String id, Case.WheelPackage wheels) {
        Case.Machine machine = stated.machine(id);
        boolean si = stated.heading().si();
        FitQuestion question = FitQuestion.of(stated, id, wheels);
        Fit fit = Fit.of(question);
        SetUp setUp = SetUp.of(stated, id, wheels, null);
        Lacking lacking = new Lacking();
        SetUpWords say = new SetUpWords(si, lacking);
        MachineGround ground = MachineGround.of(stated, id);
        List<SetUpWords.Line> changes = say.changes(setUp);
        List<SetUpWords.Line> turns = say.turns(setUp);
        List<GroundTables.Block> blocks = new GroundTables(ground, si, lacking).all();
        return new BayView(
                id,
                wheels.id(),
                FitWords.verdict(fit.verdict()),
                fit.verdict() == Fits.FITS,
                tests(fit, si),
                fit.open().stream().map(FitWords::act).toList(),
                changes,
                turns,
                Measured.kept(machine, setUp).stream().map(say::judged).toList(),
                boxes(machine, wheels, si),
                blocks,
                sketches(question, setUp, ground, si),
                lacking.told(),
                Cautions.AT_WORK,
                SlopeCaution.of(ground));
    }

    private static List<GroundTables.Row> tests(Fit fit, boolean si) {
        FitWords say = new FitWords(si);
        return fit.findings().stream()
                .map(f -> new GroundTables.Row(
                        FitWords.subject(f), List.of(say.numbers(f), say.margin(f), FitWords.verdict(f.verdict()))))
                .toList();
    }

    private static List<Box> boxes(Case.Machine machine, Case.WheelPackage wheels, boolean si) {
        String on = machine.fitted();
        boolean others = on != null && !on.equals(wheels.id());
        List<Box> boxes = new ArrayList<>();
        for (Measure m : FITTED) {
            OptionalDouble x =
                    others ? OptionalDouble.empty() : machine.measures().get(m);
            String value = x.isEmpty() ? "" : new Quantities(si).value(m.physical(), x.getAsDouble());
            String unit = m.physical() == Physical.LENGTH ? ", " + unit(si) : "";
            boxes.add(new Box(m.key(), m.label() + unit, value));
        }
        return boxes;
    }

    /** The unit of a length typed without one. */
    static String unit(boolean si) {
        return si ? "mm" : "in";
    }

    private static List<Sketch> sketches(FitQuestion question, SetUp setUp, MachineGround ground, boolean si) {
        Sketches draw = new Sketches(si);
        PackageGround here = new PackageGround(ground.machine(), setUp.change());
        List<Sketch> all = new ArrayList<>();
        draw.bolts(question).ifPresent(all::add);
        draw.deck(setUp).ifPresent(all::add);
        all.addAll(draw.prints(ground, here));
        draw.slope(ground, here).ifPresent(all::add);
        draw.inflation(here).ifPresent(all::add);
        return all;
    }
}
