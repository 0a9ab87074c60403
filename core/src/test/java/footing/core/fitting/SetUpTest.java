package footing.core.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.ground.Change;
import footing.core.ground.Judged;
import footing.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class SetUpTest {
    private static final double INCH = Bay.INCH;

    static SetUp setUp(Measures machine, Measures drive, Measures caster) {
        Change change = new Change(Bay.pair("old", Bay.drive(), Bay.caster()), Bay.pair("new", drive, caster));
        return new SetUp("m", machine, change, null);
    }

    static Measures decked() {
        return Bay.machine()
                .with(Measure.HANGER_REAR, 14 * INCH)
                .with(Measure.HANGER_FRONT, 36 * INCH)
                .with(Measure.TIP_REAR, 15.5 * INCH)
                .with(Measure.TIP_FRONT, 36 * INCH)
                .with(Measure.THREAD_PITCH, 0.0015)
                .with(Measure.DECK_HEIGHT, 3.25 * INCH)
                .with(Measure.DECK_RAKE, 0.19 * INCH);
    }

    /** A half-inch taller drive costs the whole tolerance of the rake: 0.19 in on a 20.5 in blade and 53.7 in wheelbase. */
    @Test
    void deck_driveHalfAnInchTaller_raisesTheRakeByThreeSixteenths() {
        SetUp s = setUp(decked(), Bay.drive().with(Measure.LOADED_RADIUS, 11.6 * INCH), Bay.caster());
        SetUp.Deck deck = s.deck().value().orElseThrow();

        assertThat(deck.rakeAfter().inches() - deck.rakeBefore().inches()).isCloseTo(0.5 * 20.5 / 53.7, within(1e-9));
        assertThat(deck.heightAfter().inches() - deck.heightBefore().inches())
                .isCloseTo(0.5 * (53.7 - 25.75) / 53.7, within(1e-9));
        assertThat(s.untouched().value().orElseThrow().rearTip().inches())
                .isCloseTo(0.5 * (53.7 - 15.5) / 53.7, within(1e-9));
        assertThat(s.pitch().value().orElseThrow().degrees()).isNegative();
    }

    @Test
    void turns_withoutATarget_undoTheRiseAtEachHanger() {
        SetUp s = setUp(decked(), Bay.drive().with(Measure.LOADED_RADIUS, 11.6 * INCH), Bay.caster());
        SetUp.Hangers turns = s.turns().value().orElseThrow();

        assertThat(turns.rear()).isCloseTo(12.7 * (53.7 - 14) / 53.7 / 1.5, within(1e-9));
        assertThat(turns.front()).isCloseTo(12.7 * (53.7 - 36) / 53.7 / 1.5, within(1e-9));
    }

    @Test
    void turns_deckHeightUnknown_stillRestore() {
        Measures unknown = decked().without(Measure.DECK_HEIGHT).without(Measure.DECK_RAKE);
        Measures taller = Bay.drive().with(Measure.LOADED_RADIUS, 11.6 * INCH);
        SetUp.Hangers known =
                setUp(decked(), taller, Bay.caster()).turns().value().orElseThrow();
        SetUp.Hangers turns =
                setUp(unknown, taller, Bay.caster()).turns().value().orElseThrow();

        assertThat(turns.rear()).isCloseTo(known.rear(), within(1e-9));
        assertThat(turns.front()).isCloseTo(known.front(), within(1e-9));
    }

    @Test
    void turns_toALowerTarget_lowerIt() {
        SetUp same = setUp(decked(), Bay.drive(), Bay.caster());
        SetUp lower =
                new SetUp("m", decked(), same.change(), new SetUp.Target(Length.ofInches(3), Length.ofInches(0.19)));

        assertThat(same.turns().value().orElseThrow().rear()).isCloseTo(0, within(1e-9));
        assertThat(lower.turns().value().orElseThrow().rear()).isCloseTo(6.35 / 1.5, within(1e-9));
        assertThat(lower.turns().value().orElseThrow().front()).isCloseTo(6.35 / 1.5, within(1e-9));
    }

    @Test
    void rise_withoutLoadedRadius_isFromSizesAndSaysSo() {
        SetUp s = setUp(
                decked(), Bay.drive().without(Measure.LOADED_RADIUS).with(Measure.DIAMETER, 24.6 * INCH), Bay.caster());
        Change.Rise rise = s.rise(Position.DRIVE).value().orElseThrow();

        assertThat(rise.fromSizes()).isTrue();
        assertThat(rise.by().inches()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void setUp_nothingMeasured_namesWhatLacks() {
        SetUp s = setUp(Measures.NONE, Measures.NONE, Bay.caster());

        assertThat(s.rise(Position.DRIVE)).isEqualTo(Judged.lacks("assemblies.new-drive.loadedRadius"));
        assertThat(s.untouched())
                .isEqualTo(new Judged.Lacks<>(List.of("machines.m.deck.tips.rear", "machines.m.deck.tips.front")));
        assertThat(s.width()).isEqualTo(Judged.lacks("machines.m.track.drive"));
    }

    @Test
    void widthAndTrack_offsetOutward_growTwice() {
        SetUp s = setUp(decked(), Bay.drive().with(Measure.OFFSET, 0.5 * INCH), Bay.caster());

        assertThat(s.track().value().orElseThrow().inches()).isCloseTo(1, within(1e-9));
        SetUp.Width width = s.width().value().orElseThrow();
        assertThat(width.after().inches() - width.before().inches()).isCloseTo(1, within(1e-9));
        SetUp.Tipping tip = s.tip().value().orElseThrow();
        assertThat(tip.after().degrees()).isGreaterThan(tip.before().degrees());
    }

    @Test
    void speed_largerDrive_isFasterByItsRollingRadius() {
        SetUp s = setUp(
                decked(),
                Bay.drive().with(Measure.DIAMETER, 24.6 * INCH).with(Measure.LOADED_RADIUS, 11.6 * INCH),
                Bay.caster());

        assertThat(s.speed().value().orElseThrow().ratio()).isBetween(1.03, 1.06);
        assertThat(s.speed().value().orElseThrow().fromSizes()).isFalse();
    }

    @Test
    void tip_tallerWheels_comesEarlier() {
        SetUp s = setUp(
                decked(),
                Bay.drive().with(Measure.LOADED_RADIUS, 12.1 * INCH),
                Bay.caster().with(Measure.LOADED_RADIUS, 7.2 * INCH));
        SetUp.Tipping tip = s.tip().value().orElseThrow();

        assertThat(tip.after().degrees()).isLessThan(tip.before().degrees());
    }

    @Test
    void blades_hangersLeftAlone_moveByTheRiseAndReturnToTheTarget() {
        SetUp s = setUp(decked(), Bay.drive().with(Measure.LOADED_RADIUS, 11.6 * INCH), Bay.caster());
        SetUp.BladeLines lines = s.blades().value().orElseThrow();
        SetUp.Untouched moved = s.untouched().value().orElseThrow();

        assertThat(lines.before().rearHeight().inches()).isCloseTo(3.25 + 0.095, within(1e-9));
        assertThat(lines.before().frontHeight().inches()).isCloseTo(3.25 - 0.095, within(1e-9));
        assertThat(lines.after().rearHeight().minus(lines.before().rearHeight()).meters())
                .isCloseTo(moved.rearTip().meters(), within(1e-12));
        assertThat(lines.after()
                        .frontHeight()
                        .minus(lines.before().frontHeight())
                        .meters())
                .isCloseTo(moved.frontTip().meters(), within(1e-12));
        assertThat(lines.wanted()).isEqualTo(lines.before());
        assertThat(s.blades()).isInstanceOf(Judged.Known.class);
        assertThat(setUp(decked().without(Measure.DECK_RAKE), Bay.drive(), Bay.caster())
                        .blades())
                .isEqualTo(Judged.lacks("machines.m.deck.rake"));
    }
}
