package footing.web.answer;

import footing.core.answer.MachineAnswer;
import footing.core.fleet.Case;
import footing.core.fleet.InForce;
import footing.core.fleet.ResolvedMachine;
import footing.core.fleet.Resolver;
import footing.core.fleet.Values;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whole answers of machines, by all that such an answer depends on: a change to one machine's numbers leaves those of
 * the others in force.
 */
final class MachineMemory {
    private static final int MOST = 256;

    /** All that a machine's whole answer depends on. */
    private record Question(ResolvedMachine machine, List<InForce> numbers, int futures) {}

    private final Map<Question, MachineAnswer> answers = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, MachineAnswer> eldest) {
            return size() > MOST;
        }
    };

    private static Question question(Case stated, String machine, int futures) {
        Case.Machine m = stated.machine(machine);
        return new Question(Resolver.resolve(stated, m), new Values(stated, m).all(), futures);
    }

    Optional<MachineAnswer> find(Case stated, String machine, int futures) {
        Question question = question(stated, machine, futures);
        synchronized (answers) {
            return Optional.ofNullable(answers.get(question));
        }
    }

    void keep(Case stated, String machine, int futures, MachineAnswer answer) {
        Question question = question(stated, machine, futures);
        synchronized (answers) {
            answers.put(question, answer);
        }
    }
}
