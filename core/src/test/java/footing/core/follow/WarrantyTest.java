package footing.core.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.SmallCase;
import footing.core.fleet.Case;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.records.Log;
import footing.core.records.Spot;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How far a set is into its warranty. */
class WarrantyTest {
    private static Warranty after(OptionalDouble hours, Optional<LocalDate> fitted, double ofHours, double ofMonths) {
        Warranty.Terms terms = new Warranty.Terms(OptionalDouble.of(ofHours), OptionalDouble.of(ofMonths));
        return new Warranty("E1", Position.DRIVE, "firm", fitted, hours, terms, LocalDate.of(2028, 1, 1), 1000);
    }

    @Test
    void unused_bothTerms_isByTheOneFurtherRun() {
        Warranty w = after(OptionalDouble.of(250), Optional.of(LocalDate.of(2027, 7, 1)), 1000, 12);
        assertThat(w.months().orElseThrow()).isEqualTo(6);
        assertThat(w.hoursLeft().orElseThrow()).isEqualTo(750);
        assertThat(w.monthsLeft().orElseThrow()).isEqualTo(6);
        assertThat(w.unused().orElseThrow()).isEqualTo(0.5);
        assertThat(w.over()).isFalse();
        assertThat(w.unsure()).isFalse();
    }

    @Test
    void months_partOfAMonth_isByItsDays() {
        Warranty w = after(OptionalDouble.of(0), Optional.of(LocalDate.of(2027, 11, 16)), 1000, 12);
        assertThat(w.months().orElseThrow()).isCloseTo(1 + 16.0 / 31, within(1e-12));
    }

    @Test
    void over_hoursRunOut_evenIfMonthsAreLeft() {
        Warranty w = after(OptionalDouble.of(1001), Optional.of(LocalDate.of(2027, 7, 1)), 1000, 60);
        assertThat(w.over()).isTrue();
        assertThat(w.unused().orElseThrow()).isZero();
    }

    @Test
    void unused_dayUnknown_saysThatItIsUnsure() {
        Warranty w = after(OptionalDouble.of(250), Optional.empty(), 1000, 12);
        assertThat(w.unsure()).isTrue();
        assertThat(w.monthsLeft()).isEmpty();
        assertThat(after(OptionalDouble.empty(), Optional.empty(), 1000, 12).unused())
                .isEmpty();
    }

    @Test
    void terms_neitherHoursNorMonths_areRefused() {
        assertThatThrownBy(() -> new Warranty.Terms(OptionalDouble.empty(), OptionalDouble.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Warranty.Terms(OptionalDouble.of(Double.NaN), OptionalDouble.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Case withTerms() {
        Case c = SmallCase.build();
        Measures terms = Measures.of(Map.of(Measure.WARRANTY_HOURS, 1500.0, Measure.WARRANTY_MONTHS, 24.0));
        List<Case.Assembly> assemblies = c.assemblies().stream()
                .map(a -> a.id().equals("firm-drive") || a.id().equals("air-caster")
                        ? new Case.Assembly(a.id(), a.kind(), a.position(), null, a.treats(), null, a.numbers(), terms)
                        : a)
                .toList();
        return new Case(c.heading(), c.season(), c.money(), c.crews(), assemblies, c.packages(), c.machines());
    }

    @Test
    void warranties_setOfTheLog_runsFromItsDay() {
        Log log = new LogRows()
                .begin("2027-03-15", SmallCase.RIDER, 300)
                .fit("2027-04-01", SmallCase.RIDER, 320, Spot.DRIVE, "firm-drive")
                .reading("2027-11-15", SmallCase.RIDER, 750)
                .log();
        List<Warranty> all = Warranties.of(withTerms(), log, LocalDate.of(2027, 12, 1));
        assertThat(all).hasSize(2);
        Warranty drive = all.get(0);
        assertThat(drive.assembly()).isEqualTo("firm-drive");
        assertThat(drive.hours().orElseThrow()).isEqualTo(430);
        assertThat(drive.months().orElseThrow()).isEqualTo(8);
        assertThat(drive.price()).isEqualTo(2 * 720);
        Warranty caster = all.get(1);
        // Not in the log: the hours of the case and those run since; the day nobody knows.
        assertThat(caster.hours().orElseThrow()).isEqualTo(300 + 450);
        assertThat(caster.fitted()).isEmpty();
    }

    @Test
    void warranties_withoutTerms_areNotTold() {
        Log log = new LogRows().begin("2027-03-15", SmallCase.RIDER, 300).log();
        assertThat(Warranties.of(SmallCase.build(), log, LocalDate.of(2027, 12, 1)))
                .isEmpty();
    }
}
