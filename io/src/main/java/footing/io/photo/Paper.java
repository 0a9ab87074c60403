package footing.io.photo;

import java.util.Arrays;

/**
 * How bright the bare paper is at each place, so that a shadow is not taken for ink: the bright end of small cells;
 * where a cell holds no paper, its neighbors tell.
 */
final class Paper {
    private static final int CELL = 22;
    private static final double BRIGHT_END = 0.9;
    private static final double DARKEST_PAPER = 0.36;

    private Paper() {}

    /** The brightness of each pixel as a share of the paper's there. */
    static double[] shares(double[] bright, int width, int height) {
        int columns = (width + CELL - 1) / CELL;
        int rows = (height + CELL - 1) / CELL;
        double[] cells = new double[columns * rows];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = brightEnd(bright, width, height, i % columns * CELL, i / columns * CELL);
        }
        double best = Arrays.stream(cells).max().orElse(1);
        double[] paper = filled(cells, columns, DARKEST_PAPER * best);
        double[] shares = new double[bright.length];
        for (int i = 0; i < shares.length; i++) {
            int cell = i / width / CELL * columns + i % width / CELL;
            shares[i] = bright[i] / Math.max(paper[cell], 1e-3);
        }
        return shares;
    }

    private static double brightEnd(double[] bright, int width, int height, int x0, int y0) {
        int x1 = Math.min(width, x0 + CELL);
        int y1 = Math.min(height, y0 + CELL);
        double[] all = new double[(x1 - x0) * (y1 - y0)];
        int n = 0;
        for (int y = y0; y < y1; y++) {
            for (int x = x0; x < x1; x++) {
                all[n++] = bright[y * width + x];
            }
        }
        Arrays.sort(all);
        return all[(int) (BRIGHT_END * (n - 1))];
    }

    /** Cells too dark to be paper take the mean of those around them, again and again until none is left. */
    private static double[] filled(double[] cells, int columns, double least) {
        double[] paper = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            paper[i] = cells[i] >= least ? cells[i] : Double.NaN;
        }
        boolean open = true;
        while (open) {
            open = false;
            double[] next = paper.clone();
            for (int i = 0; i < paper.length; i++) {
                if (Double.isNaN(paper[i])) {
                    next[i] = around(paper, columns, i);
                    open |= Double.isNaN(next[i]);
                }
            }
            paper = next;
        }
        return paper;
    }

    private static double around(double[] paper, int columns, int i) {
        double sum = 0;
        int count = 0;
        int x = i % columns;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                int j = i + dy * columns + dx;
                boolean inside = x + dx >= 0 && x + dx < columns && j >= 0 && j < paper.length;
                if (inside && !Double.isNaN(paper[j])) {
                    sum += paper[j];
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }
}
