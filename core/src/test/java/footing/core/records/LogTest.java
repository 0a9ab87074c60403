package footing.core.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows looked at together: which can be and which can't. */
class LogTest {
    private static final Rows ROWS = new Rows();

    @Test
    void of_hoursTypedWrong_listsTheWrongRowAndNotItsNeighbors() {
        Log log = Log.of(ROWS.read(
                "2026-04-01 A begin 300",
                "2026-04-10 A reading 1342",
                "2026-04-20 A reading 360",
                "2026-05-01 A end 390"));
        assertThat(log.troubles()).singleElement().satisfies(t -> {
            assertThat(t.line()).isEqualTo(2);
            assertThat(t.reason()).contains("backwards").contains("1342");
            assertThat(t.mend()).contains("meter");
        });
        assertThat(log.rows()).isEqualTo(3);
    }

    @Test
    void of_fortyHoursInADay_listsTheRow() {
        Log log = Log.of(ROWS.read("2026-04-01 A begin 300", "2026-04-02 A reading 340"));
        assertThat(log.troubles()).singleElement().satisfies(t -> {
            assertThat(t.line()).isEqualTo(2);
            assertThat(t.reason()).isEqualTo("40 h in 1 days since line 1");
        });
    }

    @Test
    void of_flatOnAMachineNeverSeen_listsTheRow() {
        Log log = Log.of(ROWS.read("2026-04-01 A begin 300", "2026-04-02 B flat 310", "2026-05-01 A end 400"));
        assertThat(log.troubles())
                .singleElement()
                .satisfies(t -> assertThat(t.reason()).contains("'B'").contains("nowhere else"));
    }

    @Test
    void of_sameRowTwice_listsTheSecond() {
        Log log = Log.of(ROWS.read("2026-04-01 A begin 300", "2026-04-09 A flat 310", "2026-04-09 A flat 310"));
        assertThat(log.troubles()).singleElement().satisfies(t -> {
            assertThat(t.line()).isEqualTo(3);
            assertThat(t.reason()).contains("line 2");
        });
    }

    @Test
    void of_flatBeforeRecordingBegan_listsTheRow() {
        Log log = Log.of(ROWS.read("2026-04-01 A begin 300", "2026-03-09 A flat 290", "2026-05-01 A end 400"));
        assertThat(log.troubles())
                .singleElement()
                .satisfies(t -> assertThat(t.reason()).contains("before recording"));
    }

    @Test
    void of_meterReplaced_lowerHoursAreNoTrouble() {
        Log log = Log.of(ROWS.read(
                "2026-04-01 A begin 900",
                "2026-05-01 A reading 960",
                "2026-05-02 A fit 0 meter",
                "2026-06-01 A end 70"));
        assertThat(log.troubles()).isEmpty();
        History history = new History("A", log.machines().getOrDefault("A", List.of()));
        assertThat(history.hours()).isEqualTo(130);
    }

    @Test
    void of_rowsInAnyOrder_tellTheSame() {
        List<Entry> rows = ROWS.read(
                "2026-05-01 A end 390", "2026-04-10 A flat 342", "2026-04-20 A reading 360", "2026-04-01 A begin 300");
        Log log = Log.of(rows);
        assertThat(log.troubles()).isEmpty();
        History history = new History("A", log.machines().getOrDefault("A", List.of()));
        assertThat(history.hours()).isEqualTo(90);
        assertThat(history.counted).isEqualTo(1);
    }
}
