package footing.web.bay;

import footing.core.fitting.SetUp;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.core.ground.TakenPrint;
import footing.core.ground.TakenPrints;
import footing.io.sketch.Sketch;
import footing.io.sketch.Sketches;
import footing.io.words.GroundTables;
import footing.io.words.Lacking;
import footing.io.words.SlopeCaution;
import footing.io.words.TakenWords;
import java.util.ArrayList;
import java.util.List;

/** A machine's packages side by side on the ground, and the one looked at drawn to scale. */
record GroundView(
        String carried,
        List<GroundTables.Block> blocks,
        List<Sketch> sketches,
        List<ToMeasure> lacking,
        String slopeCaution) {
    /** With prints taken in trials in place of those of the case, where they hold. */
    static GroundView of(Bench stated, MeasurePanel panel, List<TakenPrint> prints) {
        TakenPrints.Placed placed = TakenPrints.into(stated.stated(), prints);
        Bench bench = stated.with(placed.stated());
        MachineGround ground = MachineGround.of(bench.stated(), bench.machine().id());
        Lacking lacking = new Lacking();
        List<GroundTables.Block> blocks = new ArrayList<>(new GroundTables(ground, bench.si(), lacking).all());
        if (!placed.unused().isEmpty()) {
            List<String> unused = placed.unused().stream()
                    .map(u -> TakenWords.of(u) + "; " + TakenWords.advice(u.why()) + ".")
                    .toList();
            blocks.add(0, new GroundTables.Block("Prints that change nothing", List.of(), List.of(), unused));
        }
        return new GroundView(
                bench.machine().carries().id(),
                blocks,
                sketches(bench, ground),
                ToMeasure.of(lacking, panel, bench.stated()),
                SlopeCaution.of(ground));
    }

    private static List<Sketch> sketches(Bench bench, MachineGround ground) {
        SetUp setUp = SetUp.of(bench.stated(), bench.machine().id(), bench.wheels(), null);
        PackageGround here = new PackageGround(ground.machine(), setUp.change());
        Sketches draw = new Sketches(bench.si());
        List<Sketch> all = new ArrayList<>(draw.prints(ground, here));
        draw.slope(ground, here).ifPresent(all::add);
        draw.inflation(here).ifPresent(all::add);
        return all;
    }
}
