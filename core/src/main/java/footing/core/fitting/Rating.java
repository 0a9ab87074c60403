package footing.core.fitting;

import footing.core.fitting.Findings.Compared;
import footing.core.fleet.Measure;
import footing.core.fleet.Origin;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.ground.Judged;
import footing.core.ground.LoadRating;
import footing.core.ground.MachineBody;
import footing.core.ground.PackageGround;
import footing.core.ground.WheelLoads;
import footing.core.quantity.Mass;
import footing.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Does it carry the machine: the heaviest wheel of a pair, operator on, against the rating at the pressure it is run at;
 * the machine's top speed against the speed it is rated for.
 */
final class Rating {
    private final FitQuestion question;
    private final Judged<WheelLoads> loads;

    Rating(FitQuestion question) {
        this.question = question;
        MachineBody body = new MachineBody(
                question.machine(), question.measures(), question.carried().drive());
        loads = new PackageGround(body, question.carried(), question.wanted()).loads();
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        for (Position position : Position.values()) {
            all.add(load(position));
            all.add(speed(position));
        }
        return all;
    }

    private Finding load(Position position) {
        WheelFacts wheel = question.wanted().at(position);
        OptionalDouble need = loads.value()
                .map(l -> position == Position.DRIVE ? l.mostAtDrive() : l.mostAtCaster())
                .map(m -> OptionalDouble.of(m.kilograms()))
                .orElse(OptionalDouble.empty());
        Optional<Mass> have = rating(wheel);
        Settle atWheel = new Settle(FitQuestion.wheelPath(wheel, Measure.MAX_LOAD.key()), Measure.MAX_LOAD);
        Settle atMachine = new Settle(question.machinePath("wheelLoads"), Measure.DRIVE_LEFT);
        if (have.isEmpty() || need.isEmpty()) {
            OptionalDouble known =
                    have.map(m -> OptionalDouble.of(m.kilograms())).orElse(OptionalDouble.empty());
            return Findings.unknown(Aspect.LOAD, position, known, need, have.isEmpty() ? atWheel : atMachine);
        }
        boolean typical = isTypical(wheel, Measure.MAX_LOAD)
                || question.measures().origin(Measure.MACHINE_MASS) == Origin.TYPICAL;
        return Findings.compared(
                Aspect.LOAD,
                position,
                Compared.atLeast(have.get().kilograms(), need.getAsDouble(), 0, typical),
                atWheel);
    }

    /** At the pressure it is run at, if both pressures are known. */
    private static Optional<Mass> rating(WheelFacts wheel) {
        OptionalDouble most = wheel.get(Measure.MAX_LOAD);
        OptionalDouble at = wheel.get(Measure.MAX_LOAD_AT);
        OptionalDouble run = wheel.get(Measure.PRESSURE);
        if (most.isEmpty()) {
            return Optional.empty();
        }
        Mass rated = new Mass(most.getAsDouble());
        if (at.isEmpty() || run.isEmpty()) {
            return Optional.of(rated);
        }
        return new LoadRating(rated, new Pressure(at.getAsDouble()))
                .at(new Pressure(run.getAsDouble()))
                .value();
    }

    private Finding speed(Position position) {
        WheelFacts wheel = question.wanted().at(position);
        OptionalDouble have = wheel.get(Measure.MAX_SPEED);
        OptionalDouble need = question.measures().get(Measure.TOP_SPEED);
        Settle atWheel = new Settle(FitQuestion.wheelPath(wheel, Measure.MAX_SPEED.key()), Measure.MAX_SPEED);
        Settle atMachine = new Settle(question.machinePath(Measure.TOP_SPEED.key()), Measure.TOP_SPEED);
        if (have.isEmpty() || need.isEmpty()) {
            return Findings.unknown(Aspect.SPEED, position, have, need, have.isEmpty() ? atWheel : atMachine);
        }
        boolean typical =
                isTypical(wheel, Measure.MAX_SPEED) || question.measures().origin(Measure.TOP_SPEED) == Origin.TYPICAL;
        return Findings.compared(
                Aspect.SPEED, position, Compared.atLeast(have.getAsDouble(), need.getAsDouble(), 0, typical), atWheel);
    }

    private static boolean isTypical(WheelFacts wheel, Measure measure) {
        return wheel.measures().origin(measure) == Origin.TYPICAL;
    }
}
