package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.chance.Spread;
import footing.core.fleet.Case;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where nothing is saved any more: put back into the case, the saving must be about 0. */
class BreakEvensTest {
    private static final int FUTURES = 4500;

    private static EntryAnswer broken(Case c, int entry) {
        return broken(c).get(entry);
    }

    private static List<EntryAnswer> broken(Case c) {
        ResolvedMachine machine = Resolver.resolve(c).get(0);
        MachineFutures run = new MachineFutures(machine, 1).runAll(FUTURES);
        return new BreakEvens(run, 1).of(new Entries(run, 0.8).answer().entries());
    }

    private static Case deciding(Case c) {
        return SmallCase.considering(c, List.of(SmallCase.FIRM), List.of(When.NOW));
    }

    static Stream<Case> cases() {
        return Stream.of(deciding(SmallCase.build()), deciding(SmallCase.buying()));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void breakEvenFlats_putIn_leavesNoSaving(Case c) {
        EntryAnswer entry = broken(c, 1);
        EntryAnswer.BreakEvenFlats flats = Objects.requireNonNull(entry.breakEvenFlats());
        double scale = flats.at() / flats.now();
        Spread stated =
                c.machine(SmallCase.RIDER).numbers().get(Key.FLATS_PER_SEASON).orElseThrow();
        assertThat(flats.now()).isCloseTo(stated.mean(), within(1e-12));
        double left = saving(c, stated.times(scale));
        double perThousandth = Math.abs(entry.saving().mean() / (1 - scale)) * scale / 1000;
        assertThat(left).isCloseTo(0, within(1.5 * perThousandth));
        assertThat(scale).isNotCloseTo(1, within(0.05));
    }

    private static double saving(Case c, Spread flats) {
        Case moved = c.with(Input.of(Key.FLATS_PER_SEASON, SmallCase.RIDER), flats);
        MachineFutures run = new MachineFutures(Resolver.resolve(moved).get(0), 1).runAll(FUTURES);
        return new Entries(run, 0.8).answer().entries().get(1).saving().mean();
    }

    /** On a new machine the start cost can be stated: at the break-even nothing is saved, with loan and tax. */
    @Test
    void breakEvenPrice_statedAsUpcharge_leavesNoSaving() {
        Case c = deciding(SmallCase.buying());
        double price = Objects.requireNonNull(broken(c, 1).breakEvenPrice());
        Case moved = c.with(new Input(Key.UPCHARGE, SmallCase.RIDER, "firm"), Spread.of(price));
        MachineFutures run = new MachineFutures(Resolver.resolve(moved).get(0), 1).runAll(FUTURES);
        EntryAnswer at = new Entries(run, 0.8).answer().entries().get(1);
        assertThat(at.startCost()).isEqualTo(price);
        assertThat(at.saving().mean()).isCloseTo(0, within(1e-8));
    }

    @Test
    void breakEvenPrice_noStartCost_isNull() {
        Case c = SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM), List.of(When.WORN));
        assertThat(broken(c, 1).breakEvenPrice()).isNull();
    }

    @Test
    void breakEvenFlats_neverWithinTenTimes_isNull() {
        Case dear = SmallCase.with(deciding(SmallCase.build()), Key.PRICE, "firm-drive", 90_000);
        assertThat(broken(dear, 1).breakEvenFlats()).isNull();
        Case none = SmallCase.with(deciding(SmallCase.build()), Key.FLATS_PER_SEASON, SmallCase.RIDER, 0);
        assertThat(broken(none, 1).breakEvenFlats()).isNull();
    }

    @Test
    void breakEvens_carriedOrItsTwin_areNull() {
        Case c = SmallCase.considering(SmallCase.build(), List.of(SmallCase.TWIN), List.of());
        for (int e = 0; e < 3; e++) {
            EntryAnswer entry = broken(c, e);
            assertThat(entry.breakEvenFlats()).isNull();
            assertThat(entry.breakEvenPrice()).isNull();
        }
    }

    @Test
    void breakEvens_furtherPackageConsidered_areTheSameToTheLastBit() {
        EntryAnswer alone = broken(deciding(SmallCase.build()), 1);
        Case more = SmallCase.considering(
                SmallCase.build(), List.of(SmallCase.SEALED, SmallCase.FIRM_ALL, SmallCase.FIRM), List.of(When.NOW));
        EntryAnswer among = broken(more, 3);
        assertThat(among.entry()).isEqualTo(alone.entry());
        assertThat(among.breakEvenFlats()).isEqualTo(alone.breakEvenFlats());
        assertThat(among.breakEvenPrice()).isEqualTo(alone.breakEvenPrice());
    }
}
