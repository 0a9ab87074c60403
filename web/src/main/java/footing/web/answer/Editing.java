package footing.web.answer;

import footing.core.fleet.Case;
import footing.io.edit.Edited;
import footing.io.form.Problem;
import footing.web.store.CaseStore;
import footing.web.store.Overtaken;
import footing.web.store.StoredCase;
import java.util.List;
import java.util.function.Function;
import org.springframework.stereotype.Component;

/**
 * Saves changes of single values. A value is put into the text as it stands, so that two people changing different
 * values at once don't undo each other's work.
 */
@Component
public class Editing {
    private static final int TRIES = 20;

    private final CaseStore store;

    Editing(CaseStore store) {
        this.store = store;
    }

    /** What came of a change. */
    public sealed interface Outcome {
        record Saved(StoredCase kept, Case stated) implements Outcome {}

        record Refused(StoredCase kept, List<String> faults) implements Outcome {}
    }

    /**
     * Makes a change and keeps it.
     *
     * @param what what is changed, in words
     */
    public Outcome change(String id, Function<String, Edited> edit, Function<Case, String> what) {
        for (int i = 0; ; i++) {
            StoredCase kept = store.get(id);
            Edited edited = edit.apply(kept.text());
            if (!(edited instanceof Edited.Changed changed)) {
                return new Outcome.Refused(kept, faults(edited.problems()));
            }
            Case now = kept.read(changed.text()).found().orElse(changed.stated());
            try {
                boolean same = changed.text().equals(kept.text());
                return new Outcome.Saved(
                        same ? kept : store.save(id, changed.text(), what.apply(now), kept.version()), now);
            } catch (Overtaken e) {
                if (i == TRIES) {
                    throw e;
                }
            }
        }
    }

    private static List<String> faults(List<Problem> problems) {
        return problems.stream()
                .map(p -> {
                    String read = p.read().isEmpty() ? "" : "read ‘" + p.read() + "’; ";
                    String advice = p.advice().isEmpty() ? "" : ". " + footing.io.words.Lists.capital(p.advice());
                    return footing.io.words.Lists.capital(read + p.message()) + advice + ".";
                })
                .toList();
    }
}
