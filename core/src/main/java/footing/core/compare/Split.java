package footing.core.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A saving before and after, and the parts of its change, which added up in any order make {@link #change()}. */
public record Split(double before, double after, List<Part> parts) {
    private static final double CENTS = 100;

    public Split {
        parts = List.copyOf(parts);
    }

    public double change() {
        return after - before;
    }

    /** The parts with the largest effect first. */
    public List<Part> largestFirst() {
        return parts.stream()
                .sorted(Comparator.comparingDouble((Part p) -> Math.abs(p.change()))
                        .reversed())
                .toList();
    }

    /**
     * Rounds everything to a grid so fine that it shows nowhere, on which sums are exact in any order; what is then left
     * over goes to the largest part, the first of several.
     */
    static Split settled(double before, double after, List<Part> parts) {
        double most = Math.abs(before) + Math.abs(after);
        int largest = 0;
        for (int i = 0; i < parts.size(); i++) {
            double size = Math.abs(parts.get(i).change());
            largest = size > Math.abs(parts.get(largest).change()) ? i : largest;
            most += size;
        }
        double grid = 2 * Math.ulp(most);
        double was = rounded(before, grid);
        double is = rounded(after, grid);
        List<Part> settled = new ArrayList<>();
        double rest = is - was;
        for (Part part : parts) {
            settled.add(part.with(rounded(part.change(), grid)));
            rest -= rounded(part.change(), grid);
        }
        if (!parts.isEmpty()) {
            Part part = settled.get(largest);
            settled.set(largest, part.with(part.change() + rest));
        }
        return new Split(was, is, settled);
    }

    /**
     * The same in whole cents, for those who print it: the parts still add up to the change. A part is rounded to the
     * even cent; what the rounding leaves over, at most half a cent for each part and each end, goes to the largest.
     */
    public Split toTheCent() {
        List<Part> parts = largestFirst();
        double[] cents = new double[parts.size()];
        double was = Math.rint(CENTS * before);
        double is = Math.rint(CENTS * after);
        double rest = is - was;
        for (int i = 0; i < cents.length; i++) {
            cents[i] = Math.rint(CENTS * parts.get(i).change());
            rest -= cents[i];
        }
        List<Part> printed = new ArrayList<>();
        for (int i = 0; i < cents.length; i++) {
            printed.add(parts.get(i).with((cents[i] + (i == 0 ? rest : 0)) / CENTS));
        }
        return new Split(was / CENTS, is / CENTS, printed);
    }

    private static double rounded(double x, double grid) {
        return Math.rint(x / grid) * grid;
    }

    /** Several splits as one: savings added up, parts of the same cause as well. */
    static Split sum(List<Split> splits) {
        double before = 0;
        double after = 0;
        List<Part> parts = new ArrayList<>();
        for (Split split : splits) {
            before += split.before();
            after += split.after();
            split.parts().forEach(p -> merge(parts, p));
        }
        return settled(before, after, parts);
    }

    private static void merge(List<Part> parts, Part added) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).sameCause(added)) {
                parts.set(i, added.with(parts.get(i).change() + added.change()));
                return;
            }
        }
        parts.add(added);
    }
}
