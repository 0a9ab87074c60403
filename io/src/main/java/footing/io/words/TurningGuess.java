package footing.io.words;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.fleet.InForce;
import footing.core.fleet.Input;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A guess in force that could turn the verdict on some machines.
 *
 * @param swing how far it moves their savings, added up
 */
public record TurningGuess(InForce guess, double swing, List<String> machines) {
    public TurningGuess {
        machines = List.copyOf(machines);
    }

    /** All of an answer's, largest swing first. */
    public static List<TurningGuess> of(Answer answer) {
        Map<Input, TurningGuess> found = new LinkedHashMap<>();
        for (MachineAnswer m : answer.machines()) {
            List<MachineAnswer.Guess> guesses = m.guesses() == null ? List.of() : m.guesses();
            for (MachineAnswer.Guess g : guesses) {
                if (g.turnsVerdict()) {
                    found.merge(
                            g.input().input(),
                            new TurningGuess(g.input(), g.swing(), List.of(m.id())),
                            TurningGuess::and);
                }
            }
        }
        return found.values().stream()
                .sorted(Comparator.comparingDouble(TurningGuess::swing).reversed())
                .toList();
    }

    private TurningGuess and(TurningGuess other) {
        List<String> both = new ArrayList<>(machines);
        both.addAll(other.machines);
        return new TurningGuess(guess, swing + other.swing, both);
    }

    /** 'done another day, of what slips (crew streets): 50 %; could turn the verdict on S1 and S2.'. */
    public String told(Answer answer) {
        return Lists.capital(Naming.of(answer.of(), guess.input())) + ": " + Naming.value(guess)
                + "; could turn the verdict on " + Lists.machines(machines) + ".";
    }
}
