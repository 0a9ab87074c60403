package footing.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.ResolvedMachine;
import footing.core.future.MachineFutures;
import footing.core.future.MonthlyFlows;
import footing.core.future.MonthlyRun;
import footing.core.future.Parts;
import footing.core.future.RunningPart;
import footing.core.plain.RandomMachines;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CashFlowsTest {
    private static final int FUTURES = 100;
    private static final double TO_THE_CENT = 0.005;

    private static List<ResolvedMachine> machines(long seed, int count) {
        return IntStream.range(0, count)
                .mapToObj(n -> RandomMachines.machine(seed, n))
                .toList();
    }

    private static double discounted(List<MonthlyFlows.Flow> flows, ResolvedMachine m) {
        double growth = (1 + m.terms().inflation()) / (1 + m.terms().discountRate());
        return flows.stream()
                .mapToDouble(f -> f.money() * Math.pow(growth, f.day() / 365))
                .sum();
    }

    private static MonthlyFlows flows(ResolvedMachine machine) {
        MonthlyRun run = new MonthlyRun(machine, 7);
        run.add(run.run(0, 60));
        run.add(run.run(60, FUTURES));
        return run.flows();
    }

    @Test
    void flows_ofRandomMachines_discountToTheMeansOfTheAnswer() {
        for (ResolvedMachine machine : machines(11, 60)) {
            MachineFutures futures = new MachineFutures(machine, 7).runAll(FUTURES);
            MonthlyFlows flows = flows(machine);
            double keep = 1 - machine.terms().taxRate();
            for (int e = 0; e < machine.entries().size(); e++) {
                Parts parts = futures.outcome(e).parts();
                for (RunningPart part : RunningPart.values()) {
                    double found = keep * discounted(flows.entries().get(e).of(part), machine);
                    double given = part.in(parts);
                    assertThat(found).isCloseTo(given, within(TO_THE_CENT + 1e-9 * given));
                }
                double relief = machine.terms().taxRate() * futures.undeducted(e);
                double trade = keep
                        * flows.entries().get(e).trade()
                        * futures.tradeFactors().today();
                assertThat(trade + relief * futures.tradeFactors().nominal())
                        .isCloseTo(parts.tradeIn(), within(TO_THE_CENT));
            }
        }
    }

    @Test
    void flows_days_lieWithinTheirMonth() {
        for (ResolvedMachine machine : machines(12, 30)) {
            MonthlyFlows flows = flows(machine);
            for (MonthlyFlows.Entry entry : flows.entries()) {
                for (RunningPart part : RunningPart.values()) {
                    for (int m = 0; m < flows.months().size(); m++) {
                        double first = machine.asOf().until(flows.months().get(m), java.time.temporal.ChronoUnit.DAYS);
                        assertThat(entry.of(part).get(m).day()).isBetween(Math.max(first, 0) - 0.01, first + 31.01);
                    }
                }
            }
        }
    }
}
