package footing.bench;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** How long an answer takes at 20 000 futures: one machine and nine, at once and with everything. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class AnswerBench {
    private static final int FUTURES = 20_000;

    /** The case answered. */
    @Param({"one-machine", "quillbrook"})
    public String name = "";

    /** Threads that work on it. */
    @Param({"1", "2"})
    public int threads;

    private Case stated = Cases.read("one-machine");
    private Threads workers = new Threads(1);

    @Setup
    public void read() {
        stated = Cases.read(name);
        workers = new Threads(threads);
    }

    @TearDown
    public void close() {
        workers.close();
    }

    @Benchmark
    @Warmup(iterations = 6, time = 2)
    @Measurement(iterations = 6, time = 2)
    public Answer quick() {
        return answer(Options.usual().withFutures(FUTURES).quickly());
    }

    @Benchmark
    @Warmup(iterations = 2, time = 5)
    @Measurement(iterations = 3, time = 5)
    public Answer everything() {
        return answer(Options.usual().withFutures(FUTURES));
    }

    private Answer answer(Options options) {
        return Assessment.answer(stated, options, workers, Watch.NOBODY);
    }
}
