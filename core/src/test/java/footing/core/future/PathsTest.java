package footing.core.future;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import footing.core.answer.SmallCase;
import footing.core.chance.Sample;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The futures told by the hour are the futures the answer comes from. */
class PathsTest {
    private static final int FUTURES = 3000;
    private static final long SEED = 7;

    private static ResolvedMachine rider() {
        // Without price rises and shop time what is paid for flats is their mean cost in today's money.
        var still = SmallCase.with(SmallCase.build(), Key.INFLATION, "", 0);
        var noShop =
                SmallCase.with(SmallCase.with(still, Key.SCRAP_FEE, "air-drive", 6), Key.CHANGE_HOURS, "air-drive", 0);
        return Resolver.resolve(SmallCase.with(noShop, Key.CHANGE_HOURS, "air-caster", 0))
                .get(0);
    }

    private static double[] atTrade(ResolvedMachine m, ResolvedMachine.Entry e, Followed what) {
        return Paths.of(m, e, SEED, FUTURES, new double[] {0, m.hoursLeft()}).at(what, 1);
    }

    @Test
    void at_theTrade_sumsUpToTheAnswersFutures() {
        ResolvedMachine m = rider();
        MachineFutures futures = new MachineFutures(m, SEED).runAll(FUTURES);
        List<FixOutcome> fixes = futures.fixes();
        double flats = fixes.stream().mapToDouble(FixOutcome::flats).sum();
        double delay = fixes.stream().mapToDouble(f -> f.flats() * f.delay()).sum();
        double cash = fixes.stream().mapToDouble(f -> f.flats() * f.cash()).sum();
        ResolvedMachine.Entry carried = m.carried();
        assertThat(new Sample(atTrade(m, carried, Followed.FLATS)).mean()).isCloseTo(flats, within(1e-9));
        assertThat(new Sample(atTrade(m, carried, Followed.DOWN_HOURS)).mean()).isCloseTo(delay, within(1e-9));
        assertThat(new Sample(atTrade(m, carried, Followed.PAID)).mean()).isCloseTo(cash, within(1e-6));
    }

    @Test
    void at_everyEntry_countsItsFlatsAndAtLeastItsWornSets() {
        ResolvedMachine m = rider();
        MachineFutures futures = new MachineFutures(m, SEED).runAll(FUTURES);
        for (int e = 0; e < m.entries().size(); e++) {
            Counts counts = futures.outcome(e).counts();
            ResolvedMachine.Entry entry = m.entries().get(e);
            assertThat(new Sample(atTrade(m, entry, Followed.FLATS)).mean())
                    .as(entry.id())
                    .isCloseTo(counts.flats(), within(1e-9));
            // Both sides made new after a ruined tire are a set too.
            assertThat(new Sample(atTrade(m, entry, Followed.SETS)).mean())
                    .as(entry.id())
                    .isBetween(counts.sets() - 1e-9, counts.sets() + 0.2 * counts.flats());
        }
    }

    @Test
    void at_laterHours_neverHasLess() {
        ResolvedMachine m = rider();
        Paths paths = Paths.of(m, m.carried(), SEED, 500, new double[] {0, 1, 700, 1400, 2000});
        for (Followed what : Followed.values()) {
            assertThat(new Sample(paths.at(what, 0)).mean()).as(what.name()).isZero();
            for (int h = 1; h < 5; h++) {
                double[] before = paths.at(what, h - 1);
                double[] after = paths.at(what, h);
                for (int f = 0; f < after.length; f++) {
                    assertThat(after[f]).isGreaterThanOrEqualTo(before[f]);
                }
            }
        }
    }

    @Test
    void of_hoursBeyondTheTrade_isRefused() {
        ResolvedMachine m = rider();
        double[] beyond = {0, m.hoursLeft() + 1};
        double[] falling = {5, 4};
        assertThatThrownBy(() -> Paths.of(m, m.carried(), SEED, 10, beyond)).hasMessageContaining("h left");
        assertThatThrownBy(() -> Paths.of(m, m.carried(), SEED, 10, falling)).hasMessageContaining("increase");
    }
}
