package footing.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs written down one by one. */
class FieldTest extends Served {
    private final TrialVisit visit = new TrialVisit(visitor());
    private final String trial = visit.begin(TrialVisit.beginning());
    private final List<String> places = List.copyOf(visit.plan(trial).keySet());

    private Map<String, String> run(int number, String value) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("sentAs", "mark-run-" + number);
        form.put("place", places.get(number - 1));
        form.put("value", value);
        form.put("made", "2027-02-06T10:0" + number + ":00.000Z");
        return form;
    }

    private List<String> steady() {
        List<String> values = new ArrayList<>();
        visit.get("/" + trial + "/file").body().lines().forEach(l -> {
            if (l.contains("steady: ") && l.startsWith("  - ")) {
                values.add(l.replaceAll(".*steady: (\\S+ \\S+?)[,}].*", "$1"));
            }
        });
        return values;
    }

    @Test
    void entry_sentTenTimesAtOnce_isOneRun() {
        List<Integer> codes = IntStream.range(0, 10)
                .parallel()
                .mapToObj(i -> visit.field(trial, "/entry", run(1, "417,5")).statusCode())
                .toList();
        assertThat(codes).containsOnly(200);
        assertThat(steady()).containsExactly("417.5 lbf");
    }

    @Test
    void entry_thatCameLate_standsWhereItWasMade() {
        visit.field(trial, "/entry", run(1, "401"));
        visit.field(trial, "/entry", run(3, "403"));
        visit.field(trial, "/entry", run(2, "402"));
        assertThat(steady()).containsExactly("401 lbf", "402 lbf", "403 lbf");
    }

    @Test
    void entry_madeOutOfOrderOrTwice_isKeptAndSaysSo() {
        visit.field(trial, "/entry", run(2, "402"));
        Map<String, String> late = run(1, "401");
        late.put("made", "2027-02-06T11:00:00Z");
        assertThat(visit.field(trial, "/entry", late).body()).contains("later than its place");
        Map<String, String> again = run(2, "402");
        again.put("sentAs", "another-mark");
        assertThat(visit.field(trial, "/entry", again).body()).contains("more than once");
        assertThat(visit.get("/" + trial).body()).contains("more than once", "later than its place");
    }

    @Test
    void undo_ofARun_takesItBackAndSendingItAgainDoesNotBringItBack() {
        visit.field(trial, "/entry", run(1, "417"));
        assertThat(visit.field(trial, "/undo", Map.of("sentAs", "mark-run-1")).body())
                .contains("417 lbf");
        visit.field(trial, "/entry", run(1, "417"));
        assertThat(steady()).isEmpty();
        visit.post("/" + trial + "/run", Map.of("sentAs", "mark-run-1", "undone", "false"));
        assertThat(steady()).containsExactly("417 lbf");
        assertThat(visit.field(trial, "/undo", Map.of("sentAs", "never-came")).statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({
        "place, 9-9-9, Choose which run",
        "value, '', Enter what the run gave",
        "value, strong, 'a force'",
        "value, -4, above zero",
        "moisture, 250, share",
    })
    void entry_thatCantBe_isRefusedWithTheReason(String field, String value, String why) {
        Map<String, String> form = run(1, "417");
        form.put(field, value);
        HttpResponse<String> refused = visit.field(trial, "/entry", form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).containsIgnoringCase(why);
        assertThat(visit.field(trial, "", form).body()).containsIgnoringCase(why);
        assertThat(steady()).isEmpty();
    }

    @Test
    void entry_withoutAMark_isRefused() {
        Map<String, String> form = run(1, "417");
        form.put("sentAs", "x");
        assertThat(visit.field(trial, "/entry", form).statusCode()).isEqualTo(400);
    }

    @Test
    void form_withoutScripts_keepsOnceAndMovesOn() {
        visit.field(trial, "", run(1, "417"));
        HttpResponse<String> back = visit.field(trial, "", run(1, "417"));
        assertThat(back.statusCode()).isEqualTo(302);
        String to = back.headers().firstValue("Location").orElseThrow().replaceAll(".*/field", "/field");
        assertThat(visitor().get(to).body())
                .contains("Kept.", "Take back: Run 1", "<option value=\"" + places.get(1) + "\" selected");
        assertThat(steady()).hasSize(1);
    }

    @Test
    void winners_ofOpposedPulls_areKeptAsSuch() {
        Map<String, String> form = TrialVisit.beginning();
        form.put("judge", "winner");
        String pulls = visit.begin(form);
        List<String> of = List.copyOf(visit.plan(pulls).keySet());
        assertThat(of).hasSize(2);
        visit.field(pulls, "/entry", Map.of("sentAs", "pull-0001", "place", of.get(0), "winner", "b"));
        assertThat(visit.field(pulls, "/entry", Map.of("sentAs", "pull-0002", "place", of.get(1), "winner", "even"))
                        .body())
                .contains("even");
        assertThat(visit.field(pulls, "/entry", Map.of("sentAs", "pull-0003", "place", of.get(1), "winner", "c"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(visit.get("/" + pulls + "/file").body()).contains("winner: b", "winner: even");
        assertThat(visit.get("/" + pulls).body()).contains("airless won");
    }

    @Test
    void worker_isServedWhereItMayKeepThePage() {
        HttpResponse<String> worker = visitor().get("/field/worker.js");
        assertThat(worker.statusCode()).isEqualTo(200);
        assertThat(worker.headers().firstValue("Content-Type").orElse("")).contains("javascript");
    }
}
