package footing.web.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KillTest {
    private static final int SAVES = 200;

    /** Before what the writer says, since the libraries talk too. */
    private static final String SAID = "said ";

    /** Saves, and says so after each save: what was said must be there after a kill. */
    public static final class Writer {
        private Writer() {}

        public static void main(String[] folder) throws InterruptedException {
            CaseStore store = Stores.in(Path.of(folder[0]));
            StoredCase now = store.create("Hill farm", "start", "made");
            System.out.println(SAID + now.id());
            for (int i = 1; i <= SAVES; i++) {
                now = store.save(now.id(), text(i), "save " + i, now.version());
                System.out.println(SAID + i);
            }
            Thread.sleep(60_000);
        }
    }

    private static String text(int i) {
        return ("save " + i + "\n").repeat(2_000);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 60, 137, 199})
    void kill_duringSaves_losesNothingAcknowledged(int killedAfter, @TempDir Path folder) throws Exception {
        Path said = Files.createFile(folder.resolve("said"));
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(said.toFile())
                .start();
        while (said(said).size() <= killedAfter && writer.isAlive()) {
            Thread.sleep(1);
        }
        writer.destroyForcibly();
        assertThat(writer.waitFor()).isEqualTo(128 + 9);
        List<String> acknowledged = said(said);
        assertThat(acknowledged).hasSizeGreaterThan(killedAfter);
        assertThat(integrity(folder)).isEqualTo("ok");
        String id = acknowledged.get(0);
        Map<Long, Change> kept =
                Stores.in(folder).history(id).stream().collect(Collectors.toMap(Change::version, c -> c));
        for (int i = 1; i < acknowledged.size(); i++) {
            assertThat(kept.get(i + 1L)).extracting(Change::text).isEqualTo(text(i));
        }
        assertThat(Stores.in(folder).get(id).version()).isEqualTo(kept.size());
    }

    /** What has been said in whole lines. */
    private static List<String> said(Path file) throws IOException {
        String text = Files.readString(file);
        return text.substring(0, text.lastIndexOf('\n') + 1)
                .lines()
                .filter(l -> l.startsWith(SAID))
                .map(l -> l.substring(SAID.length()))
                .toList();
    }

    private static String integrity(Path folder) throws SQLException {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("footing.db"));
                var rows = connection.createStatement().executeQuery("PRAGMA integrity_check")) {
            return rows.getString(1);
        }
    }
}
