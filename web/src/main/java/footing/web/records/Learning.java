package footing.web.records;

import footing.core.fleet.Case;
import footing.core.records.Background;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.io.records.CaseBackground;
import footing.web.store.LinkedRecords;
import footing.web.store.StoredCase;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** Reads a case's records and learns from them; the last few results are kept, as pages ask again and again. */
@Component
class Learning {
    /** Tread depth in millimeters at which a set is worn out, about 2/32 in; common practice, no source. */
    private static final double WEAR_LIMIT = 1.6;

    private static final int REMEMBERED = 4;

    private final RecordStore store;
    private final Map<Object, Object> last = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > 3 * REMEMBERED;
        }
    };

    private record BookOf(String caseId, long version) {}

    private record NameOf(String caseId, long version) {}

    private record LearnedOf(String caseId, long version, String text) {}

    Learning(RecordStore store) {
        this.store = store;
    }

    Logbook book(String caseId) {
        long version = store.version(caseId);
        return remembered(
                new BookOf(caseId, version),
                Logbook.class,
                () -> Logbook.of(
                        store.sheets(caseId),
                        kept -> store.content(caseId, kept.id()).orElse(new byte[0]),
                        store.mends(caseId),
                        store.entries(caseId)));
    }

    /** What the rows that can be teach. */
    Learned learned(StoredCase kept, Logbook book) {
        return remembered(new LearnedOf(kept.id(), store.version(kept.id()), kept.text()), Learned.class, () -> {
            Optional<Case> stated = kept.read().found();
            Background background = stated.<Background>map(CaseBackground::new).orElse(Background.NONE);
            return Learner.learn(book.ledger().log(), background, WEAR_LIMIT);
        });
    }

    /** The name a case would call these records by, without the rows that can't be. */
    String name(String caseId, Logbook book) {
        return remembered(
                new NameOf(caseId, store.version(caseId)),
                String.class,
                () -> LinkedRecords.name(book.sound().csv()));
    }

    /** Worked out without holding anybody up; two who ask at once may both work it out. */
    private <T> T remembered(Object key, Class<T> type, Supplier<T> work) {
        synchronized (last) {
            Object known = last.get(key);
            if (known != null) {
                return Objects.requireNonNull(type.cast(known));
            }
        }
        T found = work.get();
        synchronized (last) {
            last.put(key, found);
        }
        return found;
    }
}
