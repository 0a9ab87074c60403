package footing.io.photo;

import boofcv.struct.image.GrayU8;
import footing.core.ground.PrintOutline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The border of a patch: along rays from its middle, where the shade is halfway between ink and ground. Where there is
 * no such step, as in the groove of a tread, the border of the closed patch stands.
 *
 * @param points in m on the ground
 * @param contrast median step between ink and ground, in shades of 255
 * @param noise of the ground beside it
 * @param faint share of the rays without a clear step
 */
record Border(List<PrintOutline.Point> points, double contrast, double noise, double faint) {
    private static final int RAYS = 720;
    private static final double CLEAR = 0.35;

    static Border of(Canvas canvas, Canvas coarse, Blob blob) {
        GrayU8 mask = blob.mask();
        double[] middle = middle(mask);
        double[] radii = new double[RAYS];
        double mean = 0;
        for (int i = 0; i < RAYS; i++) {
            radii[i] = reach(mask, middle, angle(i)) * coarse.pixel() / canvas.pixel();
            mean += radii[i] / RAYS;
        }
        double x = (coarse.x() - canvas.x() + middle[0] * coarse.pixel()) / canvas.pixel();
        double y = (coarse.y() - canvas.y() + middle[1] * coarse.pixel()) / canvas.pixel();
        int window = (int) Math.ceil(Math.max(4, 0.03 * mean));
        Step[] steps = new Step[RAYS];
        Tone tone = canvas.tone();
        for (int i = 0; i < RAYS; i++) {
            steps[i] = Step.along(tone, new double[] {x, y, angle(i)}, radii[i], window);
        }
        double contrast = median(Arrays.stream(steps).mapToDouble(Step::size).toArray());
        int faint = 0;
        for (int i = 0; i < RAYS; i++) {
            boolean clear = steps[i].size() >= CLEAR * contrast && steps[i].size() > 0;
            radii[i] = clear ? steps[i].radius() : radii[i];
            faint += clear ? 0 : 1;
        }
        double noise = median(Arrays.stream(steps).mapToDouble(Step::noise).toArray());
        return new Border(points(canvas, new double[] {x, y}, radii), contrast, noise, faint / (double) RAYS);
    }

    private static double angle(int ray) {
        return 2 * Math.PI * ray / RAYS;
    }

    private static double[] middle(GrayU8 mask) {
        double n = 0;
        double x = 0;
        double y = 0;
        for (int j = 0; j < mask.height; j++) {
            for (int i = 0; i < mask.width; i++) {
                if (mask.data[j * mask.width + i] != 0) {
                    n++;
                    x += i;
                    y += j;
                }
            }
        }
        return new double[] {x / n, y / n};
    }

    /** How far the patch reaches along a ray, half a pixel beyond its last one. */
    private static double reach(GrayU8 mask, double[] middle, double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        for (double r = Math.hypot(mask.width, mask.height); r > 0; r -= 0.5) {
            int i = (int) Math.round(middle[0] + r * cos);
            int j = (int) Math.round(middle[1] + r * sin);
            if (i >= 0 && j >= 0 && i < mask.width && j < mask.height && mask.data[j * mask.width + i] != 0) {
                return r + 0.25;
            }
        }
        return 0;
    }

    private static List<PrintOutline.Point> points(Canvas canvas, double[] middle, double[] radii) {
        List<PrintOutline.Point> points = new ArrayList<>();
        for (int i = 0; i < RAYS; i++) {
            double[] around = new double[5];
            for (int k = 0; k < around.length; k++) {
                around[k] = radii[(i + k - 2 + RAYS) % RAYS];
            }
            double r = median(around);
            points.add(new PrintOutline.Point(
                    canvas.x() + (middle[0] + r * Math.cos(angle(i))) * canvas.pixel(),
                    canvas.y() + (middle[1] + r * Math.sin(angle(i))) * canvas.pixel()));
        }
        return points;
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
