package footing.web.answer;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Numbers set, taken back and undone over HTTP, with what fits and what doesn't. */
class InputsOverHttpTest extends Served {
    private static final String PEOPLE = "crews.me.people";
    private static final String FLATS = "machines.mower.flatsPerSeason";

    private final Visitor visitor = visitor();
    private String at = "";

    /** A copy of the one-machine example. */
    @BeforeEach
    void copy() {
        Matcher example = Pattern.compile("(/cases/[a-z0-9]{12})\"[^>]*>One machine \\(example\\)")
                .matcher(body("/cases"));
        assertThat(example.find()).isTrue();
        HttpResponse<String> copied = visitor.post(example.group(1) + "/copy", Map.of());
        at = copied.headers().firstValue("Location").orElseThrow().replaceFirst("^https?://[^/]+", "");
    }

    private String body(String path) {
        return visitor.get(path).body();
    }

    private String file() {
        return body(at + "/download");
    }

    private HttpResponse<String> set(String path, Map<String, String> boxes) {
        Map<String, String> form = new LinkedHashMap<>(boxes);
        form.put("path", path);
        return visitor.post(at + "/inputs", form);
    }

    private static String version(String page) {
        return page.replaceAll("(?s).*?data-version=\"(\\d+)\".*", "$1");
    }

    @Test
    void set_fittingValue_isKeptAndAnsweredAnew() {
        HttpResponse<String> answer = set(PEOPLE, Map.of("value", "2"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("HX-Retarget")).contains("#case");
        assertThat(answer.body()).contains("id=\"sentence\"");
        assertThat(file()).containsPattern("people: 2\\b");
    }

    @Test
    void set_wordsForANumber_isRefusedBesideTheFieldWithWhatWasTyped() {
        String before = file();
        HttpResponse<String> answer = set(PEOPLE, Map.of("value", "a few", "turns", "true"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"a few\"", "aria-invalid=\"true\"", "role=\"alert\"", "Read ‘a few’")
                .contains("could turn the verdict")
                .doesNotContain("id=\"sentence\"");
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void set_outOfRange_saysWhatWouldFit() {
        HttpResponse<String> answer = set(PEOPLE, Map.of("value", "-3"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"-3\"").containsPattern("(?s)class=\"faults\".*\\d");
    }

    @Test
    void set_twoOfThree_asksForAllAndKeepsBoth() {
        HttpResponse<String> answer = set(FLATS, Map.of("low", "2", "likely", "4", "high", ""));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Give all three", "value=\"2\"", "value=\"4\"");
    }

    @Test
    void set_threeInWrongOrder_isRefusedWithAllThree() {
        HttpResponse<String> answer = set(FLATS, Map.of("low", "9", "likely", "4", "high", "6"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"9\"", "value=\"4\"", "value=\"6\"");
    }

    @Test
    void set_yamlInABox_changesNothingElse() {
        String before = file();
        HttpResponse<String> answer = set(PEOPLE, Map.of("value", "2\nwage: 1"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void set_unknownPath_asksForANewPageAndChangesNothing() {
        String before = file();
        HttpResponse<String> answer = set("crews.me.nothing", Map.of("value", "2"));
        assertThat(answer.statusCode()).isEqualTo(204);
        assertThat(answer.headers().firstValue("HX-Refresh")).contains("true");
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void forget_statedValue_letsTheGuessStandIn() {
        assertThat(file()).contains("overtimePremium");
        HttpResponse<String> premium = visitor.post(at + "/inputs/forget", Map.of("path", "crews.me.overtimePremium"));
        assertThat(premium.statusCode()).isEqualTo(200);
        assertThat(file()).doesNotContain("overtimePremium");
    }

    @Test
    void forget_whatMustBeStated_isRefusedInWords() {
        String before = file();
        HttpResponse<String> answer =
                visitor.post(at + "/inputs/forget", Map.of("path", "machines.mower.hoursPerYear"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("class=\"faults\"");
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void undo_lastChange_bringsBackTheFileAndRedoTheChange() {
        String before = file();
        String version = version(set(PEOPLE, Map.of("value", "2")).body());
        String after = file();
        HttpResponse<String> undone = visitor.post(at + "/answer/undo", Map.of("version", version));
        assertThat(undone.statusCode()).isEqualTo(200);
        assertThat(file()).isEqualTo(before);
        visitor.post(at + "/answer/redo", Map.of("version", version(undone.body())));
        assertThat(file()).isEqualTo(after);
    }

    @Test
    void undo_overtaken_undoesNothingAndSaysSo() {
        String old = version(body(at));
        set(PEOPLE, Map.of("value", "2"));
        String after = file();
        HttpResponse<String> answer = visitor.post(at + "/answer/undo", Map.of("version", old));
        assertThat(answer.body()).contains("Changed in another window meanwhile");
        assertThat(file()).isEqualTo(after);
    }

    @Test
    void undo_versionIsNoNumber_isAPageInWords() {
        HttpResponse<String> answer = visitor.post(at + "/answer/undo", Map.of("version", "soon"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("could not be read");
    }

    @Test
    void sharpen_badTax_staysAsTypedWithWhatIsWrong() {
        HttpResponse<String> answer =
                visitor.post(at + "/inputs/sharpen", Map.of("form", "tax", "rate", "24 %", "schedule", "80 %, 50 %"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"24 %\"", "value=\"80 %, 50 %\"", "class=\"faults\"");
        assertThat(file()).doesNotContain("tax:");
    }

    @Test
    void sharpen_loan_canBeTakenAndGivenUp() {
        Map<String, String> loan = Map.of("form", "loan", "rate", "6.9 %", "months", "36", "for", "all");
        assertThat(visitor.post(at + "/inputs/sharpen", loan).body()).contains("note at 6.9 %");
        assertThat(visitor.post(at + "/inputs/sharpen", Map.of("form", "loan", "rate", ""))
                        .body())
                .contains(">cash<");
        assertThat(file()).doesNotContain("loan:");
    }
}
