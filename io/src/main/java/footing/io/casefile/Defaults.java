package footing.io.casefile;

import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.fleet.Values;
import footing.io.form.Written;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Lists what a case leaves to defaults. */
public final class Defaults {
    private Defaults() {}

    /**
     * A default in force.
     *
     * @param path place in the file where one's own value would go
     * @param value as a case file would write it
     * @param why where it comes from
     */
    public record Line(String path, String value, String why) {}

    /** Every default any machine's answer rests on, each once, in the order of a case file. */
    public static List<Line> list(Case stated) {
        Set<Line> lines = new LinkedHashSet<>();
        List<List<InForce>> byMachine =
                stated.machines().stream().map(m -> new Values(stated, m).all()).toList();
        for (footing.core.fleet.Place place : footing.core.fleet.Place.values()) {
            for (int i = 0; i < byMachine.size(); i++) {
                Case.Machine machine = stated.machines().get(i);
                for (InForce value : byMachine.get(i)) {
                    if (value.input().key().place() == place && matters(stated, machine, value)) {
                        lines.add(line(machine, value));
                    }
                }
            }
        }
        stated.machines().forEach(m -> addWhen(lines, m));
        return new ArrayList<>(lines);
    }

    private static boolean matters(Case stated, Case.Machine machine, InForce value) {
        if (value.origin() != Origin.DEFAULT) {
            return false;
        }
        Input input = value.input();
        return switch (input.key()) {
            case FLATS_AT_CASTER -> machine.numbers().get(Key.FLATS_AT_DRIVE).isEmpty();
            case TREAT_PRICE, TREAT_HOURS -> stated.assembly(input.owner()).treats() != null;
            case WORN_DRIVE, WORN_CASTER -> !machine.isNew();
            default -> true;
        };
    }

    private static Line line(Case.Machine machine, InForce value) {
        Input input = value.input();
        String whose = input.key() == Key.SHOP_RATE ? ", crew " + machine.crew() : "";
        return new Line(input.path(), Written.spread(input.key().dimension(), value.value()), value.why() + whose);
    }

    private static void addWhen(Set<Line> lines, Case.Machine machine) {
        if (machine.when().isEmpty()) {
            lines.add(new Line(
                    "machines." + machine.id() + ".when",
                    machine.isNew() ? "[now]" : "[now, worn]",
                    machine.isNew() ? "a new machine is ordered as it will run" : "both are worth knowing"));
        }
    }
}
