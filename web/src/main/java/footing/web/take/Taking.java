package footing.web.take;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import footing.io.casefile.Reading;
import footing.io.form.Problem;
import footing.web.answer.Answers;
import footing.web.answer.Only;
import footing.web.answer.Told;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The whole answer to a case, for whoever takes it away. */
@Component
class Taking {
    private final CaseStore store;
    private final Answers answers;

    Taking(CaseStore store, Answers answers) {
        this.store = store;
        this.answers = answers;
    }

    /** What reading a case warned of, and its answer. */
    record Taken(List<String> warnings, Answer answer) {
        Taken {
            warnings = List.copyOf(warnings);
        }
    }

    /** The case as it stands. */
    StoredCase kept(String id) {
        return store.get(id);
    }

    /** The machines there is an answer of; none if the case is broken. */
    List<String> machines(StoredCase kept) {
        return kept.read().found().stream()
                .flatMap(c -> c.machines().stream())
                .map(Case.Machine::id)
                .toList();
    }

    /**
     * What the page shows, once that is whole; before, the same worked out here and now.
     *
     * @param mostWhole machines up to which the answer is to say what moves it
     */
    Taken take(Wanted wanted, int mostWhole, Watch watch) {
        Reading reading = wanted.kept().read();
        Case stated = reading.found().orElseThrow();
        Told told = answers.now(wanted.kept().id(), stated, null);
        String machine = wanted.machine();
        boolean many = machine.isEmpty() && stated.machines().size() > mostWhole;
        Answer answer = !told.whole()
                ? answered(stated, machine, many, watch)
                : machine.isEmpty() ? told.answer() : Only.of(told.answer(), machine);
        return new Taken(reading.warnings().stream().map(Problem::toString).toList(), answer);
    }

    private static Answer answered(Case stated, String machine, boolean quick, Watch watch) {
        Options usual = Options.usual();
        Options options = new Options(
                usual.futures(),
                usual.seed(),
                usual.threshold(),
                quick,
                Optional.of(machine).filter(m -> !m.isEmpty()));
        try (Threads threads = Threads.usual()) {
            return Assessment.answer(stated, options, threads, watch);
        }
    }
}
