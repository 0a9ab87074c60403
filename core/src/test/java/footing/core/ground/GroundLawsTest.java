package footing.core.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Kind;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import java.util.List;
import org.junit.jupiter.api.Test;

class GroundLawsTest {
    private static final Print PRINT =
            new Print(Length.ofInches(4.5), Length.ofInches(9), 3, Mass.ofPounds(500), Pressure.ofPsi(12));

    private static TirePatch.Tire air(double psi) {
        return new TirePatch.Tire(Kind.AIR, Length.ofInches(23), null, Pressure.ofPsi(psi), PRINT);
    }

    private static Patch patch(double psi, double pounds) {
        return TirePatch.of(air(psi), Mass.ofPounds(pounds)).value().orElseThrow();
    }

    @Test
    void patch_morePressureOrLessLoad_isSmaller() {
        double before = Double.POSITIVE_INFINITY;
        for (double psi = 6; psi <= 24; psi += 0.5) {
            double area = patch(psi, 500).area().squareMeters();
            assertThat(area).isLessThan(before);
            before = area;
        }
        assertThat(patch(12, 400).area().squareMeters())
                .isLessThan(patch(12, 500).area().squareMeters());
    }

    @Test
    void patch_anyLoadAndPressure_carriesItsLoad() {
        for (double pounds : new double[] {250, 333, 500, 999}) {
            for (double psi : new double[] {6, 12, 24}) {
                Patch p = patch(psi, pounds);
                double carried = p.mean().pascals() * p.area().squareMeters();
                assertThat(carried).isCloseTo(Mass.ofPounds(pounds).newtons(), within(1e-9 * carried));
            }
        }
    }

    @Test
    void patch_atItsOwnPrint_isThePrint() {
        Patch p = patch(12, 500);

        assertThat(p.basis()).isEqualTo(Patch.Basis.PRINT);
        assertThat(p.area().squareMeters()).isCloseTo(PRINT.area().squareMeters(), within(1e-15));
        assertThat(java.util.Objects.requireNonNull(p.length()).inches()).isCloseTo(4.5, within(1e-12));
    }

    @Test
    void airless_moreLoad_longerPrintSamePressure() {
        Print print = new Print(Length.ofInches(7), Length.ofInches(9), 4, Mass.ofPounds(500), null);
        var tire = new TirePatch.Tire(Kind.AIRLESS, null, null, null, print);
        Patch light = TirePatch.of(tire, Mass.ofPounds(500)).value().orElseThrow();
        Patch heavy = TirePatch.of(tire, Mass.ofPounds(600)).value().orElseThrow();

        assertThat(heavy.mean().pascals()).isCloseTo(light.mean().pascals(), within(1e-9));
        assertThat(java.util.Objects.requireNonNull(heavy.length()).inches()).isCloseTo(7 * 1.2, within(1e-9));
    }

    @Test
    void tip_higherCenter_comesEarlier() {
        double before = 90;
        for (double height = 0.3; height < 1.2; height += 0.05) {
            Stance s = Stances.at(height, 1);
            double angle = Tip.sideways(s).degrees();
            assertThat(angle).isLessThan(before);
            assertThat(Tip.sidewaysPivoted(s, new Length(0)).degrees()).isLessThan(angle);
            assertThat(Tip.sidewaysOnSoftTires(s, 220e3).degrees()).isLessThan(angle);
            before = angle;
        }
    }

    @Test
    void tip_widerTrack_comesLater() {
        assertThat(Tip.sideways(Stances.at(0.55, 1.1)).degrees())
                .isGreaterThan(Tip.sideways(Stances.at(0.55, 1)).degrees());
        assertThat(SlopeHold.across(Stances.at(0.55, 1.1), 0.45).degrees())
                .isGreaterThan(SlopeHold.across(Stances.at(0.55, 1), 0.45).degrees());
    }

    @Test
    void tip_veryStiffTires_isThatOfRigidOnes() {
        Stance s = Stances.at(0.55, 1);

        assertThat(Tip.sidewaysOnSoftTires(s, 1e12).degrees())
                .isCloseTo(Tip.sideways(s).degrees(), within(1e-6));
    }

    @Test
    void tip_swingingAxleAtItsLoadsLimit_liftsTheUphillWheelsThere() {
        Stance s = Stances.at(0.55, 1);
        double tip = Tip.sideways(s).degrees();

        assertThat(SlopeLoads.across(s, Angle.ofDegrees(tip - 0.01))
                        .value()
                        .orElseThrow()
                        .upper()
                        .kilograms())
                .isCloseTo(0, within(0.2));
        assertThat(SlopeLoads.across(s, Angle.ofDegrees(tip + 0.01))).isInstanceOf(Judged.Outside.class);
    }

    @Test
    void across_noHeightAndNoCasterLoad_isTheAngleOfFriction() {
        Stance s = Stances.of(6000, 1e-9, 1.25, 1, 1e-9, 1);

        assertThat(SlopeHold.across(s, 0.45).degrees())
                .isCloseTo(SlopeHold.everyWheel(0.45).degrees(), within(1e-5));
    }

    @Test
    void scrub_square_isBetweenCirclesInsideAndAround() {
        double r = PivotScrub.meanRadius(0.2, 0.2);

        assertThat(r).isBetween(2 * 0.1 / 3, 2 * 0.1 * Math.sqrt(2) / 3);
        assertThat(PivotScrub.meanRadius(0.1, 0.3)).isCloseTo(PivotScrub.meanRadius(0.3, 0.1), within(1e-15));
    }

    @Test
    void lengths_allTwiceAsLarge_scaleAsTheirDimensionsDo() {
        assertThat(PivotScrub.meanRadius(0.3, 0.5)).isCloseTo(2 * PivotScrub.meanRadius(0.15, 0.25), within(1e-12));
        assertThat(SuperEllipse.area(0.3, 0.5, 3)).isCloseTo(4 * SuperEllipse.area(0.15, 0.25, 3), within(1e-12));
        assertThat(DepthStress.below(93e3, 4 * 0.0269, 0.2, 5))
                .isCloseTo(DepthStress.below(93e3, 0.0269, 0.1, 5), within(1e-6));
        assertThat(Tip.sideways(Stances.of(6000, 0.8, 2.5, 2, 1.1, 2)).degrees())
                .isCloseTo(Tip.sideways(Stances.at(0.55, 1)).degrees(), within(1e-9));
    }

    /** Angles know neither the size nor the weight of a machine; loads go with its weight alone. */
    @Test
    void slopes_machineTwiceAsLargeAndHeavy_holdAndTipAlike() {
        Stance one = Stances.at(0.55, 1);
        Stance two = Stances.of(12000, 0.8, 2.5, 2, 1.1, 2);

        assertThat(SlopeHold.across(two, 0.45).degrees())
                .isCloseTo(SlopeHold.across(one, 0.45).degrees(), within(1e-9));
        assertThat(SlopeHold.climb(two, 0.45).degrees())
                .isCloseTo(SlopeHold.climb(one, 0.45).degrees(), within(1e-9));
        assertThat(Tip.backward(two).degrees()).isCloseTo(Tip.backward(one).degrees(), within(1e-9));
        SlopeLoads light = SlopeLoads.across(one, Angle.ofDegrees(15)).value().orElseThrow();
        SlopeLoads heavy = SlopeLoads.across(two, Angle.ofDegrees(15)).value().orElseThrow();
        assertThat(heavy.lower().kilograms()).isCloseTo(2 * light.lower().kilograms(), within(1e-9));
        assertThat(heavy.upper().kilograms()).isCloseTo(2 * light.upper().kilograms(), within(1e-9));
    }

    /** What the wheels carry is the part of the weight square to the slope. */
    @Test
    void slopes_loads_addUpToTheWeightTimesItsCosine() {
        Stance s = Stances.at(0.55, 1);
        for (int degrees = 0; degrees <= 30; degrees += 5) {
            Angle slope = Angle.ofDegrees(degrees);
            double due = s.mass().kilograms() * Math.cos(slope.radians());
            SlopeLoads across = SlopeLoads.across(s, slope).value().orElseThrow();
            SlopeLoads up = SlopeLoads.up(s, slope).value().orElseThrow();
            assertThat(across.lower().plus(across.upper()).kilograms()).isCloseTo(due, within(1e-9));
            assertThat(up.lower().plus(up.upper()).kilograms()).isCloseTo(due, within(1e-9));
        }
    }

    @Test
    void stress_deeper_isLess() {
        assertThat(DepthStress.below(93e3, 0.0269, 0, 5)).isEqualTo(93e3);
        assertThat(DepthStress.below(93e3, 0.0269, 0.3, 5)).isLessThan(DepthStress.below(93e3, 0.0269, 0.1, 5));
        assertThat(DepthStress.below(93e3, 0.0269, 0.1, DepthStress.SOFT))
                .isGreaterThan(DepthStress.below(93e3, 0.0269, 0.1, DepthStress.HARD));
    }

    @Test
    void marking_wetter_tellsSmallerDifferencesApart() {
        Pressure twelve = Pressure.ofPsi(12);
        List<Marking> fifteen = List.of(Wetness.values()).stream()
                .map(w -> Marking.of(twelve, Pressure.ofPsi(15), w))
                .toList();

        assertThat(fifteen).containsExactly(Marking.ALIKE, Marking.MORE, Marking.MORE);
        assertThat(Marking.of(Pressure.ofPsi(15), twelve, Wetness.WET)).isEqualTo(Marking.LESS);
    }

    @Test
    void drift_shorterOnTheRight_turnsRight() {
        double radius = Rolling.driftRadius(new Length(1), new Length(0.30), new Length(0.29));

        assertThat(radius).isCloseTo(29.5, within(1e-9));
        assertThat(Rolling.driftRadius(new Length(1), new Length(0.3), new Length(0.3)))
                .isInfinite();
    }

    @Test
    void scales_heavierDrives_moveTheCenterBack() {
        WheelLoads loads = WheelLoads.shared(new Mass(600), 0.34);
        Length wheelbase = new Length(1.25);
        WheelLoads filled = loads.plus(Mass.ofPounds(80), new Mass(0));

        assertThat(loads.ahead(wheelbase).meters()).isCloseTo(0.425, within(1e-12));
        assertThat(filled.ahead(wheelbase).meters()).isLessThan(0.425);
        assertThat(filled.casters()).isEqualTo(loads.casters());
    }
}
