package footing.core.ground;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Kind;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Three ways in which work of this kind goes wrong, each with the test that would notice. */
class GroundTrapsTest {
    private static final double WHEEL = 2500 / 9.80665;

    /** A farm regression gives this tire a patch half a meter long, at a quarter of its inflation. */
    @Test
    void patch_mowerTireWithoutPrint_isNoFarmTires() {
        var tire = new TirePatch.Tire(Kind.AIR, new Length(0.61), new Length(0.305), Pressure.ofKilopascals(83), null);
        Patch patch = TirePatch.of(tire, new Mass(WHEEL)).value().orElseThrow();
        FarmTireContact farm = new FarmTireContact(WHEEL, 0.305, 0.61, 83, 83);

        assertThat(farm.length()).isGreaterThan(0.5);
        assertThat(patch.length()).isNotNull();
        assertThat(java.util.Objects.requireNonNull(patch.length()).meters()).isBetween(0.05, 0.2);
        assertThat(patch.low().kilopascals()).isGreaterThan(83);
        assertThat(farm.load() / farm.area()).isLessThan(83 / 2.0);
    }

    /** The casters hold nothing, and the drive tires hold the couple as well: nowhere near atan of the friction. */
    @Test
    void across_freeCasters_isFarBelowTheAngleOfFriction() {
        Stance stance = Stances.at(0.55, 1);

        for (double friction : new double[] {0.2, 0.35, 0.45, 0.55, 0.7}) {
            double angle = SlopeHold.across(stance, friction).degrees();
            assertThat(angle).isLessThan(0.62 * SlopeHold.everyWheel(friction).degrees());
            assertThat(angle)
                    .isLessThan(SlopeHold.acrossAtMost(stance, friction).degrees());
        }
    }

    /** A standard for roll-over structures of compact tractors says nothing about slopes. */
    @Test
    void sources_slopes_citeNoStandardForTractorFrames() throws IOException {
        List<Path> roots =
                List.of(Path.of("src/main"), Path.of("../io/src/main"), Path.of("../cli/src/main"), Path.of("../docs"));
        int read = 0;
        for (Path root : roots) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(GroundTrapsTest::isText).toList()) {
                    assertThat(Files.readString(file)).as(file.toString()).doesNotContainPattern("S\\s?478");
                    read++;
                }
            }
        }
        assertThat(read).isGreaterThan(100);
    }

    private static boolean isText(Path file) {
        String name = file.toString();
        return name.endsWith(".java") || name.endsWith(".md") || name.endsWith(".yaml");
    }
}
