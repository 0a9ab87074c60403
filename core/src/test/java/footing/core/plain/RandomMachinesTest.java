package footing.core.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.ResolvedMachine.Entry;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class RandomMachinesTest {
    private static final long SEED = 20270101;
    private static final int MACHINES = 320;
    private static final int FUTURES = 3;

    private interface Look {
        void at(ResolvedMachine m, Entry entry, long future, String as);
    }

    private static void eachFuture(Look look) {
        for (int number = 0; number < MACHINES; number++) {
            ResolvedMachine m = RandomMachines.machine(SEED, number);
            for (Entry entry : m.entries()) {
                for (long future = 0; future < FUTURES; future++) {
                    String as = "seed " + SEED + ", machine " + number + ", " + entry.id() + " " + entry.when()
                            + ", future " + future;
                    look.at(m, entry, future, as);
                }
            }
        }
    }

    @Test
    void machine_sameNumber_sameMachine() {
        assertThat(RandomMachines.machine(SEED, 200)).isEqualTo(RandomMachines.machine(SEED, 200));
        assertThat(RandomMachines.machine(SEED, 200)).isNotEqualTo(RandomMachines.machine(SEED, 201));
    }

    @Test
    void machines_together_reachEveryCorner() {
        Map<String, Integer> seen = new TreeMap<>();
        eachFuture((m, entry, future, as) -> {
            PlainFuture f = PlainModel.future(m, entry, SEED, future);
            count(seen, "never fitted", !f.wantedFitted());
            count(seen, "negative start", f.startCost() < 0);
            count(seen, "upcharge", entry.upcharge().isPresent());
            count(seen, "loan", m.terms().loanApplies());
            count(seen, "tax", m.terms().tax().isPresent());
            count(seen, "no flats", f.flats().isEmpty());
            count(seen, "many flats", f.flats().size() > 100);
            count(seen, "lost hours", f.lostHours() > 0);
            count(seen, "after hours", f.flats().stream().anyMatch(x -> x.down() < x.delay()));
            count(seen, "many sets", f.sets() > 10);
            count(seen, "no sets", f.sets() == 0);
            count(seen, "trade costs", f.part(PlainPart.TRADE_IN) < 0);
            count(seen, "trade pays", f.part(PlainPart.TRADE_IN) > 0);
            count(seen, "season over New Year", m.season().runsOverNewYear());
            count(
                    seen,
                    "renewed at once",
                    f.flows().stream().anyMatch(x -> x.part() == PlainPart.RENEWALS && x.hour() == 0));
        });
        assertThat(seen).hasSize(15);
        assertThat(seen.values()).allMatch(times -> times >= 20, "at least twenty of each: " + seen);
    }

    private static void count(Map<String, Integer> seen, String what, boolean happened) {
        seen.merge(what, happened ? 1 : 0, Integer::sum);
    }

    @Test
    void future_everyMachine_booksAddUp() {
        eachFuture((m, entry, future, as) -> {
            PlainFuture f = PlainModel.future(m, entry, SEED, future);
            double end = PlainClock.of(m).days(m.hoursLeft());
            assertThat(f.cost()).as(as).isFinite();
            assertThat(f.flows()).as(as).allMatch(x -> x.days() >= 0 && x.days() <= end);
            double lookedAfter =
                    f.upkeep().stream().mapToDouble(x -> x.to() - x.from()).sum();
            assertThat(lookedAfter).as(as).isCloseTo(2 * m.hoursLeft(), within(1e-9 * m.hoursLeft()));
            assertThat(f.flats()).as(as).allMatch(x -> x.lost() >= 0 && x.displaced() <= x.down());
        });
    }

    @Test
    void cost_carriedUnderAnotherId_isTheSame() {
        eachFuture((m, entry, future, as) -> {
            if (entry.id().equals("same")) {
                double carried = PlainModel.future(m, m.carried(), SEED, future).cost();
                assertThat(PlainModel.future(m, entry, SEED, future).cost())
                        .as(as)
                        .isEqualTo(carried);
            }
        });
    }

    @Test
    void part_taxedOrNot_runningCostsInProportion() {
        for (int number = 0; number < MACHINES; number++) {
            MachineDraft draft = RandomMachines.draft(SEED, number);
            ResolvedMachine taxed = draft.build();
            draft.tax = Optional.empty();
            ResolvedMachine untaxed = draft.build();
            for (Entry entry : taxed.entries()) {
                PlainFuture with = PlainModel.future(taxed, entry, SEED, 0);
                PlainFuture without = PlainModel.future(untaxed, entry, SEED, 0);
                double kept = 1 - taxed.terms().taxRate();
                for (PlainPart part : PlainPart.values()) {
                    if (part.isRunning()) {
                        double expected = without.part(part) * kept;
                        assertThat(with.part(part)).isCloseTo(expected, within(1e-9 * (1 + expected)));
                    }
                }
            }
        }
    }
}
