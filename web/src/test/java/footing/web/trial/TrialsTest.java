package footing.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.core.trial.TrialResult;
import footing.io.trial.StatedTrial;
import footing.io.trial.TrialFile;
import footing.io.trial.TrialReading;
import footing.io.words.TrialCautions;
import footing.io.words.TrialWords;
import footing.web.serve.Served;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Trials begun, handed over and judged on the page. */
class TrialsTest extends Served {
    private static final Path DAY =
            Path.of("..", "cases", "trial-day").toAbsolutePath().normalize();

    private final TrialVisit visit = new TrialVisit(visitor());

    /** What the command line prints first. */
    private static String verdict(String text, String name) {
        StatedTrial stated = ((TrialReading.Accepted) TrialFile.read(text, name)).stated();
        return new TrialWords(TrialResult.of(stated.trial()), stated.measure().shown(stated.metric())).verdict();
    }

    private static String shown(String text) {
        return text.replace("&", "&amp;").replace("'", "&#39;").replace("<", "&lt;");
    }

    private static String trial(HttpResponse<String> redirect) {
        return "/" + redirect.headers().firstValue("Location").orElseThrow().replaceAll(".*/", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pull.yaml", "ride.yaml", "opposed.yaml", "pivot.csv"})
    void file_ofTheTrialDay_isJudgedAsOnTheCommandLineAndComesBackAsItCame(String name) throws IOException {
        String text = Files.readString(DAY.resolve(name));
        HttpResponse<String> taken = visit.handOver(name, text);
        assertThat(taken.statusCode()).isEqualTo(302);
        String page = visit.get(trial(taken)).body();
        assertThat(page).contains("<h1 id=\"verdict\">" + shown(verdict(text, name)));
        assertThat(page).contains("<h2 id=\"came-head\">", name.startsWith("opposed") ? "Pull 3: even" : "Run 3: ");
        assertThat(visit.get(trial(taken) + "/file").body()).isEqualTo(text);
        assertThat(visit.handOver(name, text).headers().firstValue("Location"))
                .isEqualTo(taken.headers().firstValue("Location"));
    }

    @Test
    void file_thatCantBeJudged_comesBackWithAllThatIsWrongAndIsNotKept() {
        HttpResponse<String> refused = visit.handOver("t.yaml", "format: footing-trial/1\nkind: pul\n");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("pul", "title", "runs", "nothing was kept");
        assertThat(visit.handOver("t.yaml", "").statusCode()).isEqualTo(422);
        assertThat(visit.get("").body()).doesNotContain("/trials/1");
    }

    @Test
    void begun_andWrittenDown_isJudgedAsItsFileIs() {
        String trial = visit.begin(TrialVisit.beginning());
        assertThat(visit.get("/" + trial).body()).contains("Nothing is written down yet", "4 planned runs are open");
        visit.post("/" + trial + "/pairs", Map.of("pairs", "6"));
        visit.writeAll(trial, Map.of("air", 410.0, "airless", 470.0));
        HttpResponse<String> file = visit.get("/" + trial + "/file");
        assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
                .contains("steady-pull-air-against-airless.yaml");
        assertThat(file.body()).startsWith("format: footing-trial/1\n").contains("pressure: 12 psi");
        String verdict = verdict(file.body(), "trial.yaml");
        assertThat(verdict).contains("Airless is better");
        String page = visit.get("/" + trial).body();
        assertThat(page).contains("<h1 id=\"verdict\">" + shown(verdict), "id=\"pair-lines\"");
        assertThat(page).contains("All planned runs are written down");
    }

    @Test
    void morePairs_planned_leaveThePlacesOfTheOthers() {
        Map<String, String> form = TrialVisit.beginning();
        form.put("surfaces", "dry, wet");
        form.put("pairs", "3");
        String trial = visit.begin(form);
        Map<String, String> before = visit.plan(trial);
        assertThat(before).hasSize(12);
        visit.post("/" + trial + "/pairs", Map.of("pairs", "5"));
        Map<String, String> after = visit.plan(trial);
        assertThat(after).hasSize(20);
        before.forEach(
                (place, words) -> assertThat(after.getOrDefault(place, "").replaceAll("^\\D+\\d+", ""))
                        .isEqualTo(words.replaceAll("^\\D+\\d+", "")));
        assertThat(visit.post("/" + trial + "/pairs", Map.of("pairs", "2")).statusCode())
                .isEqualTo(422);
    }

    @Test
    void begin_sentTwice_isOneTrial() {
        Map<String, String> form = TrialVisit.beginning();
        assertThat(visit.begin(form)).isEqualTo(visit.begin(form));
        form.put("sentAs", "x");
        assertThat(visit.post("", form).statusCode()).isEqualTo(400);
    }

    @ParameterizedTest
    @CsvSource({
        "judge, weight, Choose what each run gives",
        "a.name, '', Name what is compared",
        "b.name, air, need names that differ",
        "a.pressure, soft, a pressure",
        "a.mass, -3 kg, a mass",
        "margin, much, margin",
        "pairs, 0, pairs on each surface",
        "pairs, 900, pairs on each surface",
    })
    void begin_thatCantBe_isAskedAgainWithNothingLost(String box, String typed, String why) {
        Map<String, String> form = TrialVisit.beginning();
        form.put(box, typed);
        form.put("held", "fuel to the mark");
        HttpResponse<String> again = visit.post("", form);
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains(why, "value=\"fuel to the mark\"");
    }

    @Test
    void cautions_ofItsKind_standOnEveryPageOfATrial() {
        Map<String, String> form = TrialVisit.beginning();
        form.put("judge", "drift");
        form.put("margin", "");
        String trial = visit.begin(form);
        List<String> pages = List.of(
                visit.get("/new").body(),
                visit.get("/" + trial).body(),
                visitor().get("/field/" + visit.id + "/" + trial).body());
        for (String page : pages) {
            for (String caution : TrialCautions.of(footing.core.trial.TrialKind.SIDE_HILL)) {
                assertThat(page).contains(shown(caution));
            }
            assertThat(page).contains("No result here calls a slope safe");
        }
        form.put("sentAs", "another-mark");
        form.put("judge", "winner");
        String pull = visit.begin(form);
        assertThat(visitor().get("/field/" + visit.id + "/" + pull).body())
                .contains("Nobody in line with the strap", "Even");
    }

    @Test
    void trial_ofAnotherCase_isNotFound() {
        String trial = visit.begin(TrialVisit.beginning());
        TrialVisit other = new TrialVisit(visitor());
        for (String path : new String[] {"/" + trial, "/" + trial + "/file", "/999999", "/x"}) {
            assertThat(other.get(path).statusCode()).isIn(400, 404);
        }
        assertThat(other.post("/" + trial + "/archive", Map.of("archived", "true"))
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void archive_andBack_keepsTheTrial() {
        String trial = visit.begin(TrialVisit.beginning());
        visit.post("/" + trial + "/archive", Map.of("archived", "true"));
        assertThat(visit.get("").body()).contains("laid away", "Take back Steady pull");
        visit.post("/" + trial + "/archive", Map.of("archived", "false"));
        assertThat(visit.get("").body()).doesNotContain("laid away");
    }
}
