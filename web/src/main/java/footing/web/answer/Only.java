package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import java.util.List;

/** An answer about one machine of several, so that the same sentences can be told of it alone. */
public final class Only {
    private Only() {}

    public static Answer of(Answer answer, String machine) {
        MachineAnswer one = answer.machine(machine);
        return new Answer(
                answer.of(),
                answer.futures(),
                answer.seed(),
                answer.threshold(),
                answer.reached(),
                answer.complete(),
                answer.warnings(),
                List.of(one),
                new Answer.Fleet(one.choice().saving(), one.choice().startCost()));
    }
}
