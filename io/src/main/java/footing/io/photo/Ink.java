package footing.io.photo;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The inked pixels of a flattened sheet: connected patches darker than a share of the paper, without specks and without
 * what reaches in from the rim.
 *
 * @param patches indices of pixels, a list for each patch
 * @param touchesRim true if a patch of more than a speck reaches the rim
 */
record Ink(List<int[]> patches, int width, boolean touchesRim) {
    private static final double SPECK = 0.0006;

    static Ink of(double[] shares, int width, double threshold) {
        int rim = Math.max(2, width / 150);
        int height = shares.length / width;
        boolean[] seen = new boolean[shares.length];
        List<int[]> patches = new ArrayList<>();
        boolean touches = false;
        for (int start = 0; start < shares.length; start++) {
            if (seen[start] || shares[start] >= threshold) {
                continue;
            }
            int[] patch = flood(shares, width, threshold, seen, start);
            if (patch.length < SPECK * shares.length) {
                continue;
            }
            boolean atRim = Arrays.stream(patch)
                    .anyMatch(i -> i % width < rim
                            || i % width >= width - rim
                            || i / width < rim
                            || i / width >= height - rim);
            touches |= atRim && patch.length > 10 * SPECK * shares.length;
            if (!atRim) {
                patches.add(patch);
            }
        }
        return new Ink(patches, width, touches);
    }

    private static int[] flood(double[] shares, int width, double threshold, boolean[] seen, int start) {
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        List<Integer> patch = new ArrayList<>();
        seen[start] = true;
        while (!open.isEmpty()) {
            int i = open.pop();
            patch.add(i);
            int x = i % width;
            int[] next = {x > 0 ? i - 1 : -1, x < width - 1 ? i + 1 : -1, i - width, i + width};
            for (int j : next) {
                if (j >= 0 && j < shares.length && !seen[j] && shares[j] < threshold) {
                    seen[j] = true;
                    open.push(j);
                }
            }
        }
        return patch.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Inked pixels in all. */
    int pixels() {
        return patches.stream().mapToInt(p -> p.length).sum();
    }

    /** The hull around all patches, in pixels, going round. Source: A. M. Andrew (1979), monotone chain. */
    List<Spot> hull() {
        List<Spot> corners = new ArrayList<>();
        for (int[] patch : patches) {
            for (int i : patch) {
                int x = i % width;
                int y = i / width;
                corners.add(new Spot(x, y));
                corners.add(new Spot(x + 1, y));
                corners.add(new Spot(x, y + 1));
                corners.add(new Spot(x + 1, y + 1));
            }
        }
        corners.sort(Comparator.comparingDouble(Spot::x).thenComparingDouble(Spot::y));
        List<Spot> hull = chain(corners);
        java.util.Collections.reverse(corners);
        hull.addAll(chain(corners));
        return hull;
    }

    private static List<Spot> chain(List<Spot> sorted) {
        List<Spot> chain = new ArrayList<>();
        for (Spot s : sorted) {
            while (chain.size() >= 2
                    && chain.get(chain.size() - 2).turn(chain.get(chain.size() - 1), s) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(s);
        }
        if (!chain.isEmpty()) {
            chain.remove(chain.size() - 1);
        }
        return chain;
    }
}
