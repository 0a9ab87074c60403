package footing.io.photo;

import java.util.Random;

/** What lies on the drawn ground: its color as light reflected, 0 to 1, at a place in meters. */
interface Scene {
    /** Red, green and blue at a place; {@code into} is filled. */
    void color(double x, double y, double[] into);

    /** Smooth noise from -1 to 1 of a given grain. */
    final class Grain {
        private static final int SIZE = 256;
        private final float[] values = new float[SIZE * SIZE];
        private final double size;

        Grain(Random random, double size) {
            this.size = size;
            for (int i = 0; i < values.length; i++) {
                values[i] = 2 * random.nextFloat() - 1;
            }
        }

        double at(double x, double y) {
            double u = x / size + 1e4;
            double v = y / size + 1e4;
            int i = (int) u;
            int j = (int) v;
            double fx = u - i;
            double fy = v - j;
            double top = value(i, j) * (1 - fx) + value(i + 1, j) * fx;
            double bottom = value(i, j + 1) * (1 - fx) + value(i + 1, j + 1) * fx;
            return top * (1 - fy) + bottom * fy;
        }

        private double value(int i, int j) {
            return values[(j & (SIZE - 1)) * SIZE + (i & (SIZE - 1))];
        }
    }
}
