package footing.io.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import footing.core.fleet.Case;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.future.MachineFutures;
import footing.core.future.Parts;
import footing.core.plain.PlainFuture;
import footing.core.plain.PlainModel;
import footing.core.plain.PlainPart;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The simulation against the plain model on the example cases, future by future. */
class ExamplesAgainstPlainTest {
    private static final int FUTURES = 60;
    private static final long SEED = 7;
    private static final double RELATIVE = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"one-machine", "quillbrook", "from-the-catalog"})
    void costs_examples_agreeWithThePlainModelFutureByFuture(String name) throws IOException {
        Case stated =
                CaseFile.read(Path.of("../cases/" + name + ".yaml")).found().orElseThrow();
        for (ResolvedMachine machine : Resolver.resolve(stated)) {
            MachineFutures futures = new MachineFutures(machine, SEED).runAll(FUTURES);
            for (int e = 0; e < machine.entries().size(); e++) {
                agree(futures, e);
            }
        }
    }

    private static void agree(MachineFutures futures, int e) {
        ResolvedMachine machine = futures.machine();
        ResolvedMachine.Entry entry = machine.entries().get(e);
        List<PlainFuture> plain = new ArrayList<>();
        for (int f = 0; f < FUTURES; f++) {
            PlainFuture one = PlainModel.future(machine, entry, SEED, f);
            plain.add(one);
            assertThat(futures.costs(e)[f])
                    .as("%s %s, future %d", machine.id(), entry, f)
                    .isCloseTo(one.cost(), within(RELATIVE * (1000 + Math.abs(one.cost()))));
        }
        Parts parts = futures.outcome(e).parts();
        assertThat(parts.renewals()).isCloseTo(mean(plain, PlainPart.RENEWALS), within(1e-6));
        assertThat(parts.repairs()).isCloseTo(mean(plain, PlainPart.REPAIRS), within(1e-6));
        assertThat(parts.crewTime()).isCloseTo(mean(plain, PlainPart.CREW_TIME), within(1e-6));
        assertThat(parts.lostWork()).isCloseTo(mean(plain, PlainPart.LOST_WORK), within(1e-6));
        assertThat(parts.upkeep()).isCloseTo(mean(plain, PlainPart.UPKEEP), within(1e-6));
        assertThat(parts.tradeIn()).isCloseTo(mean(plain, PlainPart.TRADE_IN), within(1e-6));
        assertThat(parts.purchase()).isCloseTo(mean(plain, PlainPart.PURCHASE), within(1e-6));
    }

    private static double mean(List<PlainFuture> futures, PlainPart part) {
        return futures.stream().mapToDouble(f -> f.part(part)).average().orElseThrow();
    }
}
