package footing.io.records;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.fleet.Case;
import footing.core.records.Background;
import footing.core.records.Learner;
import footing.io.casefile.CaseFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was learned once is found again only as long as nothing it rests on has changed. */
class LessonsTest {
    private static final String LOG = """
            date,machine,event,hours,fix
            2026-04-01,mower,begin,300,
            2026-05-01,mower,flat,350,plug on site
            2026-10-01,mower,end,700,
            """;

    @TempDir
    Path folder;

    private Lessons.Taught taught(String log, Background background) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, log);
        return Lessons.of(file, background, 1.6);
    }

    private static Background background(String from, String to) throws IOException {
        String text = Files.readString(Path.of("../cases/one-machine.yaml"));
        assertThat(text).contains(from);
        Case stated = CaseFile.read(text.replace(from, to), "case").found().orElseThrow();
        return new CaseBackground(stated);
    }

    @Test
    void of_onlyAPriceChanged_findsTheLessonAgain() throws IOException {
        Lessons.Taught first = taught(LOG, background("price: 205", "price: 205"));
        Lessons.Taught again = taught(LOG, background("price: 205", "price: 240"));
        assertThat(again.learned()).isSameAs(first.learned());
        assertThat(again.records()).isSameAs(first.records());
    }

    @Test
    void of_whatLearningAsksChanged_learnsAnew() throws IOException {
        Lessons.Taught first = taught(LOG, background("price: 205", "price: 205"));
        String[][] changes = {
            {"share: 80 %", "share: 70 %", "share: 20 %", "share: 30 %"},
            {"casters: {kind: solid", "casters: {kind: air", "price: 205", "price: 205"},
            {"flatsPerSeason", "flatsAt: {drive: 90 %}, flatsPerSeason", "price: 205", "price: 205"},
        };
        for (String[] c : changes) {
            String text = Files.readString(Path.of("../cases/one-machine.yaml"))
                    .replace(c[0], c[1])
                    .replace(c[2], c[3]);
            Background background =
                    new CaseBackground(CaseFile.read(text, "case").found().orElseThrow());
            Lessons.Taught other = taught(LOG, background);
            assertThat(other.learned()).as(c[1]).isNotSameAs(first.learned());
            assertThat(other.learned().flats().get(0).exposure())
                    .as(c[1])
                    .isEqualTo(Learner.learn(first.records().log(), background, 1.6)
                            .flats()
                            .get(0)
                            .exposure());
        }
    }

    @Test
    void of_fileOrWearLimitChanged_learnsAnew() throws IOException {
        Lessons.Taught first = taught(LOG, Background.NONE);
        assertThat(taught(LOG.replace("350", "360"), Background.NONE).learned()).isNotSameAs(first.learned());
        assertThat(Lessons.of(folder.resolve("log.csv"), Background.NONE, 2).learned())
                .isNotSameAs(taught(LOG.replace("350", "360"), Background.NONE).learned());
        assertThat(taught(LOG, Background.NONE).learned()).isSameAs(first.learned());
    }

    @Test
    void of_manyFiles_keepsTheLastFewAlone() throws IOException {
        Lessons.Taught first = taught(LOG, Background.NONE);
        for (int i = 0; i < 4; i++) {
            taught(LOG.replace("350", "35" + (i + 1)), Background.NONE);
        }
        assertThat(taught(LOG, Background.NONE).learned()).isNotSameAs(first.learned());
    }
}
