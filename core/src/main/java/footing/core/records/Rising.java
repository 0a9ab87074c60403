package footing.core.records;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The most readings of a meter that don't run backwards: of a row typed wrong and its right neighbors, the wrong one
 * is the one left over. By patience sorting, n ln n.
 */
final class Rising {
    private Rising() {}

    /** @param rows in order of time, all with hours */
    static List<Entry> longest(List<Entry> rows) {
        int n = rows.size();
        double[] tails = new double[n];
        int[] at = new int[n];
        int[] before = new int[n];
        int length = 0;
        for (int i = 0; i < n; i++) {
            double hours = rows.get(i).hours().getAsDouble();
            int pile = above(tails, length, hours);
            tails[pile] = hours;
            at[pile] = i;
            before[i] = pile > 0 ? at[pile - 1] : -1;
            length = Math.max(length, pile + 1);
        }
        List<Entry> longest = new ArrayList<>();
        for (int i = length > 0 ? at[length - 1] : -1; i >= 0; i = before[i]) {
            longest.add(rows.get(i));
        }
        Collections.reverse(longest);
        return longest;
    }

    /** The first of the tails that is greater than the hours. */
    private static int above(double[] tails, int length, double hours) {
        int found = Arrays.binarySearch(tails, 0, length, Math.nextUp(hours));
        int at = found >= 0 ? found : -found - 1;
        while (at > 0 && tails[at - 1] > hours) {
            at--;
        }
        return at;
    }
}
