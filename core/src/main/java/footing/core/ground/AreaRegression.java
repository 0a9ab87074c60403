package footing.core.ground;

/**
 * A contact area fitted on farm tires that still behaves at mower size: A = s₁·b·d + s₂·W + s₃·W/p, in m², m, kN, kPa.
 * Only the row for rigid ground is used, and only beside {@link TirePatch}'s prior.
 *
 * <p>Source: O'Sullivan et al., <i>Soil and Tillage Research</i> 49, 1999 (coefficients from memory).
 */
record AreaRegression(double bySize, double byLoad, double byLoadOverPressure) {
    static final AreaRegression RIGID = new AreaRegression(0.041, 0, 0.613);

    /** m², from width and diameter (m), load (N) and inflation (Pa). */
    double area(double width, double diameter, double load, double inflation) {
        Require.above("a pressure", 0, inflation);
        return bySize * width * diameter + byLoad * load / 1000 + byLoadOverPressure * load / inflation;
    }
}
