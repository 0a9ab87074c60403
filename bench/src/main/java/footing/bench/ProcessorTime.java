package footing.bench;

import com.sun.management.OperatingSystemMXBean;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Processor time of a quick answer of the nine-machine case, of all threads together: what it costs however many others
 * use the machine. The least and the median of the second half of a run, the first half being warm-up.
 */
public final class ProcessorTime {
    private static final int ANSWERS = 60;
    private static final int THREADS = 2;
    private static final double MILLIS = 1e-6;

    private ProcessorTime() {}

    public static void main(String[] args) {
        Case stated = Cases.read("quillbrook");
        Options options = Options.usual().withFutures(20_000).quickly();
        List<Double> processor = new ArrayList<>();
        List<Double> wall = new ArrayList<>();
        try (Threads threads = new Threads(THREADS)) {
            for (int i = 0; i < ANSWERS; i++) {
                long began = System.nanoTime();
                long used = used();
                Assessment.answer(stated, options, threads, Watch.NOBODY);
                if (i >= ANSWERS / 2) {
                    processor.add((used() - used) * MILLIS);
                    wall.add((System.nanoTime() - began) * MILLIS);
                }
            }
        }
        System.out.printf(
                "processor time        %.1f ms mean, %.0f ms median; wall %.0f and %.0f ms on %d threads%n",
                processor.stream().mapToDouble(d -> d).average().orElseThrow(),
                median(processor),
                Collections.min(wall),
                median(wall),
                THREADS);
    }

    static long used() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }
}
