package footing.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Kind;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.Seat;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FitTest {
    private static Finding only(Fit fit, Aspect aspect, Position position) {
        List<Finding> found = fit.findings().stream()
                .filter(f -> f.aspect() == aspect && f.position() == position)
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void fit_everythingKnownAndRight_fits() {
        Fit fit = Bay.fit(Bay.machine(), Bay.drive(), Bay.caster());

        assertThat(fit.verdict()).isEqualTo(Fits.FITS);
        assertThat(fit.open()).isEmpty();
    }

    /** Each measure of a wheel off by enough, one at a time. */
    @ParameterizedTest
    @CsvSource({
        "BOLTS, 4, BOLTS, DOES_NOT_FIT",
        "CIRCLE, 0.1016, CIRCLE, DOES_NOT_FIT",
        "CIRCLE, 0.1173, CIRCLE, CHECK",
        "DIAMETER, 0.70, ROOM, DOES_NOT_FIT",
        "DIAMETER, 0.66, ROOM, CHECK",
        "WIDTH, 0.40, ROOM, DOES_NOT_FIT",
        "OFFSET, 0.06, ROOM, DOES_NOT_FIT",
        "OFFSET, -0.03, ROOM, CHECK",
        "MAX_LOAD, 230, LOAD, DOES_NOT_FIT",
        "MAX_LOAD, 240, LOAD, FITS",
        "MAX_SPEED, 5, SPEED, DOES_NOT_FIT",
        "MAX_SPEED, 5.4, SPEED, FITS",
    })
    void fit_oneMeasureOfTheDriveOff_isSaid(Measure measure, double value, Aspect aspect, Fits expected) {
        Finding found =
                only(Bay.fit(Bay.machine(), Bay.drive().with(measure, value), Bay.caster()), aspect, Position.DRIVE);

        assertThat(found.verdict()).isEqualTo(expected);
        assertThat(found.have()).isPresent();
        assertThat(found.need()).isPresent();
        assertThat(found.margin().orElseThrow())
                .isCloseTo(found.have().orElseThrow() - found.need().orElseThrow(), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "AXLE, 0.0254, AXLE, DOES_NOT_FIT",
        "AXLE, 0.0159, AXLE, DOES_NOT_FIT",
        "AXLE, 0.0193, AXLE, FITS",
        "HUB_LENGTH, 0.19, HUB_LENGTH, DOES_NOT_FIT",
        "HUB_LENGTH, 0.17, HUB_LENGTH, CHECK",
        "HUB_LENGTH, 0.12, HUB_LENGTH, DOES_NOT_FIT",
        "DIAMETER, 0.42, ROOM, DOES_NOT_FIT",
        "MAX_LOAD, 100, LOAD, DOES_NOT_FIT",
    })
    void fit_oneMeasureOfTheCasterOff_isSaid(Measure measure, double value, Aspect aspect, Fits expected) {
        Fit fit = Bay.fit(Bay.machine(), Bay.drive(), Bay.caster().with(measure, value));

        assertThat(only(fit, aspect, Position.CASTER).verdict()).isEqualTo(expected);
    }

    @Test
    void fit_otherSeat_doesNotFit() {
        Fit fit = Bay.fit(Bay.machine(), Bay.drive().with(Seat.FLAT), Bay.caster());

        assertThat(fit.verdict()).isEqualTo(Fits.DOES_NOT_FIT);
        assertThat(only(fit, Aspect.SEAT, Position.DRIVE).verdict()).isEqualTo(Fits.DOES_NOT_FIT);
    }

    /** Whatever is taken away, no fit comes of not knowing, and what would settle it is what was taken. */
    @ParameterizedTest
    @EnumSource(names = {"BOLTS", "CIRCLE", "DIAMETER", "WIDTH", "OFFSET", "MAX_LOAD", "MAX_SPEED"})
    void fit_oneMeasureUnknown_isACheckThatNamesIt(Measure measure) {
        Fit fit = Bay.fit(Bay.machine(), Bay.drive().without(measure), Bay.caster());

        assertThat(fit.verdict()).isEqualTo(Fits.CHECK);
        List<Finding> open =
                fit.findings().stream().filter(f -> f.verdict() == Fits.CHECK).toList();
        assertThat(open).hasSize(1);
        assertThat(Objects.requireNonNull(open.get(0).settle()).path())
                .isEqualTo("assemblies.new-drive." + measure.key());
    }

    @ParameterizedTest
    @EnumSource(
            names = {
                "HUB_BOLTS",
                "HUB_CIRCLE",
                "FORK_AXLE",
                "FORK_WIDTH",
                "CLEARANCE_DRIVE",
                "CLEARANCE_CASTER",
                "TOP_SPEED"
            })
    void fit_oneMeasureOfTheMachineUnknown_isACheckThatNamesIt(Measure measure) {
        Fit fit = Bay.fit(Bay.machine().without(measure), Bay.drive(), Bay.caster());

        assertThat(fit.verdict()).isEqualTo(Fits.CHECK);
        assertThat(fit.findings().stream()
                        .filter(f -> f.verdict() == Fits.CHECK)
                        .map(f -> Objects.requireNonNull(f.settle()).path())
                        .distinct())
                .containsExactly("machines.m." + measure.key());
    }

    @Test
    void fit_nothingMeasuredAtAll_leavesTwoActsForEachWheel() {
        Fit fit = Fit.of(new FitQuestion(
                "m",
                Measures.NONE,
                Bay.pair("old", Measures.NONE, Measures.NONE),
                Bay.pair("new", Measures.NONE, Measures.NONE)));

        assertThat(fit.verdict()).isEqualTo(Fits.CHECK);
        assertThat(fit.open()).hasSize(4);
    }

    @Test
    void fit_packageItCarries_leavesOnlyItsRatingOpen() {
        WheelPair carried = Bay.pair("old", Measures.NONE, Measures.NONE);
        Fit fit = Fit.of(new FitQuestion("m", Measures.NONE, carried, carried));

        assertThat(fit.open()).allMatch(o -> o.group() == Aspect.Group.RATING).hasSize(2);
    }

    @Test
    void fit_tireTreatedInPlace_boltsOnAsBefore() {
        WheelPair carried = Bay.pair("old", Bay.drive(), Bay.caster());
        WheelFacts foam = new WheelFacts(
                "foam", Kind.FOAM, Position.DRIVE, carried.drive().id(), Measures.NONE, Map.of());
        Fit fit = Fit.of(new FitQuestion("m", Bay.machine(), carried, new WheelPair("f", foam, carried.caster())));

        assertThat(only(fit, Aspect.BOLTS, Position.DRIVE).why()).isEqualTo(Finding.Why.AS_CARRIED);
        assertThat(only(fit, Aspect.LOAD, Position.DRIVE).verdict()).isEqualTo(Fits.CHECK);
    }

    @Test
    void fit_heavierWheels_countOnTheirOwnAxle() {
        Measures foam = Bay.drive().with(Measure.MASS, 142 * Bay.POUND).with(Measure.MAX_LOAD, 600 * Bay.POUND);
        Finding load = only(Bay.fit(Bay.machine(), foam, Bay.caster()), Aspect.LOAD, Position.DRIVE);

        assertThat(load.need().orElseThrow()).isCloseTo(620 * Bay.POUND, within(1e-9));
        assertThat(load.verdict()).isEqualTo(Fits.DOES_NOT_FIT);
    }

    @Test
    void fit_ratingAtAHigherPressure_isCutDown() {
        Measures soft = Bay.drive()
                .with(Measure.MAX_LOAD, 700 * Bay.POUND)
                .with(Measure.MAX_LOAD_AT, 150e3)
                .with(Measure.PRESSURE, 80e3);
        Finding load = only(Bay.fit(Bay.machine(), soft, Bay.caster()), Aspect.LOAD, Position.DRIVE);

        assertThat(load.have().orElseThrow()).isCloseTo(700 * Bay.POUND * Math.pow(80 / 150.0, 0.585), within(1e-9));
        assertThat(load.verdict()).isEqualTo(Fits.DOES_NOT_FIT);
    }

    @ParameterizedTest
    @CsvSource({"56, FITS", "54.2, CHECK", "53, DOES_NOT_FIT"})
    void fit_gate_isComparedWithTheWidthOverTheTires(double inches, Fits expected) {
        Measures gated = Bay.machine().with(Measure.GATE, inches * Bay.INCH);
        Finding gate = Bay.fit(gated, Bay.drive(), Bay.caster()).findings().stream()
                .filter(f -> f.aspect() == Aspect.GATE)
                .findFirst()
                .orElseThrow();

        assertThat(gate.need().orElseThrow()).isCloseTo((41.9 + 11.8) * Bay.INCH, within(1e-9));
        assertThat(gate.verdict()).isEqualTo(expected);
    }

    @Test
    void fit_castersStandWider_theGateIsComparedWithThem() {
        Measures wide = Bay.machine().with(Measure.GATE, 60 * Bay.INCH).with(Measure.TRACK_CASTER, 54 * Bay.INCH);
        Finding gate = Bay.fit(wide, Bay.drive(), Bay.caster()).findings().stream()
                .filter(f -> f.aspect() == Aspect.GATE)
                .findFirst()
                .orElseThrow();

        assertThat(gate.need().orElseThrow()).isCloseTo((54 + 6.5) * Bay.INCH, within(1e-9));
        assertThat(gate.verdict()).isEqualTo(Fits.DOES_NOT_FIT);
    }

    /** One look at the machine's plate settles it for all four wheels. */
    @Test
    void open_topSpeedUnknown_isOneActAtTheMachine() {
        Fit fit = Bay.fit(Bay.machine().without(Measure.TOP_SPEED), Bay.drive(), Bay.caster());

        assertThat(fit.open()).hasSize(1);
        assertThat(fit.open().get(0).position()).isNull();
        assertThat(fit.open().get(0).findings()).hasSize(2);
    }

    @Test
    void fit_catcherAndSulky_loseWhatTheTireGrows() {
        Measures pulled =
                Bay.machine().with(Measure.CLEARANCE_CATCHER, 1 * Bay.INCH).with(Measure.CLEARANCE_SULKY, 3 * Bay.INCH);
        Fit fit = Bay.fit(pulled, Bay.drive().with(Measure.DIAMETER, 24.6 * Bay.INCH), Bay.caster());

        assertThat(only(fit, Aspect.CATCHER, Position.DRIVE).verdict()).isEqualTo(Fits.CHECK);
        assertThat(only(fit, Aspect.SULKY, Position.DRIVE).verdict()).isEqualTo(Fits.FITS);
        assertThat(only(fit, Aspect.SULKY, Position.DRIVE).have().orElseThrow())
                .isCloseTo(2.5 * Bay.INCH, within(1e-9));
    }
}
