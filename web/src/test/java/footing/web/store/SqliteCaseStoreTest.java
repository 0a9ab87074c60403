package footing.web.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import footing.web.store.Change.Kind;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteCaseStoreTest {
    @TempDir
    private @Nullable Path folder;

    private CaseStore store = Stores.none();

    @BeforeEach
    void openStore() {
        store = Stores.in(folder);
    }

    private StoredCase made() {
        return store.create("Hill farm", "one", "made");
    }

    @Test
    void create_aText_isKeptToTheLetter() {
        String text = "title: \"ü ❄ 𝄞\"\n\ttab\r\n  trailing  \n\n";
        StoredCase made = store.create("Hill farm", text, "made");
        assertThat(Stores.in(folder).get(made.id())).isEqualTo(made);
        assertThat(made.text()).isEqualTo(text);
        assertThat(made.version()).isEqualTo(1);
        assertThat(made.canUndo()).isFalse();
        assertThat(made.canRedo()).isFalse();
    }

    @Test
    void create_aNameWithLineFeeds_becomesOneLineOfBearableLength() {
        assertThat(store.create(" a\nb\t ", "x", "").name()).isEqualTo("a b");
        assertThat(store.create("  ", "x", "").name()).isEqualTo("Untitled case");
        String cut = store.create("𝄞".repeat(150), "x", "").name();
        assertThat(cut).hasSizeLessThanOrEqualTo(CaseNames.LONGEST).matches("(𝄞)+");
    }

    @Test
    void save_fromAnOldVersion_isRefusedAndSaysWhatStands() {
        StoredCase made = made();
        StoredCase first = store.save(made.id(), "two", "first", 1);
        assertThatThrownBy(() -> store.save(made.id(), "three", "second", 1))
                .isInstanceOfSatisfying(
                        Overtaken.class, e -> assertThat(e.now()).isEqualTo(first));
        assertThat(store.get(made.id()).text()).isEqualTo("two");
        assertThat(store.history(made.id())).hasSize(2);
    }

    @Test
    void undo_severalTimes_walksBackAndRedoForward() {
        String id = made().id();
        store.save(id, "two", "b", 1);
        store.save(id, "three", "c", 2);
        assertThat(store.undo(id, 3).text()).isEqualTo("two");
        StoredCase atStart = store.undo(id, 4);
        assertThat(atStart.text()).isEqualTo("one");
        assertThat(atStart.canUndo()).isFalse();
        assertThat(store.undo(id, 5)).isEqualTo(atStart);
        assertThat(store.redo(id, 5).text()).isEqualTo("two");
        StoredCase atEnd = store.redo(id, 6);
        assertThat(atEnd.text()).isEqualTo("three");
        assertThat(atEnd.canRedo()).isFalse();
        assertThat(store.redo(id, 7)).isEqualTo(atEnd);
        assertThat(store.history(id))
                .extracting(Change::kind)
                .containsExactly(
                        Kind.REDONE, Kind.REDONE, Kind.UNDONE, Kind.UNDONE, Kind.CHANGED, Kind.CHANGED, Kind.CREATED);
        assertThat(store.history(id)).extracting(Change::what).containsExactly("c", "b", "b", "c", "c", "b", "made");
    }

    @Test
    void save_afterUndo_leavesWhatWasUndoneInTheHistoryAlone() {
        String id = made().id();
        store.save(id, "two", "b", 1);
        store.undo(id, 2);
        StoredCase saved = store.save(id, "other", "c", 3);
        assertThat(saved.canRedo()).isFalse();
        assertThat(store.undo(id, 4).text()).isEqualTo("one");
        assertThat(store.redo(id, 5).text()).isEqualTo("other");
        assertThat(store.goBackTo(id, 2, 6).text()).isEqualTo("two");
        assertThat(store.undo(id, 7).text()).isEqualTo("other");
    }

    @Test
    void rename_undone_hasTheOldName() {
        String id = made().id();
        assertThat(store.rename(id, "Valley farm", 1).name()).isEqualTo("Valley farm");
        assertThat(store.undo(id, 2).name()).isEqualTo("Hill farm");
    }

    @Test
    void archive_andRestore_areInTheHistoryAndLeaveUndoAlone() {
        String id = made().id();
        store.save(id, "two", "b", 1);
        assertThat(store.archive(id, 2).archived()).isTrue();
        assertThat(store.list()).extracting(CaseSummary::archived).containsExactly(true);
        StoredCase restored = store.restore(id, 3);
        assertThat(restored.archived()).isFalse();
        assertThat(restored.text()).isEqualTo("two");
        assertThat(store.undo(id, 4).text()).isEqualTo("one");
    }

    @Test
    void deleteForGood_ofACaseInUse_isRefused() {
        StoredCase made = made();
        assertThatThrownBy(() -> store.deleteForGood(made.id(), 1)).isInstanceOf(IllegalArgumentException.class);
        store.archive(made.id(), 1);
        assertThatThrownBy(() -> store.deleteForGood(made.id(), 1)).isInstanceOf(Overtaken.class);
        store.deleteForGood(made.id(), 2);
        assertThatThrownBy(() -> store.get(made.id())).isInstanceOf(NoSuchCase.class);
        assertThatThrownBy(() -> store.history(made.id())).isInstanceOf(NoSuchCase.class);
        assertThat(store.list()).isEmpty();
    }

    @Test
    void copy_thenChanged_leavesTheFirstAlone() {
        StoredCase made = made();
        StoredCase copy = store.copy(made.id(), "Copy of Hill farm");
        store.save(copy.id(), "two", "b", 1);
        assertThat(store.get(made.id())).isEqualTo(made);
        assertThat(store.history(copy.id())).extracting(Change::what).containsExactly("b", "Copied from Hill farm");
    }

    @Test
    void save_manyAtOnce_eachVersionIsWonByOneAndAllAreKept() {
        String id = made().id();
        Set<String> kept = new ConcurrentSkipListSet<>();
        AtomicInteger refused = new AtomicInteger();
        IntStream.range(0, 8).parallel().forEach(writer -> {
            for (int i = 0; i < 25; i++) {
                String text = "by " + writer + ", " + i;
                try {
                    store.save(id, text, text, store.get(id).version());
                    kept.add(text);
                } catch (Overtaken e) {
                    refused.incrementAndGet();
                }
            }
        });
        List<Change> history = store.history(id);
        assertThat(kept.size() + refused.get()).isEqualTo(200);
        assertThat(history.size() - 1).isEqualTo(kept.size());
        assertThat(history.stream().map(Change::text)).containsAll(kept);
        assertThat(store.get(id).version()).isEqualTo(history.size());
    }

    @Test
    void get_whileSomebodyElseWrites_doesNotWait() throws Exception {
        StoredCase made = made();
        try (Connection writer = DriverManager.getConnection(DataFile.url(Objects.requireNonNull(folder)))) {
            writer.setAutoCommit(false);
            writer.createStatement().executeUpdate("update case_file set archived = 1");
            StoredCase seen =
                    CompletableFuture.supplyAsync(() -> store.get(made.id())).get(15, TimeUnit.SECONDS);
            assertThat(seen).isEqualTo(made);
            assertThat(store.history(made.id())).hasSize(1);
            writer.rollback();
        }
        assertThat(store.archive(made.id(), 1).archived()).isTrue();
    }
}
