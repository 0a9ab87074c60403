package footing.io.edit;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.fleet.Key;
import footing.core.fleet.Origin;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.io.casefile.CaseFile;
import footing.io.records.CaseBackground;
import footing.io.records.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What records teach, put into the bundled example. */
class LearnedEditTest {
    private static final Path EXAMPLE = Path.of("../cases/quillbrook.yaml");
    private static final List<Ledger.Row> ROWS = List.of(
            row(2, Map.of("date", "2026-04-01", "machine", "E1", "event", "begin", "hours", "100")),
            row(3, Map.of("date", "2026-05-01", "machine", "E1", "event", "flat", "hours", "150")),
            row(4, Map.of("date", "2026-09-01", "machine", "E1", "event", "reading", "hours", "500")));

    private static Ledger.Row row(int line, Map<String, String> cells) {
        return new Ledger.Row("log.csv", line, cells);
    }

    private static LearnedEdit.Result written(String text) {
        Case stated = CaseFile.read(text, "case").found().orElseThrow();
        Learned learned = Learner.learn(Ledger.of(ROWS).log(), new CaseBackground(stated), 1.6);
        return LearnedEdit.write(text, stated, learned, "log.csv").orElseThrow();
    }

    @Test
    void write_recordsOfOneMachine_changesItsFlatsAloneAndLinksThem() throws IOException {
        String text = Files.readString(EXAMPLE);
        LearnedEdit.Result result = written(text);
        assertThat(result.told()).hasSize(1);
        assertThat(result.told().get(0))
                .matches("E1, flats a season on air: [0-9.]+ to [0-9.]+, by your records; you said 3 to 11\\.");
        List<String> before = text.lines().toList();
        List<String> added =
                result.text().lines().filter(l -> !before.contains(l)).toList();
        assertThat(added).hasSize(2).anyMatch(l -> l.contains("records: log.csv"));
    }

    @Test
    void read_withTheRecordsBesideIt_takesTheirValue(@TempDir Path folder) throws IOException {
        String text = written(Files.readString(EXAMPLE)).text();
        Files.writeString(folder.resolve("log.csv"), Ledger.of(ROWS).csv());
        Case known = CaseFile.read(text, "case", folder).found().orElseThrow();
        Case unknown = CaseFile.read(text, "case").found().orElseThrow();
        Key key = known.machine("E1").flatsKey();
        assertThat(known.machine("E1").numbers().origin(key)).isEqualTo(Origin.LEARNED);
        assertThat(known.machine("E1").numbers())
                .isNotEqualTo(unknown.machine("E1").numbers());
        assertThat(known.machine("E2").numbers())
                .isEqualTo(unknown.machine("E2").numbers());
    }
}
