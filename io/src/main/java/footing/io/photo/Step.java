package footing.io.photo;

import java.util.Arrays;

/**
 * The step of the shade from ink out to the ground along a ray.
 *
 * @param radius where it is halfway, in pixels
 * @param size ground less ink
 * @param noise of the ground just outside
 */
record Step(double radius, double size, double noise) {
    /** Around an expected radius; {@code ray} is the middle's place and the direction. */
    static Step along(Tone tone, double[] ray, double expected, int window) {
        double[] shade = new double[4 * window + 1];
        for (int i = 0; i < shade.length; i++) {
            double r = expected + (i - 2 * window) / 2.0;
            shade[i] = tone.at(ray[0] + r * Math.cos(ray[2]), ray[1] + r * Math.sin(ray[2]));
        }
        double[] inner = Arrays.copyOfRange(shade, 0, window);
        double[] outer = Arrays.copyOfRange(shade, 3 * window + 1, shade.length);
        double ink = Border.median(inner);
        double ground = Border.median(outer);
        double half = (tone.light(ink) + tone.light(ground)) / 2;
        double nearest = Double.NaN;
        for (int i = 1; i < shade.length; i++) {
            double before = tone.light(shade[i - 1]);
            double after = tone.light(shade[i]);
            if (before < half && after >= half) {
                double at = i - 1 + (half - before) / (after - before);
                if (Double.isNaN(nearest) || Math.abs(at - 2 * window) < Math.abs(nearest - 2 * window)) {
                    nearest = at;
                }
            }
        }
        double mean = Arrays.stream(outer).average().orElseThrow();
        double square = Arrays.stream(outer).map(v -> (v - mean) * (v - mean)).sum();
        double noise = Math.sqrt(square / outer.length);
        return Double.isNaN(nearest)
                ? new Step(expected, 0, noise)
                : new Step(expected + (nearest - 2 * window) / 2, ground - ink, noise);
    }
}
