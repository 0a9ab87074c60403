package footing.core.ground;

import footing.core.money.ReferenceValue;
import footing.core.quantity.Angle;
import footing.core.quantity.Length;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GroundReferenceTest {
    private static final AreaRegression SOFT = new AreaRegression(0.310, 0.00263, 0.239);
    private static final double GRAVITY = 9.80665;

    static Stream<ReferenceValue> published() {
        return ReferenceValue.read(GroundReferenceTest.class, "ground.tsv");
    }

    @ParameterizedTest
    @MethodSource
    void published(ReferenceValue row) {
        String f = row.function();
        row.check(
                f.startsWith("keller")
                        ? farm(row)
                        : row.id().startsWith("5") ? slope(row) : row.id().startsWith("9") ? scales(row) : patch(row));
    }

    private static double patch(ReferenceValue row) {
        double[] x = row.from(0);
        return switch (row.function()) {
            case "fullness" -> SuperEllipse.fullness(x[0]);
            case "area" -> x[0] / (x[1] + x[2]);
            case "lengthOfRectangle" -> ShearBand.printLength(x[0], x[1] + x[2], x[3]);
            case "crowned" -> Deflection.crowned(x[0], x[1], x[2], x[3]);
            case "crownedStiffness" -> Deflection.crownedStiffness(x[0], x[1], x[2]);
            case "flat" -> Deflection.flat(ShearBand.printLength(x[0], x[1], x[3]), x[2]);
            case "rigidArea" -> AreaRegression.RIGID.area(x[0], x[1], x[2], x[3]);
            case "softArea" -> SOFT.area(x[0], x[1], x[2], x[3]);
            case "rigidPressure" -> x[2] / AreaRegression.RIGID.area(x[0], x[1], x[2], x[3]);
            case "softPressure" -> x[2] / SOFT.area(x[0], x[1], x[2], x[3]);
            case "depth" -> DepthStress.below(x[0], x[1], x[2], x[3]);
            default -> turn(row);
        };
    }

    private static double turn(ReferenceValue row) {
        double[] x = row.from(0);
        return switch (row.function()) {
            case "meanRadius" -> PivotScrub.meanRadius(x[0], x[1]);
            case "lockedPath" -> PivotScrub.lockedPath(x[0], x[1], Math.toRadians(x[2]));
            case "lockedEnergy" ->
                PivotScrub.energy(x[3], x[4], PivotScrub.lockedPath(x[0], x[1], Math.toRadians(x[2])));
            case "rollingPath" -> PivotScrub.rollingPath(x[0], x[1], x[2]);
            case "rollingEnergy" -> PivotScrub.energy(x[3], x[4], PivotScrub.rollingPath(x[0], x[1], x[2]));
            case "ratio" -> PivotScrub.lockedAgainstCounter(x[0], x[1], x[2], Math.toRadians(x[3]));
            default -> rolling(row);
        };
    }

    private static double rolling(ReferenceValue row) {
        double[] x = row.from(0);
        return switch (row.function()) {
            case "rollingRadius" -> radius(x[0], x[1]).meters();
            case "speedRatio" -> Rolling.speedRatio(radius(x[0], x[1]), radius(x[0], x[2]));
            case "newSpeed" -> x[3] * Rolling.speedRatio(radius(x[0], x[1]), radius(x[0], x[2]));
            case "wheelSpeed" -> x[2] / 3.6 / radius(x[0], x[1]).meters() * 60 / (2 * Math.PI);
            case "band" -> ShearBand.pressure(x[0], x[1], x[2]);
            case "bandPsi" -> new Pressure(ShearBand.pressure(x[0], x[1], x[2])).psi();
            case "bandLength" -> ShearBand.printLength(x[0], x[1], x[2]);
            case "loadAtPressure" -> LoadRating.factor(x[0], x[1]);
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    private static Length radius(double diameter, double loaded) {
        return Rolling.radius(new Length(diameter), new Length(loaded)).value().orElseThrow();
    }

    private static double farm(ReferenceValue row) {
        double[] x = row.from(0);
        FarmTireContact c = new FarmTireContact(x[0], x[1], x[2], x[3], x[4]);
        return switch (row.function()) {
            case "keller-load" -> c.load();
            case "keller-stress" -> c.stress();
            case "keller-length" -> c.length();
            case "keller-dip" -> Deflection.flat(c.length(), x[2]);
            case "keller-shape" -> c.shape();
            case "keller-area" -> c.area();
            case "keller-mean" -> c.load() / c.area();
            default -> throw new IllegalArgumentException(row.function());
        };
    }

    private static double slope(ReferenceValue row) {
        Stance s = Stances.of(row);
        return switch (row.function()) {
            case "tip" -> Tip.sideways(s).degrees();
            case "tipPivoted" ->
                Tip.sidewaysPivoted(s, new Length(row.number(6))).degrees();
            case "tipBackward" -> Tip.backward(s).degrees();
            case "tipForward" -> Tip.forward(s).degrees();
            case "tipSoft" -> Tip.sidewaysOnSoftTires(s, row.number(6)).degrees();
            case "everyWheel" -> SlopeHold.everyWheel(row.number(6)).degrees();
            case "climb" -> SlopeHold.climb(s, row.number(6)).degrees();
            case "holdAtMost" -> SlopeHold.acrossAtMost(s, row.number(6)).degrees();
            case "hold" -> SlopeHold.across(s, row.number(6)).degrees();
            default -> load(row, s);
        };
    }

    private static double load(ReferenceValue row, Stance s) {
        Angle slope = Angle.ofDegrees(row.number(6));
        boolean up = row.function().startsWith("up");
        SlopeLoads loads = (up ? SlopeLoads.up(s, slope) : SlopeLoads.across(s, slope))
                .value()
                .orElseThrow();
        Mass mass = row.function().endsWith("Lower") ? loads.lower() : loads.upper();
        return mass.kilograms() * GRAVITY;
    }

    private static double scales(ReferenceValue row) {
        double[] x = row.from(0);
        WheelLoads loads = new WheelLoads(new Mass(x[0]), new Mass(x[1]), new Mass(x[2]), new Mass(x[3]));
        Length wheelbase = new Length(x[4]);
        return switch (row.function()) {
            case "total" -> loads.total().kilograms();
            case "ahead" -> loads.ahead(wheelbase).meters();
            case "aside" ->
                loads.aside(new Frame(wheelbase, new Length(x[5]), new Length(x[5])))
                        .meters();
            default -> lifted(row, loads, wheelbase);
        };
    }

    private static double lifted(ReferenceValue row, WheelLoads loads, Length wheelbase) {
        LiftedAxle axle = new LiftedAxle(
                loads.total(), loads.ahead(wheelbase), wheelbase, new Length(row.number(6)), new Mass(row.number(7)));
        return switch (row.function()) {
            case "liftAngle" -> axle.angle().degrees();
            case "liftHeight" ->
                axle.height(new Length(row.number(8))).value().orElseThrow().meters();
            case "liftSensitivity" -> axle.sensitivity();
            default -> throw new IllegalArgumentException(row.function());
        };
    }
}
