package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.records.Learned;
import footing.core.records.Learner;
import footing.io.casefile.CaseFile;
import footing.io.form.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The log of the demo's fleet: as generated, with its mess found and its truth learned. */
class DemoRecordsTest {
    private static Learned learned() throws IOException {
        Case stated =
                CaseFile.read(Path.of("..", "cases", "quillbrook.yaml")).found().orElseThrow();
        return Learner.learn(RecordsFile.read(DemoRecords.FILE, null).log(), new CaseBackground(stated), 1.6);
    }

    @Test
    void file_isWhatTheGeneratorWrites() throws IOException {
        assertThat(Files.readString(DemoRecords.FILE)).isEqualTo(DemoRecords.text());
    }

    @Test
    void read_plantedMess_isRefusedRowByRow() throws IOException {
        Records records = RecordsFile.read(DemoRecords.FILE, null);
        assertThat(records.unread()).isEmpty();
        assertThat(records.ignored()).containsExactly("Driver");
        assertThat(records.refused()).hasSize(DemoRecords.REFUSED);
        assertThat(records.refused().stream().map(Problem::toString))
                .anyMatch(p -> p.contains("5/20/2026") && p.contains("write 2026-05-20"))
                .anyMatch(p -> p.contains("'E9' is seen nowhere else"))
                .anyMatch(p -> p.contains("7930") && p.contains("backwards"))
                .anyMatch(p -> p.contains("the same row"));
        assertThat(records.log().rows() + records.refused().size()).isEqualTo(records.rows());
    }

    /** Seven machines, 80 % intervals: fewer than four holding the truth would have a chance of 0.03. */
    @Test
    void learn_flats_holdTheTrueRates() throws IOException {
        long held = learned().flats().stream()
                .filter(f -> DemoRecords.TRUE_RATES.containsKey(f.machine()))
                .filter(f ->
                        f.rate().limits(0.8).contains(DemoRecords.TRUE_RATES.getOrDefault(f.machine(), 0.0) / 1000))
                .count();
        assertThat(held).isGreaterThanOrEqualTo(4);
    }

    /** The old meter last showed 510, the new one ends at 380; what ran between 510 and the change nobody wrote down. */
    @Test
    void learn_hours_runOnOverTheNewMeter() throws IOException {
        Learned.Flats s3 = learned().flats().stream()
                .filter(f -> f.machine().equals("S3"))
                .findFirst()
                .orElseThrow();
        assertThat(s3.hours()).isEqualTo(510 + 380);
    }

    @Test
    void learn_lives_countWhatWoreOut() throws IOException {
        Learned.SetLife drive = learned().lives().stream()
                .filter(l -> l.assembly().equals("drive24-air"))
                .findFirst()
                .orElseThrow();
        assertThat(drive.wornOut()).isEqualTo(4);
        assertThat(drive.sets()).isEqualTo(8);
        assertThat(drive.setAside()).isEqualTo(2);
        assertThat(drive.posterior().median().limits(0.8).contains(650)).isTrue();
    }
}
