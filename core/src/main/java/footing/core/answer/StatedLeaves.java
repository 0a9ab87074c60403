package footing.core.answer;

import static footing.core.answer.Explanation.How.PRODUCT;
import static footing.core.answer.Explanation.How.SUM;
import static footing.core.answer.Explanation.by;
import static footing.core.answer.Explanation.leaf;

import footing.core.answer.Explanation.Unit;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import footing.core.fleet.Key;
import footing.core.fleet.Position;
import footing.core.fleet.ResolvedAssembly;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Values;
import java.util.List;

/** The leaves of explanations that somebody stated or nobody did: a machine's numbers in force, with their source. */
final class StatedLeaves {
    private final ResolvedMachine machine;
    private final Values values;

    StatedLeaves(Case stated, ResolvedMachine machine) {
        this.machine = machine;
        values = new Values(stated, stated.machine(machine.id()));
    }

    Explanation taxRate() {
        return stated(Key.TAX_RATE, "", "");
    }

    Explanation overtimeHour() {
        return product(
                "an hour of one person, made up",
                hour(),
                by("with the premium", Unit.FACTOR, SUM, List.of(one(), crew(Key.OVERTIME_PREMIUM))));
    }

    Explanation hour() {
        return product(
                "an hour of one person",
                crew(Key.WAGE),
                by("with burden", Unit.FACTOR, SUM, List.of(one(), crew(Key.BURDEN))));
    }

    static Explanation one() {
        return leaf("all of it", 1, Unit.FACTOR, "by definition");
    }

    Explanation shopRate() {
        return stated(Key.SHOP_RATE, "", "");
    }

    Explanation crew(Key key) {
        return stated(key, machine.crew().id(), "");
    }

    Explanation count(Position p) {
        return stated(p == Position.DRIVE ? Key.COUNT_DRIVE : Key.COUNT_CASTER, machine.id(), "");
    }

    Explanation asm(Key key, ResolvedAssembly a) {
        return stated(key, a.id(), "");
    }

    Explanation stated(Key key, String owner, String part) {
        Input input = new Input(key, owner, part);
        return leafOf(values.find(input).orElseThrow(() -> new IllegalStateException("nobody stated " + input.path())));
    }

    private static Explanation leafOf(InForce input) {
        Unit unit = switch (input.input().key().dimension()) {
            case MONEY -> Unit.MONEY;
            case METER_HOURS, TIME -> Unit.HOURS;
            case SHARE -> Unit.SHARE;
            case COUNT -> Unit.COUNT;
        };
        String source = switch (input.origin()) {
            case STATED -> "yours: " + input.input().path();
            case GUESSED -> "a guess: " + input.input().path();
            case LEARNED -> "from your records: " + input.input().path();
            case TYPICAL -> "typical, not a quote: " + input.input().path();
            case DEFAULT -> "not stated: " + input.why();
        };
        return leaf(input.input().key().label(), input.value().likely(), unit, source);
    }

    static Explanation product(String label, Explanation... factors) {
        return by(label, Unit.MONEY, PRODUCT, List.of(factors));
    }
}
