package footing.core.ground;

/**
 * A contact relation fitted on farm tires of 1 to 2 m, stated here so that a test can show what it makes of a mower's:
 * l = 0.47 + 0.11·d² − 0.16·ln(p/p_rec), n = 2.1·(b·d)² + 2, σ = 34.4 + 1.13·p + 0.72·W − 33.4·ln(p/p_rec).
 *
 * <p>Source: Keller 2005, as in a general statistics library.
 */
record FarmTireContact(double kilograms, double width, double diameter, double inflation, double recommended) {
    double load() {
        return kilograms * 9.81 / 1000;
    }

    double stress() {
        return 34.4 + 1.13 * inflation + 0.72 * load() - 33.4 * Math.log(inflation / recommended);
    }

    double length() {
        return 0.47 + 0.11 * diameter * diameter - 0.16 * Math.log(inflation / recommended);
    }

    double shape() {
        return 2.1 * Math.pow(width * diameter, 2) + 2;
    }

    double area() {
        return SuperEllipse.area(length(), width, shape());
    }
}
