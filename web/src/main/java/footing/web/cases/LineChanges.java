package footing.web.cases;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What changed between two texts, line by line: a longest common subsequence, with the lines around it for context.
 *
 * <p>Source: Wagner and Fischer, The string-to-string correction problem, Journal of the ACM 21 (1974) 168–173.
 */
final class LineChanges {
    /** Cells of the table; beyond it the whole middle is called changed. */
    private static final long MOST_CELLS = 4_000_000;

    private static final int CONTEXT = 1;

    private final List<Line> lines = new ArrayList<>();

    private LineChanges() {}

    /** How a line fared. */
    enum Fate {
        SAME,
        GONE,
        NEW,
        /** Stands for lines left out because nothing around them changed. */
        SKIPPED
    }

    /** A line of either text. */
    record Line(Fate fate, String text) {
        /** The sign before it, so that nothing is said by color alone. */
        public String sign() {
            return switch (fate) {
                case SAME -> " ";
                case GONE -> "−";
                case NEW -> "+";
                case SKIPPED -> "⋯";
            };
        }

        public String style() {
            return fate.name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** The changed lines with one line around each of them. */
    static List<Line> between(String before, String after) {
        return folded(all(before, after));
    }

    /** Every line of both texts, those in common once. */
    static List<Line> all(String before, String after) {
        LineChanges changes = new LineChanges();
        changes.compare(before.lines().toList(), after.lines().toList());
        return changes.lines;
    }

    /** How many lines were taken away or put in. */
    static long count(List<Line> lines) {
        long gone = lines.stream().filter(l -> l.fate() == Fate.GONE).count();
        long added = lines.stream().filter(l -> l.fate() == Fate.NEW).count();
        return Math.max(gone, added);
    }

    private void compare(List<String> a, List<String> b) {
        int start = 0;
        int shorter = Math.min(a.size(), b.size());
        while (start < shorter && a.get(start).equals(b.get(start))) {
            start++;
        }
        int end = 0;
        while (end < shorter - start && a.get(a.size() - 1 - end).equals(b.get(b.size() - 1 - end))) {
            end++;
        }
        add(Fate.SAME, a.subList(0, start));
        middle(a.subList(start, a.size() - end), b.subList(start, b.size() - end));
        add(Fate.SAME, a.subList(a.size() - end, a.size()));
    }

    private void middle(List<String> a, List<String> b) {
        if ((a.size() + 1L) * (b.size() + 1L) > MOST_CELLS) {
            add(Fate.GONE, a);
            add(Fate.NEW, b);
            return;
        }
        int[][] common = common(a, b);
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            if (i < a.size() && j < b.size() && a.get(i).equals(b.get(j))) {
                add(Fate.SAME, List.of(a.get(i)));
                i++;
                j++;
            } else if (j == b.size() || (i < a.size() && common[i + 1][j] >= common[i][j + 1])) {
                add(Fate.GONE, List.of(a.get(i++)));
            } else {
                add(Fate.NEW, List.of(b.get(j++)));
            }
        }
    }

    private static int[][] common(List<String> a, List<String> b) {
        int[][] length = new int[a.size() + 1][b.size() + 1];
        for (int i = a.size() - 1; i >= 0; i--) {
            for (int j = b.size() - 1; j >= 0; j--) {
                length[i][j] = a.get(i).equals(b.get(j))
                        ? length[i + 1][j + 1] + 1
                        : Math.max(length[i + 1][j], length[i][j + 1]);
            }
        }
        return length;
    }

    private void add(Fate fate, List<String> texts) {
        texts.forEach(t -> lines.add(new Line(fate, t)));
    }

    private static List<Line> folded(List<Line> all) {
        boolean[] near = new boolean[all.size()];
        for (int i = 0; i < near.length; i++) {
            if (all.get(i).fate() != Fate.SAME) {
                for (int k = Math.max(0, i - CONTEXT); k <= Math.min(near.length - 1, i + CONTEXT); k++) {
                    near[k] = true;
                }
            }
        }
        List<Line> shown = new ArrayList<>();
        for (int i = 0; i < near.length; i++) {
            if (near[i]) {
                if (i > 0 && !near[i - 1] && !shown.isEmpty()) {
                    shown.add(new Line(Fate.SKIPPED, ""));
                }
                shown.add(all.get(i));
            }
        }
        return Collections.unmodifiableList(shown);
    }
}
