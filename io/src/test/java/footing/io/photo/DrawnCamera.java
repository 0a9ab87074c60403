package footing.io.photo;

import java.awt.image.BufferedImage;
import java.util.Random;

/**
 * A pinhole camera over flat ground, with what makes photos worse: tilt, a lens that bends, a soft focus, uneven light,
 * shadows, noise. Distances in meters.
 */
final class DrawnCamera {
    final int width;
    final int height;
    private final Random random;
    private final double focal;
    private final double[] place = new double[3];
    private final double[] right = new double[3];
    private final double[] down = new double[3];
    private final double[] ahead = new double[3];
    double bend;
    double noise = 3;
    double soft = 0.8;
    /** A straight shadow's border: nx, ny, offset, and how much light is left in it. */
    double[] shadow = {1, 0, 1e9, 1};

    double penumbra = 0.004;

    /**
     * Looks at x, y from a distance, tilted from straight down toward a direction and turned about its own axis.
     *
     * @param angles tilt, direction of the tilt, turn, in degrees
     */
    DrawnCamera(int width, int height, Random random, double[] target, double distance, double[] angles) {
        this.width = width;
        this.height = height;
        this.random = random;
        focal = 1.25 * Math.hypot(width, height) / 2;
        double tilt = Math.toRadians(angles[0]);
        double toward = Math.toRadians(angles[1]);
        double turn = Math.toRadians(angles[2]);
        // Axes of the ground: x right, y down the picture, z away from the camera, into the ground.
        double[] look = {Math.sin(tilt) * Math.cos(toward), Math.sin(tilt) * Math.sin(toward), Math.cos(tilt)};
        double[] aside = {Math.cos(turn), Math.sin(turn), 0};
        double along = aside[0] * look[0] + aside[1] * look[1];
        double norm = 0;
        for (int i = 0; i < 3; i++) {
            ahead[i] = look[i];
            right[i] = aside[i] - along * look[i];
            norm += right[i] * right[i];
        }
        for (int i = 0; i < 3; i++) {
            right[i] /= Math.sqrt(norm);
        }
        down[0] = ahead[1] * right[2] - ahead[2] * right[1];
        down[1] = ahead[2] * right[0] - ahead[0] * right[2];
        down[2] = ahead[0] * right[1] - ahead[1] * right[0];
        place[0] = target[0] - distance * look[0];
        place[1] = target[1] - distance * look[1];
        place[2] = -distance * look[2];
    }

    /** Where a place on the ground is seen, in pixels. */
    Spot seen(double x, double y) {
        double[] d = {x - place[0], y - place[1], -place[2]};
        double z = dot(d, ahead);
        Spot straight =
                new Spot((width - 1) / 2.0 + focal * dot(d, right) / z, (height - 1) / 2.0 + focal * dot(d, down) / z);
        return new Lens(bend, (width - 1) / 2.0, (height - 1) / 2.0, Math.hypot(width, height) / 2).bent(straight);
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    BufferedImage take(Scene scene) {
        float[][] light = new float[3][width * height];
        Lens lens = new Lens(bend, (width - 1) / 2.0, (height - 1) / 2.0, Math.hypot(width, height) / 2);
        double[] color = new double[3];
        for (int j = 0; j < height; j++) {
            for (int i = 0; i < width; i++) {
                Spot straight = lens.straightened(new Spot(i, j));
                double u = (straight.x() - lens.x()) / focal;
                double v = (straight.y() - lens.y()) / focal;
                double z = ahead[2] + u * right[2] + v * down[2];
                double far = -place[2] / z;
                double x = place[0] + far * (ahead[0] + u * right[0] + v * down[0]);
                double y = place[1] + far * (ahead[1] + u * right[1] + v * down[1]);
                scene.color(x, y, color);
                double lit = lit(x, y) * (1 - 0.25 * (u * u + v * v));
                for (int c = 0; c < 3; c++) {
                    light[c][j * width + i] = (float) (color[c] * lit);
                }
            }
        }
        return developed(light);
    }

    private double lit(double x, double y) {
        double into = (shadow[0] * x + shadow[1] * y - shadow[2]) / penumbra;
        double share = Math.max(0, Math.min(1, 0.5 + into));
        return 1 - share * (1 - shadow[3]);
    }

    private BufferedImage developed(float[][] light) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] rgb = new int[width * height];
        for (int c = 0; c < 3; c++) {
            float[] blurred = blurred(light[c]);
            for (int i = 0; i < rgb.length; i++) {
                double shade = 255 * Math.pow(Math.max(0, blurred[i]), 1 / 2.2) + noise * random.nextGaussian();
                rgb[i] |= Math.max(0, Math.min(255, (int) Math.round(shade))) << (16 - 8 * c);
            }
        }
        image.setRGB(0, 0, width, height, rgb, 0, width);
        return image;
    }

    /** A bell three pixels wide, across and down. */
    private float[] blurred(float[] in) {
        float side = (float) Math.exp(-0.5 / (soft * soft));
        float sum = 1 + 2 * side;
        float[] across = in.clone();
        for (int i = 1; i < in.length - 1; i++) {
            across[i] = (in[i] + side * (in[i - 1] + in[i + 1])) / sum;
        }
        float[] out = across.clone();
        for (int i = width; i < in.length - width; i++) {
            out[i] = (across[i] + side * (across[i - width] + across[i + width])) / sum;
        }
        return out;
    }
}
