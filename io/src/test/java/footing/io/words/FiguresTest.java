package footing.io.words;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.future.FixOutcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class FiguresTest {
    @Test
    void money_anywhere_hasCommasAndNoNegativeZero() {
        assertThat(Figures.money(1234567.4)).isEqualTo("1,234,567");
        assertThat(Figures.money(-0.2)).isEqualTo("0");
        assertThat(Figures.money(-1500)).isEqualTo("-1,500");
        assertThat(Figures.rate(1.235)).isEqualTo("1.24");
        assertThat(Figures.money(Double.NaN)).isEqualTo("?");
    }

    @Test
    void time_pastThreeHours_isInHours() {
        assertThat(Figures.time(115 / 60.0)).isEqualTo("115 min");
        assertThat(Figures.time(12.4)).isEqualTo("12 h");
    }

    @Test
    void counted_one_isSingular() {
        assertThat(Figures.counted(1.02, "flat")).isEqualTo("1 flat");
        assertThat(Figures.counted(2.34, "flat")).isEqualTo("2.3 flats");
    }

    @Test
    void odds_atTheEnds_areNeverCertain() {
        assertThat(Odds.sentence(1)).isEqualTo("better than 19 in 20");
        assertThat(Odds.sentence(0)).isEqualTo("less than 1 in 20");
        assertThat(Odds.sentence(0.5)).isEqualTo("about half");
        assertThat(Odds.sentence(Double.NaN)).isEqualTo("?");
        for (int i = 0; i <= 1000; i++) {
            assertThat(Odds.sentence(i / 1000.0)).doesNotContain("10 in 10").doesNotStartWith("0");
            assertThat(Odds.column(i / 1000.0)).hasSizeLessThanOrEqualTo(9);
        }
    }

    @Test
    void told_aFlat_goesByTheClock() {
        FixOutcome fix = new FixOutcome("to the yard", 3, 31, 84, 46, 115 / 60.0, 46 / 60.0);
        FixOutcome plug = new FixOutcome("plug", 9, 4, 10, 5, 0.5, 0.2);
        assertThat(ClockedFlat.told(List.of(plug, fix), fix))
                .isEqualTo("To the yard, 25 in 100 flats, 115 min: 46 crew-minutes pushed back. It costs 84 in wages to"
                        + " make them up, 46 in work lost and 31 in parts.");
    }
}
