package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Resolver;
import footing.core.fleet.When;
import footing.core.future.MachineFutures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must not change an answer by a single bit: threads, order, and things that do not concern a machine. */
class SamenessTest {
    private static final Options FULL = Options.usual().withFutures(250);
    private static final Options QUICK = Options.usual().withFutures(4200).quickly();

    /** Everything asked, of one package and few futures. */
    private static Answer full(Case c) {
        return Assessment.answer(lean(c), FULL, Workers.one(), Watch.NOBODY);
    }

    private static Case lean(Case c) {
        return SmallCase.considering(c, List.of(SmallCase.FIRM), List.of(When.NOW));
    }

    private static Answer quick(Case c) {
        return Assessment.answer(c, QUICK, Workers.one(), Watch.NOBODY);
    }

    private static Case twoMachines() {
        return SmallCase.machines(SmallCase.build(), all -> {
            List<Case.Machine> more = new ArrayList<>();
            more.add(SmallCase.machine("another", SmallCase.CREW));
            more.addAll(all);
            return more;
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 64})
    void answer_moreThreads_isTheSameToTheLastBit(int threads) throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            Workers many = (tasks, task) -> {
                CountDownLatch left = new CountDownLatch(tasks);
                for (int i = 0; i < tasks; i++) {
                    int number = i;
                    pool.execute(() -> {
                        task.accept(number);
                        left.countDown();
                    });
                }
                await(left);
            };
            Case c = twoMachines();
            assertThat(Assessment.answer(lean(c), FULL, many, Watch.NOBODY)).isEqualTo(full(c));
            assertThat(Assessment.answer(c, QUICK, many, Watch.NOBODY)).isEqualTo(quick(c));
        } finally {
            pool.shutdownNow();
        }
    }

    private static void await(CountDownLatch left) {
        try {
            left.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void answer_tasksBackwards_isTheSameToTheLastBit() {
        Workers backwards = (tasks, task) -> {
            for (int i = tasks - 1; i >= 0; i--) {
                task.accept(i);
            }
        };
        Case c = twoMachines();
        assertThat(Assessment.answer(lean(c), FULL, backwards, Watch.NOBODY)).isEqualTo(full(c));
        assertThat(Assessment.answer(c, QUICK, backwards, Watch.NOBODY)).isEqualTo(quick(c));
    }

    @Test
    void add_piecesRunInAnotherOrder_givesTheSameSums() {
        Case c = SmallCase.build();
        MachineFutures inOrder = futures(c).runAll(6000);
        MachineFutures mixed = futures(c);
        mixed.reserve(6000);
        MachineFutures.Piece last = mixed.run(4096, 6000);
        MachineFutures.Piece first = mixed.run(0, 2048);
        MachineFutures.Piece second = mixed.run(2048, 4096);
        mixed.add(first);
        mixed.add(second);
        mixed.add(last);
        for (int e = 0; e < inOrder.machine().entries().size(); e++) {
            assertThat(mixed.outcome(e)).isEqualTo(inOrder.outcome(e));
            assertThat(mixed.costs(e)).containsExactly(inOrder.costs(e));
        }
        assertThat(mixed.fixes()).isEqualTo(inOrder.fixes());
    }

    private static MachineFutures futures(Case c) {
        return new MachineFutures(Resolver.resolve(c).get(0), 1);
    }

    @Test
    void answer_sameSeed_isTheSameAndAnotherSeedIsNot() {
        Case c = SmallCase.build();
        assertThat(full(c)).isEqualTo(full(c));
        Options other = new Options(OptionalInt.of(4200), 2, 0.8, true, Optional.empty());
        MachineAnswer one = quick(c).machine(SmallCase.RIDER);
        MachineAnswer two =
                Assessment.answer(c, other, Workers.one(), Watch.NOBODY).machine(SmallCase.RIDER);
        for (int e = 0; e < one.entries().size(); e++) {
            assertThat(two.entries().get(e).cost())
                    .isNotEqualTo(one.entries().get(e).cost());
        }
    }

    @Test
    void answer_anotherMachine_changesNothingOfThisOne() {
        assertThat(full(twoMachines()).machine(SmallCase.RIDER))
                .isEqualTo(full(SmallCase.build()).machine(SmallCase.RIDER));
        assertThat(quick(twoMachines()).machine(SmallCase.RIDER))
                .isEqualTo(quick(SmallCase.build()).machine(SmallCase.RIDER));
    }

    @Test
    void answer_anotherMachineThatIsQuiteDifferent_changesNothingOfThisOne() {
        Case c = SmallCase.with(twoMachines(), Key.KEEP_UNTIL, "another", 4200);
        c = SmallCase.with(c, Key.FLATS_PER_SEASON, "another", 30);
        assertThat(quick(c).machine(SmallCase.RIDER))
                .isEqualTo(quick(SmallCase.build()).machine(SmallCase.RIDER));
    }

    @Test
    void answer_crewAssemblyAndPackageNobodyUses_changeNothing() {
        Answer plain = full(SmallCase.build());
        Answer more = full(SmallCase.withIdleThings(SmallCase.build()));
        assertThat(more.machines()).isEqualTo(plain.machines());
        assertThat(more.fleet()).isEqualTo(plain.fleet());
    }

    @Test
    void answer_furtherPackageConsidered_changesNoFigureOfTheOthers() {
        Case few = SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM, SmallCase.TWIN), List.of());
        Case more = SmallCase.considering(
                SmallCase.build(),
                List.of(SmallCase.SEALED, SmallCase.FIRM_ALL, SmallCase.FIRM, SmallCase.TWIN),
                List.of());
        MachineAnswer one = quick(few).machine(SmallCase.RIDER);
        MachineAnswer two = quick(more).machine(SmallCase.RIDER);
        for (EntryAnswer e : one.entries()) {
            EntryAnswer same = two.entries().stream()
                    .filter(o -> o.entry().equals(e.entry()))
                    .findFirst()
                    .orElseThrow();
            assertThat(same.outcome()).isEqualTo(e.outcome());
            assertThat(same.cost()).isEqualTo(e.cost());
            assertThat(same.saving()).isEqualTo(e.saving());
            assertThat(same.levels()).isEqualTo(e.levels());
            assertThat(same.paybackHours()).isEqualTo(e.paybackHours());
            assertThat(same.monthly()).isEqualTo(e.monthly());
        }
        assertThat(two.costPerFlat()).isEqualTo(one.costPerFlat());
    }

    @Test
    void answer_packageListedTwice_answersTwiceTheSame() {
        Case c = SmallCase.considering(SmallCase.build(), List.of(SmallCase.FIRM, SmallCase.FIRM), List.of());
        List<EntryAnswer> entries = quick(c).machine(SmallCase.RIDER).entries();
        assertThat(entries).hasSize(5);
        assertThat(entries.get(3)).isEqualTo(entries.get(1));
        assertThat(entries.get(4)).isEqualTo(entries.get(2));
    }

    @Test
    void answer_oneMachineNamed_isThatMachineOfTheWhole() {
        Options named = new Options(OptionalInt.of(4200), 1, 0.8, true, Optional.of(SmallCase.RIDER));
        Answer one = Assessment.answer(twoMachines(), named, Workers.one(), Watch.NOBODY);
        assertThat(one.machines()).containsExactly(quick(twoMachines()).machine(SmallCase.RIDER));
    }

    @Test
    void fleet_twoMachines_addsTheirSavingsFutureByFuture() {
        Case c = twoMachines();
        Answer answer = quick(c);
        double[] sum = new double[4200];
        double start = 0;
        for (MachineAnswer m : answer.machines()) {
            MachineFutures run = new MachineFutures(m.machine(), 1).runAll(4200);
            start += run.startCost(m.recommended());
            for (int f = 0; f < sum.length; f++) {
                sum[f] += run.costs(0)[f] - run.costs(m.recommended())[f];
            }
        }
        assertThat(answer.fleet()).isEqualTo(new Answer.Fleet(Saving.of(sum), start));
        assertThat(answer.machines()).extracting(MachineAnswer::recommended).doesNotContain(0);
    }
}
