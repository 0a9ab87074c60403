package footing.web.compare;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ComparePagesTest extends Served {
    private final Visitor visitor = visitor();

    private static String oneMachine() throws IOException {
        return Files.readString(Path.of(System.getProperty("basedir", "web"), "..", "cases", "one-machine.yaml"));
    }

    private String imported(String text) {
        return Pattern.compile("/cases/[a-z0-9]{12}")
                .matcher(visitor.post("/cases/import", Map.of("text", text))
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .results()
                .findFirst()
                .orElseThrow()
                .group();
    }

    private void save(String path, String text, int version) {
        assertThat(visitor.post(path + "/file", Map.of("text", text, "version", Integer.toString(version)))
                        .statusCode())
                .isEqualTo(302);
    }

    private String changed() throws IOException {
        String path = imported(oneMachine());
        save(path, oneMachine().replace("billing: 75", "billing: 95"), 1);
        return path;
    }

    @Test
    void compare_nothingChanged_saysSo() throws IOException {
        assertThat(visitor.get(imported(oneMachine()) + "/compare").body())
                .contains("Both are the same, to the letter");
    }

    @Test
    void compare_unasked_takesThePreviousVersionWithAnotherText() throws IOException {
        String path = changed();
        visitor.post(path + "/rename", Map.of("name", "Another name", "version", "2"));

        String page = visitor.get(path + "/compare").body();

        assertThat(page)
                .containsPattern("value=\"version-1\" selected")
                .containsPattern("value=\"version-3\" selected");
        assertThat(page).contains("Billed per crew-hour", ">75<", ">95<");
    }

    @Test
    void compare_anotherCase_namesItsInput() throws IOException {
        String path = changed();
        String other = imported(oneMachine().replace("title: One mower, one owner", "title: A neighbor's"));

        String page = visitor.get(path + "/compare?then=case-" + other.substring("/cases/".length()))
                .body();

        assertThat(page).contains("Other cases, as they stand").contains("Billed per crew-hour");
    }

    @Test
    void compare_anotherCurrency_saysThatItCannot() throws IOException {
        String path = imported(oneMachine());
        save(path, oneMachine().replace("season:", "currency: EUR\nseason:"), 1);

        assertThat(visitor.get(path + "/compare").body()).contains("savings in two currencies");
    }

    @Test
    void compare_aVersionThatIsNotThere_isNotFound() throws IOException {
        String path = changed();

        assertThat(visitor.get(path + "/compare?then=version-9").statusCode()).isEqualTo(404);
        assertThat(visitor.get(path + "/compare?then=case-nope").statusCode()).isEqualTo(404);
        assertThat(visitor.get("/cases/aaaaaaaaaaaa/compare").statusCode()).isEqualTo(404);
    }

    @Test
    void history_everyOlderVersion_canBeComparedWithNow() throws IOException {
        String path = changed();

        assertThat(visitor.get(path + "/history").body())
                .contains(path + "/compare?then=version-1")
                .doesNotContain("then=version-2");
    }
}
