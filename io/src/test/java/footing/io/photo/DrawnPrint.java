package footing.io.photo;

import footing.core.ground.SuperEllipse;
import java.util.Random;

/** A drawn print on a sheet, or beside a card, on a floor; all sizes in meters. */
final class DrawnPrint implements Scene {
    /** The sheet or card, its first corner at 0, 0. */
    final double[] card;

    /** Middle x, y, turn in radians, half length (along y), half width (along x). */
    final double[] print;

    final double shape;
    double[] paper = {0.85, 0.85, 0.83};
    double[] ink = {0.05, 0.05, 0.06};
    double[] floor = {0.30, 0.29, 0.27};
    /** Width and period of grooves across the print; none if 0. */
    double groove;

    double period = 0.03;
    private final Grain coarse;
    private final Grain fine;

    DrawnPrint(Random random, double[] card, double[] print, double shape) {
        this.card = card.clone();
        this.print = print.clone();
        this.shape = shape;
        coarse = new Grain(random, 0.03);
        fine = new Grain(random, 0.003);
    }

    double area() {
        return SuperEllipse.area(2 * print[3], 2 * print[4], shape);
    }

    @Override
    public void color(double x, double y, double[] into) {
        double[] base = floor;
        double rough = 0.35;
        if (x >= 0 && y >= 0 && x <= card[0] && y <= card[1]) {
            base = paper;
            rough = 0.02;
        }
        if (inked(x, y)) {
            base = ink;
            rough = 0.5;
        }
        double shade = 1 + rough * (0.5 * coarse.at(x, y) + 0.5 * fine.at(x, y));
        for (int i = 0; i < 3; i++) {
            into[i] = base[i] * shade;
        }
    }

    private boolean inked(double x, double y) {
        double dx = x - print[0];
        double dy = y - print[1];
        double across = dx * Math.cos(print[2]) + dy * Math.sin(print[2]);
        double along = dy * Math.cos(print[2]) - dx * Math.sin(print[2]);
        double u = Math.abs(along / print[3]);
        double v = Math.abs(across / print[4]);
        if (!(u < 1 && v < 1 && Math.pow(u, shape) + Math.pow(v, shape) <= 1)) {
            return false;
        }
        return groove == 0 || Math.abs(across % period) > groove / 2;
    }
}
