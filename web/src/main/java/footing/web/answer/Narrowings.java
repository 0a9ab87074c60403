package footing.web.answer;

import footing.core.answer.Answer;
import footing.core.answer.MachineAnswer;
import footing.core.answer.Narrowing;
import footing.core.answer.Saving;
import footing.core.answer.Workers;
import footing.core.fleet.Case;
import footing.io.casefile.Unlearned;
import footing.io.words.NarrowedWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** How much surer records make answers; what the last choices would save without records is kept. */
@Component
class Narrowings {
    private static final int REMEMBERED = 16;

    /** Choices of a case; better answers often leave them as they are. */
    private record Choices(Case stated, List<String> machines, List<Integer> entries, int futures) {
        static Choices of(Answer answer) {
            return new Choices(
                    answer.of(),
                    answer.machines().stream().map(MachineAnswer::id).toList(),
                    answer.machines().stream().map(MachineAnswer::recommended).toList(),
                    Math.min(answer.futures(), Narrowing.FUTURES));
        }
    }

    /** The case had nothing been written down, and what the choices would save then. */
    private record Known(Case unlearned, Saving without) {}

    private final Map<Choices, Known> last = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Choices, Known> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** The sentence; empty if nothing is learned from any records. */
    String told(Answer answer) {
        return known(answer)
                .map(k -> NarrowedWords.of(
                        answer, k.unlearned(), new Narrowing(answer.fleet().saving(), k.without())))
                .orElse("");
    }

    private Optional<Known> known(Answer answer) {
        Choices choices = Choices.of(answer);
        synchronized (last) {
            Known known = last.get(choices);
            if (known != null) {
                return Optional.of(known);
            }
        }
        Optional<Known> found =
                Unlearned.of(answer.of()).map(u -> new Known(u, Narrowing.without(answer, u, Workers.one())));
        synchronized (last) {
            found.ifPresent(f -> last.put(choices, f));
        }
        return found;
    }
}
