package footing.core.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Season;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlainClockTest {
    private static PlainClock clock(String asOf, String start, String end, double hoursPerYear) {
        Season season = new Season(MonthDay.parse("--" + start), MonthDay.parse("--" + end));
        return new PlainClock(LocalDate.parse(asOf), season, hoursPerYear);
    }

    private static void check(PlainClock clock, double hour, double days, String date) {
        assertThat(clock.at(hour).days()).isCloseTo(days, within(1e-9));
        assertThat(clock.at(hour).date()).isEqualTo(LocalDate.parse(date));
    }

    @Test
    void at_beforeTheSeason_waitsForItsFirstDay() {
        // April has 30 days, 300 h a year = 10 h a day; 2027-03-01 to 04-01 is 31 days
        PlainClock clock = clock("2027-03-01", "04-01", "04-30", 300);
        check(clock, 0, 0, "2027-03-01");
        check(clock, 5, 31.5, "2027-04-01");
        check(clock, 295, 60.5, "2027-04-30");
        check(clock, 300, 61, "2027-04-30"); // midnight after the last day
        check(clock, 305, 31 + 366 + 0.5, "2028-04-01"); // 2028-02-29 lies between
    }

    @Test
    void at_insideTheSeason_leavesTheRestOfItsDays() {
        // from 04-21 on 10 of 30 days are left: 100 h, then 335 days from 05-01 to 2028-03-31
        PlainClock clock = clock("2027-04-21", "04-01", "04-30", 300);
        check(clock, 5, 0.5, "2027-04-21");
        check(clock, 100, 10, "2027-04-30");
        check(clock, 110, 10 + 336 + 1, "2028-04-02");
    }

    @Test
    void at_onTheLastDayAndTheDayAfter_leavesOneDayOrNone() {
        check(clock("2027-04-30", "04-01", "04-30", 300), 10, 1, "2027-04-30");
        check(clock("2027-04-30", "04-01", "04-30", 300), 11, 337.1, "2028-04-01");
        check(clock("2027-05-01", "04-01", "04-30", 300), 1, 336.1, "2028-04-01");
    }

    @Test
    void at_seasonOverNewYear_goesOnInJanuary() {
        // 12-22 to 01-10 is 20 days, 10 h each; asOf 12-12 is 10 days before
        PlainClock before = clock("2027-12-12", "12-22", "01-10", 200);
        check(before, 95, 19.5, "2027-12-31");
        check(before, 105, 20.5, "2028-01-01");
        check(before, 200, 30, "2028-01-10");
        // asOf 2028-01-06 is inside the season that began the year before: 5 days are left
        PlainClock inside = clock("2028-01-06", "12-22", "01-10", 200);
        check(inside, 50, 5, "2028-01-10");
        check(inside, 51, 5 + 346 + 0.1, "2028-12-22");
    }

    @Test
    void at_allYear_takesEachYearsOwnLength() {
        PlainClock clock = clock("2027-01-01", "01-01", "12-31", 366);
        check(clock, 183, 182.5, "2027-07-02");
        check(clock, 366, 365, "2027-12-31");
        check(clock, 367, 366, "2028-01-02"); // 1 h a day in the leap year: one day later
        check(clock, 732, 731, "2028-12-31");
    }

    @Test
    void at_seasonWithLeapDay_spreadsOverOneDayMore() {
        check(clock("2027-01-01", "02-01", "03-01", 290), 10, 32, "2027-02-02"); // 29 days, 10 h each
        check(clock("2028-01-01", "02-01", "03-01", 300), 10, 32, "2028-02-02"); // 30 days, 10 h each
    }

    @Test
    void stretches_overNewYear_cutsAtTheYear() {
        PlainClock clock = clock("2027-12-12", "12-22", "01-10", 200);
        List<PlainClock.Stretch> cut = clock.stretches(50, 250);
        assertThat(cut).extracting(PlainClock.Stretch::year).containsExactly(2027, 2028, 2028);
        assertThat(cut.stream().mapToDouble(PlainClock.Stretch::hours).toArray())
                .containsExactly(new double[] {50, 100, 50}, within(1e-9));
    }

    @Test
    void integral_growing_agreesWithSmallSteps() {
        PlainClock clock = clock("2027-05-01", "04-01", "10-31", 400);
        double real = 1.025 / 1.3;
        double sum = 0;
        int steps = 200_000;
        for (int i = 0; i < steps; i++) {
            sum += Math.pow(real, clock.days((i + 0.5) * 1000 / steps) / 365) * 1000 / steps;
        }
        double exact = clock.stretches(0, 1000).stream()
                .mapToDouble(s -> s.integral(real, 1e9))
                .sum();
        assertThat(exact).isCloseTo(sum, within(1e-7 * sum));
    }
}
