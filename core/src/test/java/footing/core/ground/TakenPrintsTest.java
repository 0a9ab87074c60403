package footing.core.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.Kind;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Numbers;
import footing.core.fleet.Position;
import footing.core.fleet.Season;
import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TakenPrintsTest {
    private static final double PSI = Pressure.ofPsi(1).pascals();
    private static final Case CASE = stated();

    /** An air tire at 12 psi with a print of its own, sealant in it, foam, and an air tire of unknown pressure. */
    private static Case stated() {
        Measures air = Measures.of(Map.of(
                Measure.PRESSURE, 12 * PSI,
                Measure.PRINT_LENGTH, 0.1,
                Measure.PRINT_WIDTH, 0.24,
                Measure.PRINT_SHAPE, 4.0,
                Measure.PRINT_LOAD, 227.0,
                Measure.PRINT_PRESSURE, 12 * PSI));
        Case.Heading heading = new Case.Heading("t", null, Case.Prepared.NOBODY, LocalDate.EPOCH, "USD", false);
        return new Case(
                heading,
                Season.ALL_YEAR,
                new Case.Money(new Numbers(Map.of()), null, null),
                List.of(),
                List.of(
                        assembly("air", Kind.AIR, null, air),
                        assembly("sealant", Kind.SEALANT, "air", Measures.NONE),
                        assembly("foam", Kind.FOAM, null, Measures.NONE),
                        assembly("bare", Kind.AIR, null, Measures.NONE)),
                List.of(),
                List.of());
    }

    private static Case.Assembly assembly(String id, Kind kind, @Nullable String treats, Measures measures) {
        return new Case.Assembly(id, kind, Position.DRIVE, null, treats, null, new Numbers(Map.of()), measures);
    }

    private static TakenPrint print(String assembly, double length, @Nullable Double psi, @Nullable Double kilograms) {
        return new TakenPrint(
                assembly,
                new TakenPrint.Outline(new Length(length), new Length(0.2), new Area(0.9 * length * 0.2)),
                kilograms == null ? null : new Mass(kilograms),
                psi == null ? null : Pressure.ofPsi(psi),
                new TakenPrint.Taken("Prints", "2027-02-06"));
    }

    private static Measures of(TakenPrints.Placed placed, String id) {
        return placed.stated().assembly(id).measures();
    }

    @Test
    void into_printsAtThePressureItIsRunAt_areTheirMean() {
        TakenPrints.Placed placed =
                TakenPrints.into(CASE, List.of(print("air", 0.11, 12.0, 220.0), print("air", 0.13, 12.3, 224.0)));

        Measures air = of(placed, "air");
        assertThat(placed.unused()).isEmpty();
        assertThat(air.get(Measure.PRINT_LENGTH)).hasValueCloseTo(0.12, within(1e-12));
        assertThat(air.get(Measure.PRINT_WIDTH)).hasValueCloseTo(0.2, within(1e-12));
        assertThat(air.get(Measure.PRINT_LOAD)).hasValueCloseTo(222.0, within(1e-9));
        assertThat(air.get(Measure.PRINT_PRESSURE)).hasValueCloseTo(12.15 * PSI, within(1e-6));
        assertThat(SuperEllipse.fullness(air.get(Measure.PRINT_SHAPE).orElseThrow()))
                .isCloseTo(0.9, within(1e-9));
        assertThat(air.printed()).isEqualTo(new Measures.Printed("air", 2, List.of("2027-02-06"), List.of("Prints")));
    }

    @Test
    void into_printsAtAnotherPressure_changeNothingAndSaySo() {
        TakenPrints.Placed placed =
                TakenPrints.into(CASE, List.of(print("air", 0.11, 14.0, 220.0), print("air", 0.12, 12.6, 220.0)));

        assertThat(placed.stated()).isEqualTo(CASE);
        assertThat(placed.unused()).containsExactly(new TakenPrints.Unused("air", 2, TakenPrints.Why.OTHER_PRESSURE));
    }

    @Test
    void into_printsOfWhatHoldsNoAir_needNoPressure() {
        TakenPrints.Placed placed = TakenPrints.into(CASE, List.of(print("foam", 0.09, null, 260.0)));

        assertThat(of(placed, "foam").get(Measure.PRINT_LENGTH)).hasValue(0.09);
        assertThat(of(placed, "foam").has(Measure.PRINT_PRESSURE)).isFalse();
    }

    /** Sealant is run at the pressure of the tire it was poured into. */
    @Test
    void into_printOfSealant_isHeldAgainstTheTreatedTiresPressure() {
        TakenPrints.Placed placed = TakenPrints.into(CASE, List.of(print("sealant", 0.11, 12.0, 220.0)));

        assertThat(of(placed, "sealant").printed()).isNotNull();
        assertThat(of(placed, "air").printed()).isNull();
    }

    @Test
    void into_loadFarFromTheOthers_isLeftOut() {
        TakenPrints.Placed placed = TakenPrints.into(
                CASE,
                List.of(
                        print("air", 0.11, 12.0, 220.0),
                        print("air", 0.20, 12.0, 300.0),
                        print("air", 0.11, 12.0, 221.0)));

        assertThat(of(placed, "air").get(Measure.PRINT_LENGTH)).hasValueCloseTo(0.11, within(1e-12));
        assertThat(placed.unused()).containsExactly(new TakenPrints.Unused("air", 1, TakenPrints.Why.OTHER_LOAD));
    }

    @Test
    void into_whatCannotBePlaced_saysWhy() {
        List<TakenPrint> prints = List.of(
                print("gone", 0.1, 12.0, 220.0),
                print("bare", 0.1, 12.0, 220.0),
                print("air", 0.1, null, 220.0),
                print("air", 0.1, 12.0, null));

        TakenPrints.Placed placed = TakenPrints.into(CASE, prints);

        assertThat(placed.stated()).isEqualTo(CASE);
        assertThat(placed.unused())
                .extracting(TakenPrints.Unused::why)
                .containsExactlyInAnyOrder(
                        TakenPrints.Why.UNKNOWN_ASSEMBLY,
                        TakenPrints.Why.NOT_RUN_AT,
                        TakenPrints.Why.NO_PRESSURE,
                        TakenPrints.Why.NO_LOAD);
    }
}
