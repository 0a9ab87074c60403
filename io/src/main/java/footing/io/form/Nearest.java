package footing.io.form;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name nearest to one that isn't known: fewest letters put in, left out, changed or swapped. */
public final class Nearest {
    private static final int LONGEST = 40;
    private static final int MOST_COMPARED = 200;
    private static final int MOST_NAMED = 12;

    private Nearest() {}

    /** 'did you mean', or what there is to choose from; empty if there is nothing. */
    public static String advice(String name, Collection<String> known) {
        Optional<String> near = find(name, known);
        if (near.isPresent()) {
            return "did you mean \"" + Node.shown(near.get()) + "\"?";
        }
        List<String> some = known.stream().limit(MOST_NAMED).map(Node::shown).toList();
        return some.isEmpty()
                ? ""
                : "known here: " + String.join(", ", some) + (known.size() > MOST_NAMED ? ", …" : "");
    }

    public static Optional<String> find(String name, Collection<String> known) {
        if (name.length() > LONGEST) {
            return Optional.empty();
        }
        int reach = Math.max(1, name.length() / 3);
        return known.stream()
                .limit(MOST_COMPARED)
                .filter(k -> Math.abs(k.length() - name.length()) <= reach)
                .filter(k -> distance(name, k) <= reach)
                .min(Comparator.comparingInt(k -> distance(name, k)));
    }

    private static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
