package footing.cli;

import static org.assertj.core.api.Assertions.assertThat;

import footing.cli.text.Letters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A forecast kept, and what an invented log tells since held against it. */
class FollowTest {
    private static final String HEADS = "date,machine,event,meter,position,assembly,cause,fix,delay,cost\n";

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void copyTheCase() throws IOException {
        file = folder.resolve("one.yaml");
        String text = Files.readString(Path.of(Run.ONE_MACHINE))
                .replace("asOf: 2027-03-01\n", "asOf: 2027-03-01\nrecords: log.csv\n")
                .replace("{kind: air, position: drive,", "{kind: air, position: drive, warranty: {hours: 500},");
        Files.writeString(file, text);
    }

    private void log(int flats, int hours) throws IOException {
        StringBuilder log = new StringBuilder(HEADS)
                .append("2027-03-01,mower,begin,0,,,,,,\n")
                .append("2027-03-01,mower,fit,0,drive,air,,,,\n");
        for (int i = 1; i <= flats; i++) {
            log.append("2027-06-%02d,mower,flat,%d,drive,,thorn,plug on site,25 min,4\n".formatted(i, 10 * i));
        }
        log.append("2027-10-31,mower,reading,").append(hours).append(",,,,,,\n");
        Files.writeString(folder.resolve("log.csv"), log);
    }

    private Run follow(String... more) {
        String[] args = new String[more.length + 2];
        args[0] = "follow";
        args[1] = file.toString();
        System.arraycopy(more, 0, args, 2, more.length);
        return Run.in(folder, "", Letters.ASCII, args);
    }

    private void keep() {
        Run kept = follow("--keep", "--on", "2027-03-02");
        assertThat(kept.err()).doesNotContain("Exception", "footing:");
        assertThat(kept.code()).isZero();
        assertThat(kept.out()).contains("Kept a forecast of 2027-03-02 in one.forecast.json");
    }

    @Test
    void follow_nothingKeptYet_saysHowToBegin() throws IOException {
        log(3, 400);
        Run run = follow();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("no forecast", "--keep").doesNotContain("Exception");
    }

    @Test
    void follow_asManyFlatsAsExpected_saysSoWithTheWarrantyLeft() throws IOException {
        keep();
        log(3, 400);
        Run run = follow("--on", "2027-11-01");
        assertThat(run.code()).isZero();
        assertThat(run.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        String said = run.out().replaceAll("\\s+", " ");
        assertThat(said)
                .contains("as expected on one machine", "3 flats", "Warranties", "400 of 500 h run", "100 h left")
                .doesNotContain("NaN");
    }

    /** The log's row of the first day tells which drives were on. */
    @Test
    void follow_recordsOfWhichNothingIsLearned_warnsOfNothingAndCountsNoSet() throws IOException {
        log(3, 400);
        keep();
        Run run = follow();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("No sets put on");
        assertThat(Run.in(folder, "", Letters.ASCII, "check", file.toString()).err())
                .contains("no value is learned");
    }

    @Test
    void follow_manyMoreFlats_saysMoreThanExpected() throws IOException {
        keep();
        log(25, 400);
        assertThat(follow().out().replaceAll("\\s+", " ")).contains("more than expected on mower");
    }

    @Test
    void json_ofAFollowUp_holdsBandsAndWhatCame() throws IOException {
        keep();
        log(3, 400);
        Run run = follow("--json");
        assertThat(run.code()).isZero();
        JsonNode json = JsonMapper.shared().readTree(run.out());
        assertThat(json.get("format").asString()).isEqualTo("footing-follow/1");
        JsonNode flats = json.get("machines").get(0).get("followed").get(0);
        assertThat(flats.get("came").asDouble()).isEqualTo(3);
        assertThat(flats.get("low").asDouble()).isLessThan(flats.get("high").asDouble());
    }

    @Test
    void keep_twice_keepsBothUnlessOfTheSameDay() throws IOException {
        keep();
        keep();
        follow("--keep", "--on", "2027-03-09");
        JsonNode kept = JsonMapper.shared().readTree(Files.readString(folder.resolve("one.forecast.json")));
        assertThat(kept.get("forecasts")).hasSize(2);
    }

    @Test
    void follow_brokenForecastOrNoRecords_isRefusedWithTheReason() throws IOException {
        keep();
        Run none = follow();
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("no records log.csv");
        log(3, 400);
        Files.writeString(folder.resolve("one.forecast.json"), "{\"format\": 3");
        Run broken = follow();
        assertThat(broken.code()).isEqualTo(2);
        assertThat(broken.err()).contains("forecasts kept can't be used").doesNotContain("Exception");
        assertThat(follow("--keep").code()).isEqualTo(2);
        assertThat(folder.resolve("one.forecast.json")).hasContent("{\"format\": 3");
    }
}
