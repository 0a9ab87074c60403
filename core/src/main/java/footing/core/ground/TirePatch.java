package footing.core.ground;

import footing.core.fleet.Kind;
import footing.core.quantity.Area;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * The contact patch and mean pressure of a wheel of any kind under a load.
 *
 * <ul>
 *   <li>Air, with or without sealant: p = p_i + p_c, A = W/p. The carcass term p_c comes from a print, p_c = W₀/A₀ − p₀;
 *       without one it is taken as 10 kPa, 3 to 17, and the answer is marked a prior.
 *   <li>Foam and solid: only a print tells, near its own load.
 *   <li>Airless: a print's mean pressure, which hardly moves with the load (see {@link ShearBand}).
 * </ul>
 *
 * <p>Firm, level ground. A print carries from half to twice its load (air) or 80 to 125 % of it (others); the prior
 * holds for tires of 18 to 26 in at 10 to 20 psi and 150 to 400 kg. Beyond, the answer says so. Sources: p_i plus a
 * structural term: NBS Monograph 122, 1971, equation 5.9 (as quoted); the prior's size: an engineer's note, weak
 * evidence; its range also covers {@link AreaRegression}.
 */
public final class TirePatch {
    private static final double CARCASS = 10e3;
    private static final double UNSURE = 7e3;
    private static final double PRIOR_SHAPE = 4;
    private static final double TREAD = 0.8;
    private static final double BELOW_INFLATION = 0.9;
    private static final double SAME = 0.01;

    private TirePatch() {}

    /** What is known of a tire. */
    public record Tire(
            Kind kind,
            @Nullable Length diameter,
            @Nullable Length width,
            @Nullable Pressure inflation,
            @Nullable Print print) {}

    public static Judged<Patch> of(Tire tire, Mass load) {
        Require.above("a wheel load", 0, load.kilograms());
        if (!tire.kind().holdsAir()) {
            return tire.print() == null ? Judged.lacks("print") : unaired(tire.kind(), tire.print(), load);
        }
        if (tire.inflation() == null) {
            return Judged.lacks("pressure");
        }
        return tire.print() == null ? prior(tire, tire.inflation(), load) : aired(tire.print(), tire.inflation(), load);
    }

    private static Judged<Patch> aired(Print print, Pressure inflation, Mass load) {
        if (print.inflation() == null) {
            return Judged.lacks("print.atPressure");
        }
        double measured = print.mean().pascals();
        double printed = print.inflation().pascals();
        if (!(measured >= BELOW_INFLATION * printed)) {
            return Judged.outside("its print says less pressure on the ground than inside: measure the print again");
        }
        if (!(ratio(load, print) >= 0.5 && ratio(load, print) <= 2)) {
            return Judged.outside("its print was taken at less than half or more than twice this load");
        }
        double mean = inflation.pascals() + measured - printed;
        if (!(mean > 0 && inflation.pascals() >= printed / 2 && inflation.pascals() <= 2 * printed)) {
            return Judged.outside("its print was taken at less than half or more than twice this pressure");
        }
        boolean same = near(ratio(load, print)) && near(inflation.pascals() / printed);
        return Judged.of(carried(print, mean, load, same ? Patch.Basis.PRINT : Patch.Basis.CARRIED_OVER));
    }

    private static Judged<Patch> unaired(Kind kind, Print print, Mass load) {
        double ratio = ratio(load, print);
        if (!(ratio >= 0.8 && ratio <= 1.25)) {
            return Judged.outside("its print was taken at a load more than a fifth off; print it at this load");
        }
        double mean = kind == Kind.AIRLESS
                ? print.mean().pascals()
                : load.newtons() / print.area().squareMeters();
        return Judged.of(carried(print, mean, load, near(ratio) ? Patch.Basis.PRINT : Patch.Basis.CARRIED_OVER));
    }

    /** The width stays, the length takes up what the area does. */
    private static Patch carried(Print print, double mean, Mass load, Patch.Basis basis) {
        double area = load.newtons() / mean;
        Length length = new Length(
                area / (SuperEllipse.fullness(print.shape()) * print.width().meters()));
        return new Patch(
                new Area(area),
                length,
                print.width(),
                print.shape(),
                new Pressure(mean),
                new Pressure(mean),
                new Pressure(mean),
                basis);
    }

    private static Judged<Patch> prior(Tire tire, Pressure inflation, Mass load) {
        boolean usual = inflation.psi() >= 10 - SAME && inflation.psi() <= 20 + SAME;
        if (!(usual && load.kilograms() >= 150 && load.kilograms() <= 400) || !fits(tire.diameter())) {
            return Judged.outside(
                    "without a print only tires of 18 to 26 in at 10 to 20 psi and 330 to 880 lb are" + " judged");
        }
        Range range = range(tire, inflation.pascals(), load);
        double area = load.newtons() / range.mean();
        Length width = tire.width();
        Length tread = width == null ? null : new Length(TREAD * width.meters());
        Length length = tread == null ? null : new Length(area / (SuperEllipse.fullness(PRIOR_SHAPE) * tread.meters()));
        return Judged.of(new Patch(
                new Area(area),
                length,
                tread,
                PRIOR_SHAPE,
                new Pressure(range.mean()),
                new Pressure(range.low()),
                new Pressure(range.high()),
                Patch.Basis.PRIOR));
    }

    private record Range(double low, double mean, double high) {}

    private static Range range(Tire tire, double inflation, Mass load) {
        double mean = inflation + CARCASS;
        double low = mean - UNSURE;
        double high = mean + UNSURE;
        Length width = tire.width();
        Length diameter = tire.diameter();
        if (width != null && diameter != null) {
            double area = AreaRegression.RIGID.area(width.meters(), diameter.meters(), load.newtons(), inflation);
            low = Math.min(low, load.newtons() / area);
            high = Math.max(high, load.newtons() / area);
        }
        return new Range(low, mean, high);
    }

    private static boolean fits(@Nullable Length diameter) {
        return diameter == null || (diameter.inches() >= 17.5 && diameter.inches() <= 26.5);
    }

    private static double ratio(Mass load, Print print) {
        return load.kilograms() / print.load().kilograms();
    }

    private static boolean near(double ratio) {
        return Math.abs(ratio - 1) <= SAME;
    }
}
