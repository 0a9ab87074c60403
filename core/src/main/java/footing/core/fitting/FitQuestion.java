package footing.core.fitting;

import footing.core.fleet.Case;
import footing.core.fleet.Measures;
import footing.core.fleet.Position;
import footing.core.fleet.WheelFacts;
import footing.core.fleet.WheelPair;
import footing.core.ground.Change;

/**
 * Whether wheels fit a machine that carries others now.
 *
 * @param machine its id
 */
public record FitQuestion(String machine, Measures measures, WheelPair carried, WheelPair wanted) {
    public static FitQuestion of(Case stated, String machine, Case.WheelPackage wanted) {
        Case.Machine m = stated.machine(machine);
        return new FitQuestion(machine, m.measures(), WheelPair.of(stated, m.carries()), WheelPair.of(stated, wanted));
    }

    Change change() {
        return new Change(carried, wanted);
    }

    boolean isAsCarried(Position position) {
        return carried.at(position).isSameWheel(wanted.at(position));
    }

    String machinePath(String key) {
        return "machines." + machine + "." + key;
    }

    static String wheelPath(WheelFacts wheel, String key) {
        return "assemblies." + wheel.id() + "." + key;
    }
}
