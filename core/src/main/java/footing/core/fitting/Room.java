package footing.core.fitting;

import footing.core.fitting.Findings.Compared;
import footing.core.fleet.Measure;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The gap left around a tire: the least gap around the one on the machine, less what the new tire is larger there. It
 * grows inward by half the extra width less the extra offset, outward by half the extra width and the extra offset, all
 * round by half the extra diameter; the worst of the three counts.
 *
 * <p>At least 3/4 in should be left anywhere (common practice, no source); less is for a check, none does not fit.
 */
final class Room {
    static final double LEAST_GAP = 0.75 * 0.0254;

    private final FitQuestion question;

    Room(FitQuestion question) {
        this.question = question;
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        for (Position position : Position.values()) {
            all.add(question.isAsCarried(position) ? Findings.asCarried(Aspect.ROOM, position) : room(position));
        }
        return all;
    }

    private Finding room(Position position) {
        Measure gap = position == Position.DRIVE ? Measure.CLEARANCE_DRIVE : Measure.CLEARANCE_CASTER;
        OptionalDouble now = question.measures().get(gap);
        Settle atMachine = new Settle(question.machinePath(gap.key()), gap);
        Optional<Settle> lacking = lacking(position);
        OptionalDouble need = OptionalDouble.of(LEAST_GAP);
        if (now.isEmpty() || lacking.isPresent()) {
            return Findings.unknown(Aspect.ROOM, position, OptionalDouble.empty(), need, lacking.orElse(atMachine));
        }
        double left = now.getAsDouble() - Math.max(0, growth(position));
        return Findings.compared(
                Aspect.ROOM, position, Compared.atLeast(left, LEAST_GAP, LEAST_GAP, isNominal(position)), atMachine);
    }

    private Optional<Settle> lacking(Position position) {
        List<Measure> wanted = position == Position.DRIVE
                ? List.of(Measure.DIAMETER, Measure.WIDTH, Measure.OFFSET)
                : List.of(Measure.DIAMETER, Measure.WIDTH);
        for (WheelFacts wheel :
                List.of(question.wanted().at(position), question.carried().at(position))) {
            for (Measure m : wanted) {
                if (!wheel.has(m)) {
                    return Optional.of(new Settle(FitQuestion.wheelPath(wheel, m.key()), m));
                }
            }
        }
        return Optional.empty();
    }

    private double growth(Position position) {
        double around = more(position, Measure.DIAMETER) / 2;
        double wider = more(position, Measure.WIDTH) / 2;
        double outward = position == Position.DRIVE ? more(position, Measure.OFFSET) : 0;
        return Math.max(around, wider + Math.abs(outward));
    }

    private double more(Position position, Measure m) {
        return question.wanted().at(position).get(m).orElseThrow()
                - question.carried().at(position).get(m).orElseThrow();
    }

    private boolean isNominal(Position position) {
        return question.wanted().at(position).isNominal(Measure.DIAMETER)
                || question.wanted().at(position).isNominal(Measure.WIDTH)
                || question.carried().at(position).isNominal(Measure.DIAMETER)
                || question.carried().at(position).isNominal(Measure.WIDTH);
    }
}
