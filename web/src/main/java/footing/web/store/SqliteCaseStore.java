package footing.web.store;

import footing.io.casefile.CaseFile;
import footing.io.casefile.Reading;
import footing.web.store.Change.Kind;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Keeps cases in SQLite. Each call that writes is one transaction, which begins by taking the right to write; one that
 * reads is one statement, which never waits for a writer.
 */
@Component
final class SqliteCaseStore implements CaseStore {
    private final Revisions revisions;
    private final LinkedRecords records;
    private final List<KeptWithCase> beside;
    private final TransactionTemplate transaction;
    private final SecureRandom random = new SecureRandom();
    private final Clock clock = Clock.systemUTC();

    SqliteCaseStore(
            JdbcClient sql, PlatformTransactionManager transactions, LinkedRecords records, List<KeptWithCase> beside) {
        this.records = records;
        this.beside = List.copyOf(beside);
        revisions = new Revisions(sql);
        transaction = new TransactionTemplate(transactions);
    }

    @Override
    public List<CaseSummary> list() {
        return revisions.list();
    }

    @Override
    public StoredCase get(String id) {
        StoredCase kept = revisions.shown(id).orElseThrow(() -> new NoSuchCase(id));
        return kept.with(records.beside(kept.text()));
    }

    @Override
    public StoredCase create(String name, String text, String what) {
        return whole(() -> {
            String id = CaseNames.newId(random);
            revisions.insertCase(id);
            return write(id, Revision.first(CaseNames.clean(name), text, what, now()));
        });
    }

    @Override
    public StoredCase save(String id, String text, String what, long expectedVersion) {
        return change(id, expectedVersion, c -> Optional.of(c.next(Kind.CHANGED, c.name(), text, what, now())));
    }

    @Override
    public StoredCase rename(String id, String name, long expectedVersion) {
        String clean = CaseNames.clean(name);
        return change(
                id,
                expectedVersion,
                c -> Optional.of(c.next(Kind.RENAMED, clean, c.text(), "Renamed to " + clean, now())));
    }

    @Override
    public StoredCase undo(String id, long expectedVersion) {
        return change(
                id,
                expectedVersion,
                c -> Optional.ofNullable(c.parent())
                        .map(p -> c.goTo(
                                Kind.UNDONE,
                                revisions.of(id, p),
                                revisions.of(id, c.standsFor()).what(),
                                now())));
    }

    @Override
    public StoredCase redo(String id, long expectedVersion) {
        return change(
                id,
                expectedVersion,
                c -> revisions.lastChild(id, c.standsFor()).map(r -> c.goTo(Kind.REDONE, r, r.what(), now())));
    }

    @Override
    public StoredCase goBackTo(String id, long version, long expectedVersion) {
        return change(id, expectedVersion, c -> {
            Revision then = revisions.of(id, version);
            return Optional.of(c.next(Kind.CHANGED, then.name(), then.text(), "Back to version " + version, now()));
        });
    }

    @Override
    public StoredCase copy(String id, String name) {
        return whole(() -> {
            Revision from = revisions.current(id);
            StoredCase copy = create(name, from.text(), "Copied from " + from.name());
            beside.forEach(b -> b.copy(id, copy.id()));
            return copy;
        });
    }

    @Override
    public StoredCase archive(String id, long expectedVersion) {
        return setArchived(id, expectedVersion, true);
    }

    @Override
    public StoredCase restore(String id, long expectedVersion) {
        return setArchived(id, expectedVersion, false);
    }

    private StoredCase setArchived(String id, long expectedVersion, boolean archived) {
        return change(id, expectedVersion, c -> {
            if (revisions.isArchived(id) == archived) {
                return Optional.empty();
            }
            revisions.setArchived(id, archived);
            return Optional.of(c.note(archived ? Kind.ARCHIVED : Kind.RESTORED, "", now()));
        });
    }

    @Override
    public void deleteForGood(String id, long expectedVersion) {
        whole(() -> {
            expect(id, expectedVersion);
            if (!revisions.isArchived(id)) {
                throw new IllegalArgumentException("only an archived case can be deleted for good");
            }
            revisions.delete(id);
            return id;
        });
    }

    @Override
    public List<Change> history(String id) {
        List<Change> changes = revisions.all(id).stream().map(Revision::shown).toList();
        if (changes.isEmpty()) {
            throw new NoSuchCase(id);
        }
        return changes;
    }

    private StoredCase change(String id, long expectedVersion, Function<Revision, Optional<Revision>> step) {
        return whole(() -> {
            Revision current = expect(id, expectedVersion);
            return step.apply(current).map(next -> write(id, next)).orElseGet(() -> get(id));
        });
    }

    private Revision expect(String id, long expectedVersion) {
        Revision current = revisions.current(id);
        if (current.version() != expectedVersion) {
            throw new Overtaken(get(id));
        }
        return current;
    }

    private StoredCase write(String id, Revision next) {
        revisions.append(id, next);
        if (CaseFile.read(next.text(), next.name()) instanceof Reading.Accepted read) {
            revisions.setSize(
                    id, read.stated().machines().size(), read.stated().crews().size());
        } else {
            revisions.setSize(id, 0, 0);
        }
        return get(id);
    }

    private <T> T whole(Supplier<T> work) {
        return Objects.requireNonNull(transaction.execute(status -> work.get()));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }
}
