package footing.core.fitting;

import footing.core.fitting.Findings.Compared;
import footing.core.fleet.Measure;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.ground.Change;
import footing.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Gate, trailer, catcher and sulky, as far as the case states them: the width over the tires, drives or casters,
 * whichever stand wider, against the gate and the trailer, the gap to catcher and sulky less what the tire is larger toward them. Under an inch to spare at a gate or
 * on a trailer is for a check (common practice, no source).
 */
final class Obstacles {
    private static final double TO_SPARE = 0.0254;

    private final FitQuestion question;
    private final Measures machine;

    Obstacles(FitQuestion question) {
        this.question = question;
        machine = question.measures();
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        width(Aspect.GATE, Measure.GATE, all);
        width(Aspect.TRAILER, Measure.TRAILER, all);
        gap(Aspect.CATCHER, Measure.CLEARANCE_CATCHER, all);
        gap(Aspect.SULKY, Measure.CLEARANCE_SULKY, all);
        return all;
    }

    private void width(Aspect aspect, Measure limit, List<Finding> all) {
        OptionalDouble have = machine.get(limit);
        if (have.isEmpty()) {
            return;
        }
        WheelFacts drive = question.wanted().drive();
        if (!machine.has(Measure.TRACK_DRIVE)) {
            all.add(open(aspect, have, question.machinePath(Measure.TRACK_DRIVE.key()), Measure.TRACK_DRIVE));
        } else if (!drive.has(Measure.WIDTH)) {
            all.add(open(aspect, have, FitQuestion.wheelPath(drive, Measure.WIDTH.key()), Measure.WIDTH));
        } else {
            all.add(overTires(aspect, limit, have, drive));
        }
    }

    private Finding overTires(Aspect aspect, Measure limit, OptionalDouble have, WheelFacts drive) {
        Change change = question.change();
        var wider = change.track(Position.DRIVE).value();
        if (wider.isEmpty()) {
            WheelFacts lacks = drive.has(Measure.OFFSET) ? question.carried().drive() : drive;
            return open(aspect, have, FitQuestion.wheelPath(lacks, Measure.OFFSET.key()), Measure.OFFSET);
        }
        double drives = machine.get(Measure.TRACK_DRIVE).orElseThrow()
                + wider.get().meters()
                + drive.get(Measure.WIDTH).orElseThrow();
        double over = Math.max(drives, overCasters());
        Fits verdict = have.getAsDouble() >= over + TO_SPARE
                ? Fits.FITS
                : have.getAsDouble() >= over ? Fits.CHECK : Fits.DOES_NOT_FIT;
        return Findings.compared(
                aspect,
                null,
                new Compared(have.getAsDouble(), over, verdict, drive.isNominal(Measure.WIDTH)),
                new Settle(question.machinePath(limit.key()), limit));
    }

    /** Width over the casters, trailing; nothing where it is not known, as the drives stand wider on most machines. */
    private double overCasters() {
        OptionalDouble track = machine.get(Measure.TRACK_CASTER);
        OptionalDouble width = question.wanted().caster().get(Measure.WIDTH);
        return track.isPresent() && width.isPresent() ? track.getAsDouble() + width.getAsDouble() : 0;
    }

    private static Finding open(Aspect aspect, OptionalDouble have, String path, Measure measure) {
        return Findings.unknown(aspect, null, have, OptionalDouble.empty(), new Settle(path, measure));
    }

    /** What stands behind or beside a drive tire: the tire grows by half its extra diameter. */
    private void gap(Aspect aspect, Measure limit, List<Finding> all) {
        OptionalDouble now = machine.get(limit);
        if (now.isEmpty()) {
            return;
        }
        if (question.isAsCarried(Position.DRIVE)) {
            all.add(Findings.asCarried(aspect, Position.DRIVE));
            return;
        }
        WheelFacts is = question.wanted().drive();
        WheelFacts was = question.carried().drive();
        WheelFacts lacks = is.has(Measure.DIAMETER) ? was : is;
        if (!lacks.has(Measure.DIAMETER)) {
            all.add(Findings.unknown(
                    aspect,
                    Position.DRIVE,
                    OptionalDouble.empty(),
                    OptionalDouble.of(Room.LEAST_GAP),
                    new Settle(FitQuestion.wheelPath(lacks, Measure.DIAMETER.key()), Measure.DIAMETER)));
            return;
        }
        Length more = new Length((is.get(Measure.DIAMETER).orElseThrow()
                        - was.get(Measure.DIAMETER).orElseThrow())
                / 2);
        double left = now.getAsDouble() - Math.max(0, more.meters());
        boolean nominal = is.isNominal(Measure.DIAMETER) || was.isNominal(Measure.DIAMETER);
        all.add(Findings.compared(
                aspect,
                Position.DRIVE,
                Compared.atLeast(left, Room.LEAST_GAP, Room.LEAST_GAP, nominal),
                new Settle(question.machinePath(limit.key()), limit)));
    }
}
