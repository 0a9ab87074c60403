package footing.core.future;

import java.util.ArrayList;
import java.util.List;

/** Sums over a run of futures of one machine. Blocks are added in the order of their futures, on any number of threads. */
final class Block {
    final List<CourseSums> courses = new ArrayList<>();
    final FixSums fixes;
    /** Futures in which the saving is positive, counting parts only, by entry. */
    final int[] partsPay;
    /** The same counting parts and time. */
    final int[] partsAndTimePay;
    /** Futures in which nothing the entry wished for was ever fitted. */
    final int[] neverFitted;

    int futures;

    Block(MachinePlan plan) {
        for (int c = 0; c < plan.courses.size(); c++) {
            courses.add(new CourseSums(plan.years));
        }
        fixes = new FixSums(plan.fixes.size);
        int n = plan.entries.size();
        partsPay = new int[n];
        partsAndTimePay = new int[n];
        neverFitted = new int[n];
    }

    void add(Block later) {
        futures += later.futures;
        for (int c = 0; c < courses.size(); c++) {
            courses.get(c).add(later.courses.get(c));
        }
        fixes.add(later.fixes);
        for (int e = 0; e < partsPay.length; e++) {
            partsPay[e] += later.partsPay[e];
            partsAndTimePay[e] += later.partsAndTimePay[e];
            neverFitted[e] += later.neverFitted[e];
        }
    }
}
