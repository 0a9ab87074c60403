package footing.core.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import footing.core.chance.Spread;
import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;

class RangeTest {
    @Test
    void contains_closedRange_includesBothEnds() {
        Range range = Range.of(0, 24);
        assertThat(range.contains(0)).isTrue();
        assertThat(range.contains(24)).isTrue();
        assertThat(range.contains(-1e-9)).isFalse();
        assertThat(range.contains(24.0000001)).isFalse();
        assertThat(range.contains(Double.NaN)).isFalse();
        assertThat(range.contains(Double.POSITIVE_INFINITY)).isFalse();
    }

    @Test
    void contains_openOrWholeRange_isStricter() {
        assertThat(Range.above(0, 1).contains(0)).isFalse();
        assertThat(Range.above(0, 1).contains(1e-300)).isTrue();
        assertThat(Range.whole(1, 20).contains(2)).isTrue();
        assertThat(Range.whole(1, 20).contains(2.5)).isFalse();
    }

    @Test
    void clamp_outside_isTheNearestValueInside() {
        for (Range range : new Range[] {Range.of(0, 24), Range.above(0, 1)}) {
            for (double x : new double[] {-5, 0, 0.5, 1, 30}) {
                assertThat(range.contains(range.clamp(x))).isTrue();
            }
        }
        assertThat(Range.of(0, 24).clamp(30)).isEqualTo(24);
        assertThat(Range.above(0, 1).clamp(-1)).isPositive().isLessThan(1e-300);
    }

    @Test
    void range_empty_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Range.of(1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Range.of(0, Double.NaN));
    }

    /** Every default of a key that stands alone lies in the key's own range. */
    @Test
    void fallback_everyKey_liesInItsRange() {
        int found = 0;
        for (Key key : Key.values()) {
            if (key.fallback().isPresent() && key.place() == Place.MACHINE && key != Key.FLATS_AT_CASTER) {
                double value = key.fallback().get().rule().value(new Nothing()).likely();
                assertThat(key.range().contains(value)).as(key.key()).isTrue();
                found++;
            }
        }
        assertThat(found).isGreaterThan(8);
    }

    /** Nothing beside a key. */
    private static final class Nothing implements Default.Beside {
        @Override
        public Spread get(Key key) {
            throw new AssertionError("asked for " + key);
        }

        @Override
        public Spread ofCarried(Position position, Key key) {
            throw new AssertionError("asked for " + key + " of the carried set");
        }

        @Override
        public Kind kind() {
            throw new AssertionError("asked for the kind");
        }
    }

    @Test
    void season_overNewYear_containsBothItsEnds() {
        Season season = new Season(MonthDay.of(11, 15), MonthDay.of(2, 10));
        assertThat(season.runsOverNewYear()).isTrue();
        assertThat(season.contains(LocalDate.of(2027, 11, 15))).isTrue();
        assertThat(season.contains(LocalDate.of(2028, 2, 10))).isTrue();
        assertThat(season.contains(LocalDate.of(2028, 2, 11))).isFalse();
        assertThat(season.contains(LocalDate.of(2027, 11, 14))).isFalse();
        assertThat(season.startIn(2027)).isEqualTo(LocalDate.of(2027, 11, 15));
        assertThat(season.endOfSeasonFrom(2027)).isEqualTo(LocalDate.of(2028, 2, 10));
    }

    @Test
    void season_allYear_containsTheLeapDay() {
        assertThat(Season.ALL_YEAR.contains(LocalDate.of(2028, 2, 29))).isTrue();
        assertThat(Season.ALL_YEAR.runsOverNewYear()).isFalse();
    }

    @Test
    void season_endingOnTheLeapDay_isRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Season(MonthDay.of(2, 29), MonthDay.of(6, 1)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Season(MonthDay.of(1, 1), MonthDay.of(2, 29)));
    }
}
