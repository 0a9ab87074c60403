package footing.web.take;

import footing.core.answer.Answer;
import footing.core.answer.Assessment;
import footing.core.answer.Options;
import footing.core.answer.Watch;
import footing.core.fleet.Case;
import footing.io.answer.Threads;
import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.io.form.Problem;
import footing.web.answer.Answers;
import footing.web.answer.Told;
import footing.web.store.CaseStore;
import footing.web.store.StoredCase;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;

/** The whole answer to a case, for whoever takes it away. */
@Component
class Taking {
    private final CaseStore store;
    private final Answers answers;

    Taking(CaseStore store, Answers answers) {
        this.store = store;
        this.answers = answers;
    }

    /** A case, what reading it warned of, and its answer. */
    record Taken(StoredCase kept, List<String> warnings, Answer answer) {
        Taken {
            warnings = List.copyOf(warnings);
        }
    }

    /** The case as it stands. */
    StoredCase kept(String id) {
        return store.get(id);
    }

    /**
     * What the page shows, once that is whole; before, the same worked out here and now.
     *
     * @param mostWhole machines up to which the answer is to say what moves it
     */
    Taken take(StoredCase kept, int mostWhole) {
        Reading reading = CaseFile.read(kept.text(), "case file");
        Case stated = reading.found()
                .filter(c -> !c.machines().isEmpty())
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.CONFLICT));
        Told told = answers.now(kept.id(), stated, null);
        return new Taken(
                kept,
                reading.warnings().stream().map(Problem::toString).toList(),
                told.whole()
                        ? told.answer()
                        : answered(stated, stated.machines().size() > mostWhole));
    }

    private static Answer answered(Case stated, boolean quick) {
        Options options = quick ? Options.usual().quickly() : Options.usual();
        try (Threads threads = Threads.usual()) {
            return Assessment.answer(stated, options, threads, Watch.NOBODY);
        }
    }
}
