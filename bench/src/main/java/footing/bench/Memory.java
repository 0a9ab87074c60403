package footing.bench;

import footing.core.fleet.Resolver;
import footing.core.future.MachineFutures;
import java.util.List;

/** Bytes kept for each future of the nine-machine case: what grows when more futures are run. */
public final class Memory {
    private static final int FEW = 20_000;
    private static final int MANY = 120_000;
    private static final double MEBIBYTE = 1 << 20;

    private Memory() {}

    public static void main(String[] args) {
        List<MachineFutures> machines = Resolver.resolve(Cases.read("quillbrook")).stream()
                .map(m -> new MachineFutures(m, 1).runAll(FEW))
                .toList();
        long few = used();
        machines.forEach(m -> m.runAll(MANY));
        long many = used();
        double perFuture = (double) (many - few) / (MANY - FEW);
        int entries =
                machines.stream().mapToInt(m -> m.machine().entries().size()).sum();
        System.out.printf(
                "memory per future     %.0f bytes for %d entries; %.1f MiB kept at %d futures%n",
                perFuture, entries, perFuture * FEW / MEBIBYTE, FEW);
    }

    private static long used() {
        for (int i = 0; i < 5; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
