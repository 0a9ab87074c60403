package footing.io.photo;

import java.awt.image.BufferedImage;
import java.util.Random;

/** The pictures of the example's trial day, as they were drawn. */
final class DrawnDay {
    static final double[] SHEET = {0.2794, 0.2159};
    static final double FRAME = 0.6;
    static final double[] RING = {0.06, 0.22};
    static final double BARE_BEFORE = 0.05;
    static final double BARE_AFTER = 0.35;

    private DrawnDay() {}

    /** A print 120 mm long and 180 mm wide with a tread, partly in the shadow. */
    static DrawnPrint print() {
        DrawnPrint print = new DrawnPrint(new Random(3), SHEET, new double[] {0.1397, 0.108, 0.06, 0.06, 0.09}, 3);
        print.period = 0.18 / 7;
        print.groove = 0.005;
        return print;
    }

    static BufferedImage printTaken() {
        DrawnCamera camera =
                new DrawnCamera(1200, 900, new Random(3), new double[] {0.1397, 0.108}, 0.55, new double[] {18, 40, 8});
        camera.shadow = new double[] {0.8, 0.6, 0.2, 0.6};
        camera.penumbra = 0.01;
        return camera.take(print());
    }

    static BufferedImage turnTaken(boolean after) {
        int i = after ? 1 : 0;
        DrawnCamera camera = new DrawnCamera(
                900, 700, new Random(5 + i), new double[] {0.3, 0.3}, 1.1, new double[] {12, 70 + 30 * i, 5});
        camera.noise = 2;
        return camera.take(new DrawnTurf(new Random(11), FRAME, RING, after ? BARE_AFTER : BARE_BEFORE));
    }
}
