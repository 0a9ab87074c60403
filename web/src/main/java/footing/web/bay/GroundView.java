package footing.web.bay;

import footing.core.fitting.SetUp;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import footing.io.sketch.Sketch;
import footing.io.sketch.Sketches;
import footing.io.words.GroundTables;
import footing.io.words.Lacking;
import footing.io.words.SlopeCaution;
import java.util.ArrayList;
import java.util.List;

/** A machine's packages side by side on the ground, and the one looked at drawn to scale. */
record GroundView(
        String carried,
        List<GroundTables.Block> blocks,
        List<Sketch> sketches,
        List<ToMeasure> lacking,
        String slopeCaution) {
    static GroundView of(Bench bench, MeasurePanel panel) {
        MachineGround ground = MachineGround.of(bench.stated(), bench.machine().id());
        Lacking lacking = new Lacking();
        List<GroundTables.Block> blocks = new GroundTables(ground, bench.si(), lacking).all();
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
