package footing.web.cases;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class CasesTest extends Served {
    private static final String ONE_MACHINE = read("one-machine.yaml");

    private final Visitor visitor = visitor();

    private static String read(String name) {
        try {
            return Files.readString(Path.of(System.getProperty("basedir", "web"), "..", "cases", name));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Imports a text and tells the path of the case. */
    private String imported(String text) {
        HttpResponse<String> response = visitor.post("/cases/import", Map.of("text", text));
        assertThat(response.statusCode()).isEqualTo(302);
        return Pattern.compile("/cases/[a-z0-9]{12}")
                .matcher(response.headers().firstValue("Location").orElseThrow())
                .results()
                .findFirst()
                .orElseThrow()
                .group();
    }

    private HttpResponse<String> post(String path, long version) {
        return visitor.post(path, Map.of("version", Long.toString(version), "to", "history"));
    }

    @Test
    void list_ofANewFolder_hasTheTwoExamples() {
        assertThat(visitor.get("/").body())
                .contains("Quillbrook Grounds (example)", "9 machines, 3 crews", "One machine (example)");
    }

    @Test
    void import_aGoodFile_comesBackToTheLetter() {
        String path = imported(ONE_MACHINE);
        HttpResponse<String> back = visitor.get(path + "/download");
        assertThat(back.body()).isEqualTo(ONE_MACHINE);
        assertThat(back.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("attachment").contains(".yaml"));
    }

    @Test
    void import_upload_isReadAsTheFileIs() {
        String body = "--x\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + visitor.token()
                + "\r\n--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.yaml\"\r\n\r\n" + ONE_MACHINE
                + "\r\n--x--\r\n";
        HttpResponse<String> response = visitor.send(visitor.request("/cases/import")
                .header("Content-Type", "multipart/form-data; boundary=x")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.getBytes(StandardCharsets.UTF_8))));
        assertThat(response.statusCode()).isEqualTo(302);
    }

    @Test
    void import_aBrokenFile_showsEveryProblemAndKeepsTheText() {
        String broken = "format: footing-case/1\ntitle: <b>Hill & farm</b>\nasOf: soon\n";
        HttpResponse<String> response = visitor.post("/cases/import", Map.of("text", broken));
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.body())
                .contains("Line 3", "asOf", "soon", "crews", "machines", "packages")
                .contains("title: &lt;b&gt;Hill &amp; farm&lt;/b&gt;")
                .doesNotContain("<b>Hill");
    }

    @Test
    void import_nothing_isSaidBesideTheForm() {
        HttpResponse<String> response = visitor.post("/cases/import", Map.of("text", " \n"));
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.body()).contains("choose a file or paste its text");
    }

    @Test
    void file_savedFromTwoWindows_keepsBothTexts() {
        String path = imported(ONE_MACHINE);
        String mine = ONE_MACHINE + "# mine\n";
        String theirs = ONE_MACHINE + "# theirs\n";
        assertThat(visitor.post(path + "/file", Map.of("version", "1", "text", theirs.replace("\n", "\r\n")))
                        .statusCode())
                .isEqualTo(302);
        HttpResponse<String> late = visitor.post(path + "/file", Map.of("version", "1", "text", mine));
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("Changed in another window", "# mine", "# theirs", "value=\"2\"");
        assertThat(visitor.get(path + "/download").body()).isEqualTo(theirs);
        assertThat(visitor.post(path + "/file", Map.of("version", "2", "text", mine))
                        .statusCode())
                .isEqualTo(302);
        assertThat(visitor.get(path + "/download").body()).isEqualTo(mine);
    }

    @Test
    void file_broken_isNotSavedAndNotLost() {
        String path = imported(ONE_MACHINE);
        HttpResponse<String> response =
                visitor.post(path + "/file", Map.of("version", "1", "text", "format: footing-case/1\n"));
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.body()).contains("Not saved");
        assertThat(visitor.get(path + "/download").body()).isEqualTo(ONE_MACHINE);
    }

    @Test
    void undo_afterAChange_isAChangeOfItsOwn() {
        String path = imported(ONE_MACHINE);
        visitor.post(path + "/file", Map.of("version", "1", "text", ONE_MACHINE + "# more\n"));
        assertThat(post(path + "/undo", 2).headers().firstValue("Location").orElseThrow())
                .endsWith(path + "/history");
        assertThat(visitor.get(path + "/download").body()).isEqualTo(ONE_MACHINE);
        assertThat(visitor.get(path + "/history").body())
                .contains("Undone: Case file: 1 line changed", "Pasted", "# more");
        assertThat(post(path + "/undo", 2).statusCode()).isEqualTo(409);
        assertThat(post(path + "/redo", 3).statusCode()).isEqualTo(302);
        assertThat(visitor.get(path + "/download").body()).endsWith("# more\n");
    }

    @Test
    void delete_needsTheArchiveFirstAndIsThenForGood() {
        String path = imported(ONE_MACHINE);
        post(path + "/delete", 1);
        assertThat(visitor.get(path + "/download").statusCode()).isEqualTo(200);
        String list =
                post(path + "/archive", 1).headers().firstValue("Location").orElseThrow();
        assertThat(visitor.get(list.replaceFirst("^http://[^/]+", "")).body()).contains("Take it back");
        assertThat(visitor.get("/cases/archived").body()).contains(path + "/delete");
        assertThat(visitor.get(path + "/delete").body()).contains("Nothing brings them back");
        assertThat(post(path + "/delete", 2).statusCode()).isEqualTo(302);
        assertThat(visitor.get(path + "/download").statusCode()).isEqualTo(404);
    }

    @Test
    void copyAndRename_leaveTheDocumentAlone() {
        String path = imported(ONE_MACHINE);
        String copy = post(path + "/copy", 1).headers().firstValue("Location").orElseThrow();
        String copyPath = copy.replaceFirst("^http://[^/]+", "");
        assertThat(copyPath).isNotEqualTo(path);
        visitor.post(copyPath + "/rename", Map.of("version", "1", "name", "With <winter> rates"));
        assertThat(visitor.get("/cases").body()).contains("With &lt;winter&gt; rates");
        assertThat(visitor.get(copyPath + "/download").body()).isEqualTo(ONE_MACHINE);
    }

    @Test
    void interview_everythingLeftOpen_makesACase() {
        HttpResponse<String> made = visitor.post("/cases/new", Map.of());
        assertThat(made.statusCode()).isEqualTo(302);
        String path = made.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]+", "");
        assertThat(visitor.get(path + "/download").body()).contains("guess");
    }

    @Test
    void interview_aWrongAnswer_isSaidBesideItsFieldAndKept() {
        HttpResponse<String> response = visitor.post("/cases/new", Map.of("alike", "many", "wage", "21.40"));
        assertThat(response.statusCode()).isEqualTo(422);
        Matcher field = Pattern.compile("(?s)id=\"alike-fault\">([^<]+)<").matcher(response.body());
        assertThat(field.find()).isTrue();
        assertThat(field.group(1)).isNotBlank();
        assertThat(response.body()).contains("value=\"many\"", "value=\"21.40\"", "One answer does not fit");
    }

    @Test
    void interview_look_tellsGuessesAndFaults() {
        HttpResponse<String> look = visitor.post("/cases/new/look", Map.of("owned", "order", "alike", "many"));
        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body()).contains("\"hoursNow\":{\"asked\":false").contains("\"alike\":{\"asked\":true");
    }

    @Test
    void unknownCase_anyPart_isNotFound() {
        for (String part : new String[] {"/history", "/file", "/download", "/rename", "/delete"}) {
            assertThat(visitor.get("/cases/nonesuch" + part).statusCode()).isEqualTo(404);
        }
        assertThat(post("/cases/nonesuch/undo", 1).statusCode()).isEqualTo(404);
    }
}
