package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Five hundred fleets whose truth is drawn from the priors, their logs written down and learned from: an 80 % interval
 * that means what it says holds the truth in 80 of a hundred, within what five hundred fleets can tell.
 */
class CalibrationTest {
    private static final int FLEETS = 500;

    @Test
    void learn_fiveHundredFleets_coversTheTruthAsOftenAsItSays() {
        int rates = 0;
        int machines = 0;
        int lives = 0;
        for (int f = 0; f < FLEETS; f++) {
            Fleet fleet = new Fleet(20270215L + f, 2 + f % 3, 300 + 100 * (f % 4));
            Log log = Log.of(fleet.rows);
            assertThat(log.troubles()).as("fleet %s", f).isEmpty();
            Learned learned = Learner.learn(log, Background.NONE, 1.6);
            for (int m = 0; m < fleet.rates.size(); m++) {
                Learned.Flats flats = learned.flats().get(m);
                // Without a case every flat is taken to meet air tires on both positions.
                rates += flats.rate().limits(0.8).contains(fleet.rates.get(m)) ? 1 : 0;
                machines++;
            }
            Posterior median = learned.lives().get(0).posterior().median();
            lives += median.limits(0.8).contains(fleet.median) ? 1 : 0;
        }
        assertThat((double) rates / machines).as("rates").isBetween(0.76, 0.84);
        assertThat((double) lives / FLEETS).as("lives").isBetween(0.76, 0.84);
    }
}
