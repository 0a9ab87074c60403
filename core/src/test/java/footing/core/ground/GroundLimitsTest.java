package footing.core.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import footing.core.fleet.Kind;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outside its limits an answer says so instead of a number; a broken quantity is refused. */
class GroundLimitsTest {
    private static final Print AIRED =
            new Print(Length.ofInches(4.5), Length.ofInches(9), 3, Mass.ofPounds(500), Pressure.ofPsi(12));
    private static final Print HARD = new Print(Length.ofInches(3), Length.ofInches(5), 4, Mass.ofPounds(250), null);

    private static Judged<Patch> air(double psi, double pounds, Print print) {
        return TirePatch.of(
                new TirePatch.Tire(Kind.AIR, Length.ofInches(23), null, Pressure.ofPsi(psi), print),
                Mass.ofPounds(pounds));
    }

    @Test
    void patch_farFromItsPrint_isOutside() {
        assertThat(air(12, 240, AIRED)).isInstanceOf(Judged.Outside.class);
        assertThat(air(12, 1010, AIRED)).isInstanceOf(Judged.Outside.class);
        assertThat(air(5.9, 500, AIRED)).isInstanceOf(Judged.Outside.class);
        assertThat(air(24.1, 500, AIRED)).isInstanceOf(Judged.Outside.class);
        assertThat(air(12, 300, AIRED)).isInstanceOf(Judged.Known.class);
    }

    @Test
    void patch_printBelowInflation_isOutside() {
        Print huge = new Print(Length.ofInches(9), Length.ofInches(9), 3, Mass.ofPounds(500), Pressure.ofPsi(12));

        assertThat(air(12, 500, huge)).isInstanceOf(Judged.Outside.class);
    }

    @Test
    void patch_unairedFarFromItsPrint_isOutside() {
        for (Kind kind : new Kind[] {Kind.FOAM, Kind.SOLID, Kind.AIRLESS}) {
            var tire = new TirePatch.Tire(kind, null, null, null, HARD);
            assertThat(TirePatch.of(tire, Mass.ofPounds(190))).isInstanceOf(Judged.Outside.class);
            assertThat(TirePatch.of(tire, Mass.ofPounds(320))).isInstanceOf(Judged.Outside.class);
            assertThat(TirePatch.of(tire, Mass.ofPounds(270))).isInstanceOf(Judged.Known.class);
        }
    }

    @Test
    void patch_nothingMeasured_namesWhatLacks() {
        var solid = new TirePatch.Tire(Kind.SOLID, null, null, null, null);
        var air = new TirePatch.Tire(Kind.AIR, null, null, null, AIRED);

        assertThat(TirePatch.of(solid, new Mass(100))).isEqualTo(Judged.lacks("print"));
        assertThat(TirePatch.of(air, new Mass(100))).isEqualTo(Judged.lacks("pressure"));
    }

    @Test
    void prior_outsideTheSizesItIsFor_isOutside() {
        var caster = new TirePatch.Tire(Kind.AIR, Length.ofInches(13), null, Pressure.ofPsi(15), null);

        assertThat(TirePatch.of(caster, new Mass(200))).isInstanceOf(Judged.Outside.class);
        assertThat(TirePatch.of(
                        new TirePatch.Tire(Kind.AIR, Length.ofInches(23), null, Pressure.ofPsi(9), null),
                        new Mass(200)))
                .isInstanceOf(Judged.Outside.class);
    }

    @Test
    void rollingRadius_impossibleOrFlat_isOutside() {
        assertThat(Rolling.radius(new Length(0.6), new Length(0.31))).isInstanceOf(Judged.Outside.class);
        assertThat(Rolling.radius(new Length(0.6), new Length(0.2))).isInstanceOf(Judged.Outside.class);
    }

    @Test
    void lift_tooLowOrImpossible_isOutside() {
        LiftedAxle low =
                new LiftedAxle(new Mass(600), new Length(0.38), new Length(1.25), new Length(0.2), new Mass(170));
        LiftedAxle odd =
                new LiftedAxle(new Mass(600), new Length(0.38), new Length(1.25), new Length(0.4), new Mass(550));

        assertThat(low.height(new Length(0.28))).isInstanceOf(Judged.Outside.class);
        assertThat(odd.height(new Length(0.28))).isInstanceOf(Judged.Outside.class);
    }

    @Test
    void rating_farBelowItsPressure_isOutside() {
        LoadRating rating = new LoadRating(Mass.ofPounds(1340), Pressure.ofPsi(20));

        assertThat(rating.at(Pressure.ofPsi(9))).isInstanceOf(Judged.Outside.class);
        assertThat(rating.at(Pressure.ofPsi(30)).value()).contains(Mass.ofPounds(1340));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void stance_noMeasure_isRefused(double x) {
        assertThatThrownBy(() -> Stances.of(x, 0.4, 1.25, 1, 0.55, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stances.of(6000, x, 1.25, 1, 0.55, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stances.of(6000, 0.4, x, 1, 0.55, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stances.of(6000, 0.4, 1.25, x, 0.55, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Stances.of(6000, 0.4, 1.25, 1, x, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlopeHold.across(Stances.at(0.55, 1), x)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PivotScrub.meanRadius(x, 0.2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void stance_centerBeyondTheCasters_isRefusedWithWords() {
        assertThatThrownBy(() -> Stances.of(6000, 1.3, 1.25, 1, 0.55, 1)).hasMessageContaining("between the axles");
    }
}
