package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Short recordings of fleets that have run for long: of the sets met already worn, the long-lived are met more often, and
 * to count them from new makes lives look too long. The truth is known, so both ways can be held against it.
 */
class TruncationTest {
    private static final int FLEETS = 200;
    private static final int MACHINES = 12;
    private static final int DAYS = 120;

    @Test
    void learn_setsWornWhenRecordingBegan_meetsTheTruthWhereForgettingItDoesnt() {
        int held = 0;
        int heldForgetting = 0;
        double off = 0;
        double offForgetting = 0;
        for (int f = 0; f < FLEETS; f++) {
            Fleet fleet = new Fleet(20270401L + f, MACHINES, DAYS);
            List<Life> seen = lives(fleet);
            Posterior right = median(seen);
            Posterior wrong = median(
                    seen.stream().map(l -> new Life(0, l.exit(), l.wornOut())).toList());
            held += right.limits(0.8).contains(fleet.median) ? 1 : 0;
            heldForgetting += wrong.limits(0.8).contains(fleet.median) ? 1 : 0;
            off += Math.log(right.median() / fleet.median) / FLEETS;
            offForgetting += Math.log(wrong.median() / fleet.median) / FLEETS;
        }
        // Standard error of a share of 0.8 in 200: 0.028.
        assertThat(held / (double) FLEETS).as("held").isBetween(0.8 - 3 * 0.0283, 0.8 + 3 * 0.0283);
        assertThat(heldForgetting / (double) FLEETS).as("held, forgetting").isLessThan(0.8 - 5 * 0.0283);
        assertThat(Math.abs(off)).as("off").isLessThan(0.03);
        assertThat(offForgetting).as("off, forgetting").isGreaterThan(0.1);
    }

    private static Posterior median(List<Life> lives) {
        return LifePosterior.of(lives, List.of(), LifePrior.COMMON).median();
    }

    private static List<Life> lives(Fleet fleet) {
        Log log = Log.of(fleet.rows);
        assertThat(log.troubles()).isEmpty();
        List<Life> lives = new ArrayList<>();
        log.machines()
                .forEach((id, rows) ->
                        new History(id, rows).sets.forEach(s -> s.life().ifPresent(lives::add)));
        return lives;
    }
}
