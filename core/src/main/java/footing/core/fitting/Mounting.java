package footing.core.fitting;

import footing.core.fitting.Findings.Compared;
import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import footing.core.fleet.Seat;
import footing.core.fleet.WheelFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Does it go on: bolt pattern and seat of a drive wheel, bore and hub length of a caster.
 *
 * <p>Patterns in use lie half an inch apart and a tape is good for 1/16 in: up to 2 mm is the same circle, up to 4 mm is
 * for another look. A caster's bore may be 0.8 mm wider than its bolt; its hub up to 2 mm shorter than the room for it,
 * further with spacers. Common practice, no source.
 */
final class Mounting {
    private static final double SAME_CIRCLE = 0.002;
    private static final double CLOSE_CIRCLE = 0.004;
    private static final double TIGHT = 0.0002;
    private static final double LOOSE_BORE = 0.0008;
    private static final double LOOSE_HUB = 0.002;
    private static final double MOST_SPACERS = 0.025;

    private final FitQuestion question;
    private final WheelFacts drive;
    private final WheelFacts caster;

    Mounting(FitQuestion question) {
        this.question = question;
        drive = question.wanted().drive();
        caster = question.wanted().caster();
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        if (question.isAsCarried(Position.DRIVE)) {
            all.add(Findings.asCarried(Aspect.BOLTS, Position.DRIVE));
        } else {
            Finding bolts = both(Aspect.BOLTS, Measure.BOLTS, Measure.HUB_BOLTS);
            all.add(bolts);
            if (bolts.verdict() != Fits.DOES_NOT_FIT) {
                all.add(both(Aspect.CIRCLE, Measure.CIRCLE, Measure.HUB_CIRCLE));
                all.add(seat());
            }
        }
        if (question.isAsCarried(Position.CASTER)) {
            all.add(Findings.asCarried(Aspect.AXLE, Position.CASTER));
        } else {
            all.add(both(Aspect.AXLE, Measure.AXLE, Measure.FORK_AXLE));
            all.add(both(Aspect.HUB_LENGTH, Measure.HUB_LENGTH, Measure.FORK_WIDTH));
        }
        return all;
    }

    private Finding both(Aspect aspect, Measure ofWheel, Measure ofMachine) {
        Position position = ofWheel == Measure.BOLTS || ofWheel == Measure.CIRCLE ? Position.DRIVE : Position.CASTER;
        WheelFacts wheel = position == Position.DRIVE ? drive : caster;
        OptionalDouble have = wheel.get(ofWheel);
        OptionalDouble need = question.measures().get(ofMachine);
        Settle atWheel = new Settle(FitQuestion.wheelPath(wheel, ofWheel.key()), ofWheel);
        Settle atMachine = new Settle(question.machinePath(ofMachine.key()), ofMachine);
        if (have.isEmpty() || need.isEmpty()) {
            return Findings.unknown(aspect, position, have, need, need.isEmpty() ? atMachine : atWheel);
        }
        return Findings.compared(aspect, position, compared(aspect, have.getAsDouble(), need.getAsDouble()), atWheel);
    }

    private static Compared compared(Aspect aspect, double have, double need) {
        return switch (aspect) {
            case CIRCLE -> Compared.alike(have, need, SAME_CIRCLE, CLOSE_CIRCLE);
            case AXLE -> between(have, need, have >= need - TIGHT && have <= need + LOOSE_BORE, false);
            case HUB_LENGTH -> {
                boolean fits = have <= need + TIGHT && have >= need - LOOSE_HUB;
                boolean spacers = have < need && have >= need - MOST_SPACERS;
                yield between(have, need, fits, spacers);
            }
            default -> Compared.alike(have, need, 0, 0);
        };
    }

    private static Compared between(double have, double need, boolean fits, boolean close) {
        return new Compared(have, need, fits ? Fits.FITS : close ? Fits.CHECK : Fits.DOES_NOT_FIT, false);
    }

    private Finding seat() {
        Seat have = drive.measures().seat();
        Seat need = question.measures().seat();
        OptionalDouble none = OptionalDouble.empty();
        if (have == null || need == null) {
            String path = need == null ? question.machinePath("hub.drive.seat") : FitQuestion.wheelPath(drive, "seat");
            return Findings.unknown(Aspect.SEAT, Position.DRIVE, none, none, new Settle(path, null));
        }
        return new Finding(
                Aspect.SEAT,
                Position.DRIVE,
                have == need ? Fits.FITS : Fits.DOES_NOT_FIT,
                Finding.Why.COMPARED,
                none,
                none,
                null);
    }
}
