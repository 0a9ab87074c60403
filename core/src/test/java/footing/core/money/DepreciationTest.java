package footing.core.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.money.CostRecovery.ExpensingLimit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DepreciationTest {

    static Stream<ReferenceValue> published() {
        return ReferenceValue.read(DepreciationTest.class, "depreciation.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void published(ReferenceValue row) {
        row.check(value(row));
    }

    private static double value(ReferenceValue row) {
        return switch (row.function()) {
            case "sln" -> Depreciation.straightLine(row.number(0), row.number(1), row.whole(2));
            case "ddb" ->
                Depreciation.decliningBalance(row.number(0), row.number(1), row.whole(2), row.whole(3), row.number(4));
            case "vdb" -> valueAfter(row, 3) - valueAfter(row, 4);
            case "macrs" -> table(row).deduction(row.number(2), row.whole(3));
            case "macrsSold" -> table(row).deductionOnDisposal(row.number(2), row.whole(3), row.whole(4));
            case "disposalFraction" -> convention(row, 0).disposalFraction(row.whole(1));
            case "placedFraction" -> convention(row, 0).placedFraction();
            case "reducedLimit" -> limit(row).reduced(row.number(2));
            case "expensed" -> limit(row).deductible(row.number(2), row.number(3));
            case "carriedForward" -> limit(row).carriedForward(row.number(2), row.number(3));
            case "firstYear" ->
                CostRecovery.deductions(
                        row.number(0),
                        row.number(1),
                        row.number(2),
                        RecoveryTable.of(row.whole(3), convention(row, 4)))[0];
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    private static double valueAfter(ReferenceValue row, int periods) {
        return Depreciation.valueAfter(row.number(0), row.number(1), row.whole(2), row.whole(periods), row.number(5));
    }

    private static RecoveryTable table(ReferenceValue row) {
        return RecoveryTable.of(row.whole(0), convention(row, 1));
    }

    private static Convention convention(ReferenceValue row, int i) {
        return Convention.valueOf(row.inputs().get(i));
    }

    private static ExpensingLimit limit(ReferenceValue row) {
        return new ExpensingLimit(row.number(0), row.number(1));
    }

    static Stream<RecoveryTable> tables() {
        return Arrays.stream(Convention.values())
                .flatMap(convention -> Stream.of(5, 7).map(years -> RecoveryTable.of(years, convention)));
    }

    /** The printed percentages are the formula's, rounded, give or take one in the last digit: alternating roundings. */
    @ParameterizedTest
    @MethodSource("tables")
    void shares_formula_agreesWithinAHundredthOfAPercent(RecoveryTable table) {
        double[] formula = formula(table.recoveryYears(), table.convention().placedFraction());

        for (int year = 0; year < formula.length; year++) {
            double rounded = Math.rint(formula[year] * 1e4) / 1e4;
            assertThat(table.shares().get(year)).as("%s", table).isCloseTo(rounded, within(1.0001e-4));
        }
    }

    /** 200 % declining balance with the switch to straight line, the first year cut to the part in service. */
    private static double[] formula(int life, double placed) {
        double[] shares = new double[life + 1];
        double left = 1;
        double passed = 0;
        for (int year = 0; year <= life; year++) {
            double part = year == 0 ? placed : Math.min(1, life - passed);
            double declining = left * 2 / life * part;
            double straight = left / (life - passed) * part;
            shares[year] = Math.max(declining, straight);
            left -= shares[year];
            passed += part;
        }
        return shares;
    }

    @Test
    void shares_printedRowsThatDifferFromTheFormula_areKeptAsPrinted() {
        List<Double> secondQuarter =
                RecoveryTable.of(7, Convention.SECOND_QUARTER).shares();

        assertThat(secondQuarter.get(0)).isCloseTo(0.1785, within(1e-12));
        assertThat(secondQuarter.get(7)).isCloseTo(0.0334, within(1e-12));
        assertThat(RecoveryTable.of(7, Convention.HALF_YEAR).shares().subList(4, 7))
                .containsExactly(8.93 / 100, 8.92 / 100, 8.93 / 100);
    }

    @Test
    void deduction_percentagesOfUnadjustedBasis_exhaustIt() {
        tables().forEach(table -> assertThat(IntStream.rangeClosed(1, table.recoveryYears() + 1)
                        .mapToDouble(year -> table.deduction(10_000, year))
                        .sum())
                .isCloseTo(10_000, within(1e-8)));
    }

    /** Derived: the last percentage pays for the time left over, so a later sale takes nothing off it. */
    @Test
    void deductionOnDisposal_lastYear_coversOnlyTheTimeLeft() {
        RecoveryTable half = RecoveryTable.of(7, Convention.HALF_YEAR);
        RecoveryTable fourth = RecoveryTable.of(5, Convention.FOURTH_QUARTER);

        assertThat(half.deductionOnDisposal(10_000, 8, 3)).isCloseTo(446, within(1e-9));
        assertThat(fourth.deductionOnDisposal(10_000, 6, 1)).isCloseTo(958 / 7.0, within(1e-9));
        assertThat(fourth.deductionOnDisposal(10_000, 6, 4)).isCloseTo(958, within(1e-9));
    }

    @Test
    void deductions_expensedAllowedAndTabled_addUpToTheCost() {
        double[] years = CostRecovery.deductions(20_000, 5_000, 0.4, RecoveryTable.of(5, Convention.HALF_YEAR));

        assertThat(years).hasSize(6);
        assertThat(Arrays.stream(years).sum()).isCloseTo(20_000, within(1e-9));
        assertThat(years[1]).isCloseTo(9_000 * 0.32, within(1e-9));
    }

    @Test
    void deductions_fullAllowance_isAllInTheFirstYear() {
        assertThat(CostRecovery.deductions(900, 0, 1, RecoveryTable.of(5, Convention.HALF_YEAR)))
                .containsExactly(900, 0, 0, 0, 0, 0);
    }

    @Test
    void valueAfter_wholeLife_endsAtSalvageAndNeverRises() {
        double before = 35_000;
        for (int month = 1; month <= 36; month++) {
            double after = Depreciation.valueAfter(35_000, 7_500, 36, month, 2);
            assertThat(after).isBetween(7_500 - 1e-9, before);
            before = after;
        }
        assertThat(before).isCloseTo(7_500, within(1e-9));
        assertThat(Depreciation.valueAfter(12_000, 0, 5, 5, 2)).isCloseTo(0, within(1e-9));
    }

    @Test
    void decliningBalance_allPeriods_neverPassesSalvage() {
        double total = IntStream.rangeClosed(1, 10)
                .mapToDouble(period -> Depreciation.decliningBalance(10_000, 3_000, 10, period, 2))
                .sum();

        assertThat(total).isCloseTo(7_000, within(1e-9));
        assertThat(Depreciation.decliningBalance(10_000, 3_000, 10, 10, 2)).isZero();
    }

    @Test
    void depreciation_inputsOutOfRange_areRefusedByName() {
        assertThatThrownBy(() -> Depreciation.straightLine(100, 200, 5)).hasMessageContaining("salvage is 200.0");
        assertThatThrownBy(() -> Depreciation.straightLine(Double.NaN, 0, 5)).hasMessageContaining("cost is NaN");
        assertThatThrownBy(() -> Depreciation.valueAfter(100, 0, 5, 6, 2)).hasMessageContaining("periods is 6");
        assertThatThrownBy(() -> RecoveryTable.of(6, Convention.HALF_YEAR)).hasMessageContaining("6, must be 5 or 7");
        assertThatThrownBy(() -> new RecoveryTable(1, Convention.HALF_YEAR, List.of(0.5, 0.4)))
                .hasMessageContaining("add up to 1");
        assertThatThrownBy(() -> Convention.HALF_YEAR.disposalFraction(5)).hasMessageContaining("quarter is 5");
        assertThatThrownBy(() -> CostRecovery.deductions(100, 101, 0, RecoveryTable.of(5, Convention.HALF_YEAR)))
                .hasMessageContaining("cost less expensed amount is -1.0");
    }
}
