package footing.io.photo;

import java.util.Random;

/** Drawn turf in a white frame, with a torn ring about its middle of which a known share is bare; sizes in meters. */
final class DrawnTurf implements Scene {
    private static final double BAR = 0.03;
    final double side;
    /** Share of the ring that is bare; elsewhere soil shows through in a few places. */
    private final double bare;

    private final double inner;
    private final double outer;
    private final double[] grass;
    private final double[] soil;
    private final Grain clumps;
    private final Grain blades;
    private final Grain crumbs;
    private final double level;

    DrawnTurf(Random random, double side, double[] ring, double bare) {
        this.side = side;
        this.bare = bare;
        inner = ring[0];
        outer = ring[1];
        double dry = random.nextDouble();
        grass = new double[] {0.08 + 0.06 * dry, 0.17 + 0.02 * dry, 0.04 + 0.01 * dry};
        double wet = random.nextDouble();
        soil = new double[] {0.16 - 0.08 * wet, 0.12 - 0.065 * wet, 0.085 - 0.05 * wet};
        clumps = new Grain(random, 0.025);
        blades = new Grain(random, 0.0025);
        crumbs = new Grain(random, 0.004);
        level = level();
    }

    /** The clump level below which the wanted share of the ring lies, by sampling it. */
    private double level() {
        double[] values = new double[60_000];
        Random random = new Random(7);
        for (int i = 0; i < values.length; i++) {
            double r = Math.sqrt(inner * inner + random.nextDouble() * (outer * outer - inner * inner));
            double angle = 2 * Math.PI * random.nextDouble();
            values[i] = clumps.at(side / 2 + r * Math.cos(angle), side / 2 + r * Math.sin(angle));
        }
        java.util.Arrays.sort(values);
        return bare <= 0 ? -2 : bare >= 1 ? 2 : values[(int) (bare * (values.length - 1))];
    }

    private boolean isBare(double x, double y) {
        double r = Math.hypot(x - side / 2, y - side / 2);
        return r >= inner && r <= outer && clumps.at(x, y) < level;
    }

    @Override
    public void color(double x, double y, double[] into) {
        boolean within = x >= 0 && y >= 0 && x <= side && y <= side;
        boolean hole = x >= BAR && y >= BAR && x <= side - BAR && y <= side - BAR;
        if (within && !hole) {
            java.util.Arrays.fill(into, 0.8);
            return;
        }
        boolean torn = isBare(x, y);
        double[] base = torn ? soil : grass;
        double shade = torn
                ? 1 + 0.4 * crumbs.at(x, y)
                : 1 + 0.6 * blades.at(x * 3, y) * blades.at(y * 1.7, x) + 0.3 * blades.at(x, y);
        for (int i = 0; i < 3; i++) {
            into[i] = base[i] * Math.max(0.1, shade);
        }
    }
}
