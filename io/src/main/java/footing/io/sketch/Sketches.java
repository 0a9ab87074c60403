package footing.io.sketch;

import footing.core.fitting.FitQuestion;
import footing.core.fitting.SetUp;
import footing.core.ground.MachineGround;
import footing.core.ground.PackageGround;
import java.util.List;
import java.util.Optional;

/**
 * Every drawing there is. One that lacks what it would show is left out.
 *
 * @param si how quantities are shown
 */
public record Sketches(boolean si) {
    /** Prints on the ground, one drawing for each package, the carried one first, all at one scale. */
    public List<Sketch> prints(MachineGround ground) {
        return PrintSketch.all(ground.packages(), si);
    }

    /** The prints of what it carries and of one package, at one scale. */
    public List<Sketch> prints(MachineGround ground, PackageGround wanted) {
        boolean carried = wanted.wheels().id().equals(ground.carried().wheels().id());
        return PrintSketch.all(carried ? List.of(wanted) : List.of(ground.carried(), wanted), si);
    }

    /** The machine standing across its ceiling slope; goes with the caution for slopes. */
    public Optional<Sketch> slope(MachineGround ground, PackageGround wheels) {
        return SlopeSketch.of(ground, wheels, si);
    }

    public Optional<Sketch> inflation(PackageGround wheels) {
        return InflationSketch.of(wheels, si);
    }

    /** The deck before, after, and as it should be. */
    public Optional<Sketch> deck(SetUp setUp) {
        return DeckSketch.of(setUp, si);
    }

    /** Bolt holes over studs. */
    public Optional<Sketch> bolts(FitQuestion question) {
        return BoltSketch.of(question, si);
    }
}
