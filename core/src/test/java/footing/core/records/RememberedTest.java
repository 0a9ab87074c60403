package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Flats counted from memory, or many in one row. */
class RememberedTest {
    private static final Rows ROWS = new Rows();

    private static Learned learn(String... rows) {
        return learn(Background.NONE, rows);
    }

    private static Learned learn(Background background, String... rows) {
        Log log = Log.of(ROWS.read(rows));
        assertThat(log.troubles()).isEmpty();
        return Learner.learn(log, background, 1.6);
    }

    @Test
    void learn_aboutFiveLastSeason_takesTheHoursFromTheCalendar() {
        Background calendar = new Background() {
            @Override
            public OptionalDouble hours(String machine, LocalDate from, LocalDate to) {
                return OptionalDouble.of(700);
            }
        };
        Learned.Flats flats = learn(
                        calendar, "2026-03-22 A begin -", "2026-11-14 A flat - about=5", "2026-11-14 A end -")
                .flats()
                .get(0);
        assertThat(flats.guessed()).isTrue();
        assertThat(flats.hours()).isEqualTo(700);
        assertThat(flats.exact()).isEmpty();
        assertThat(flats.rate().median() * 700).isBetween(3.5, 6.0);
    }

    private static final Background SEASONS = new Background() {
        @Override
        public OptionalDouble hours(String machine, LocalDate from, LocalDate to) {
            // Two hours a day from April to October.
            double hours = 0;
            for (LocalDate d = from; !d.isAfter(to); d = d.plusDays(1)) {
                hours += d.getMonthValue() >= 4 && d.getMonthValue() <= 10 ? 2 : 0;
            }
            return OptionalDouble.of(hours);
        }
    };

    /** 'About five last season' is all there is: 214 days of two hours. */
    @Test
    void learn_aboutFiveAlone_countsThemOverOneSeasonOfTheCalendar() {
        Learned.Flats flats =
                learn(SEASONS, "2026-11-14 A flat - about=5").flats().get(0);
        assertThat(flats.hours()).isEqualTo(428);
        assertThat(flats.guessed()).isTrue();
        assertThat(flats.rate().median() * 428).isBetween(3.3, 6.0);
    }

    /** 1,400 h by the meter in two seasons, but the five are of the last year, which has between 700 and 1,000 of them. */
    @Test
    void learn_aboutFiveWithReadingsOfTwoSeasons_countsThemOverTheLast() {
        String[] rows = {
            "2025-04-01 A reading 200",
            "2026-04-01 A reading 900",
            "2026-11-01 A reading 1600",
            "2026-11-14 A flat - about=5"
        };
        Learned.Flats flats = learn(rows).flats().get(0);
        assertThat(flats.hours()).isBetween(700.0, 1000.0);
        assertThat(flats.guessed()).isFalse();
        assertThat(flats.remembered()).isEqualTo(5);
    }

    @Test
    void learn_aboutFiveTwice_countsEachOverItsOwnSeason() {
        Learned.Flats flats = learn(SEASONS, "2025-11-14 A flat - about=5", "2026-11-14 A flat - about=5")
                .flats()
                .get(0);
        assertThat(flats.hours()).isEqualTo(2 * 428);
        assertThat(flats.remembered()).isEqualTo(10);
    }

    /** A log since April and a memory of the season before: both count, the memory for less. */
    @Test
    void learn_aboutFiveBeforeALog_addsToIt() {
        Learned.Flats flats = learn(
                        SEASONS,
                        "2025-11-14 A flat - about=5",
                        "2026-04-01 A begin 300",
                        "2026-05-01 A flat 340",
                        "2026-10-31 A end 728")
                .flats()
                .get(0);
        assertThat(flats.counted()).isEqualTo(1);
        assertThat(flats.remembered()).isEqualTo(5);
        assertThat(flats.hours()).isCloseTo(428 + 428, within(1e-9));
        Limits logged = learn(SEASONS, "2026-04-01 A begin 300", "2026-05-01 A flat 340", "2026-10-31 A end 728")
                .flats()
                .get(0)
                .rate()
                .limits(0.8);
        Limits both = flats.rate().limits(0.8);
        assertThat(Math.log(both.high() / both.low())).isLessThan(0.8 * Math.log(logged.high() / logged.low()));
    }

    @Test
    void learn_aboutFiveWithoutHours_keepsThePriorAndTheCount() {
        Learned.Flats flats = learn("2026-11-14 A flat - about=5").flats().get(0);
        assertThat(flats.unwatched()).isTrue();
        assertThat(flats.remembered()).isEqualTo(5);
    }

    /** Twelve flats in one row were not written down as they came: they count, but say nothing of when. */
    @Test
    void learn_manyFlatsInOneRow_countButTellNoTrend() {
        String[] rows = {
            "2026-04-01 A begin 300",
            "2026-05-01 A flat 350",
            "2026-06-01 A flat 420 quantity=2",
            "2026-07-01 A flat 500",
            "2026-11-01 A end 900"
        };
        assertThat(learn(rows).trends()).hasSize(1);
        rows[2] = "2026-06-01 A flat 420 quantity=12";
        assertThat(learn(rows).trends()).isEmpty();
        assertThat(learn(rows).flats().get(0).counted()).isEqualTo(14);
    }
}
