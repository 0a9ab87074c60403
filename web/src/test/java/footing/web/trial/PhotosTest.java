package footing.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photos of runs, measured and mended over HTTP. */
class PhotosTest extends Served {
    private static final Path PHOTOS =
            Path.of("..", "cases", "trial-day", "photos").toAbsolutePath().normalize();

    private final TrialVisit visit = new TrialVisit(visitor());

    private String begin(String judge, String card) {
        Map<String, String> form = TrialVisit.beginning();
        form.put("judge", judge);
        form.put("card", card);
        form.put("margin", "");
        return visit.begin(form);
    }

    private HttpResponse<String> take(String trial, String mark, String part, byte[] photo) {
        String place = visit.plan(trial).keySet().iterator().next();
        return visitor.send(visitor.request("/field/" + visit.id + "/" + trial + "/photo?sentAs=" + mark + "&place="
                        + place + "&part=" + part + "&made=2027-02-06T10:00:00Z")
                .header("Content-Type", "application/octet-stream")
                .header("X-XSRF-TOKEN", visitor.token())
                .POST(HttpRequest.BodyPublishers.ofByteArray(photo)));
    }

    private final footing.web.serve.Visitor visitor = visit.visitor;

    private static byte[] photo(String name) throws IOException {
        return Files.readAllBytes(PHOTOS.resolve(name));
    }

    /** The number of the trial's only photo. */
    private String number(String trial) {
        return "/" + trial
                + visit.get("/" + trial).body().replaceAll("(?s).*?/trials/" + trial + "(/photos/\\d+)/.*", "$1");
    }

    @Test
    void print_rolledAlongTheLongSide_hasLengthAndWidthExchanged() throws IOException {
        byte[] photo = photo("print.jpg");
        String along = take(begin("length", "letter long"), "photo-mark-1", "print", photo)
                .body();
        String across =
                take(begin("width", "letter"), "photo-mark-2", "print", photo).body();
        assertThat(value(along)).isNotEmpty().isEqualTo(value(across));
        assertThat(value(take(begin("length", "letter"), "photo-mark-3", "print", photo)
                        .body()))
                .isNotEmpty()
                .isNotEqualTo(value(along));
    }

    private static String value(String body) {
        return body.replaceAll("(?s).*\"value\":\"([^\"]*)\".*", "$1");
    }

    @Test
    void print_ofTheTrialDay_isMeasuredOnceAndWrittenDownOnceLookedAt() throws IOException {
        String trial = begin("area", "11x8.5in");
        byte[] photo = photo("print.jpg");
        List<String> bodies = IntStream.range(0, 3)
                .parallel()
                .mapToObj(i -> take(trial, "photo-mark-1", "print", photo).body())
                .distinct()
                .toList();
        assertThat(bodies).hasSize(1);
        assertThat(bodies.get(0)).contains("Print area", "/overlay", "\"doubts\":[]");
        String page = visit.get("/" + trial).body();
        assertThat(page).contains("Print area", "drawn pictures only", "Looked at: write");
        String at = number(trial);
        assertThat(visit.get(at + "/overlay").headers().firstValue("Content-Type"))
                .hasValue("image/png");
        assertThat(visit.get(at + "/picture").headers().firstValue("Content-Type"))
                .hasValue("image/jpeg");
        visit.post(at + "/use", Map.of());
        visit.post(at + "/use", Map.of());
        String file = visit.get("/" + trial + "/file").body();
        assertThat(file.lines().filter(l -> l.contains("area: ") && l.contains("in2")))
                .hasSize(1);
    }

    @Test
    void corners_byHand_areTakenAndGiveAnotherMeasure() throws IOException {
        String trial = begin("area", "11x8.5in");
        take(trial, "photo-mark-1", "print", photo("print.jpg"));
        String at = number(trial);
        visit.post(at + "/use", Map.of());
        String before = visit.get(at).body().replaceAll("(?s).*?(Print area [^:]+):.*", "$1");
        String border = "100,100 200,90 300,100 400,110 420,200 430,300 400,400 300,410 200,400 110,390 90,300 95,200";
        HttpResponse<String> mended = visit.post(at, Map.of("corners", "", "border", border));
        assertThat(mended.statusCode()).isEqualTo(302);
        String after = visit.get(at).body().replaceAll("(?s).*?(Print area [^:]+):.*", "$1");
        assertThat(after).startsWith("Print area").isNotEqualTo(before);
        visit.post(at + "/use", Map.of());
        assertThat(visit.get("/" + trial + "/file")
                        .body()
                        .lines()
                        .filter(l -> l.contains("area: ") && l.contains("in2")))
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'10,10 20,20', '', Four corners",
        "'1,1 2,2 3,3 4,4', '', Four corners",
        "here, '', Four corners",
        "'', '1,1 2,2', at least 12 points",
        "'', 'round it', at least 12 points",
    })
    void mend_thatCantBe_isRefusedWithTheReasonAndNothingLost(String corners, String border, String why)
            throws IOException {
        String trial = begin("area", "11x8.5in");
        take(trial, "photo-mark-1", "print", photo("print.jpg"));
        HttpResponse<String> refused = visit.post(number(trial), Map.of("corners", corners, "border", border));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains(why, corners, border);
    }

    @Test
    void turf_beforeAndAfterInAnyOrder_isMeasuredOnceBothAreThere() throws IOException {
        String trial = begin("torn", "24x24in");
        assertThat(take(trial, "photo-after", "after", photo("turn-after.jpg")).body())
                .contains("Bare soil", "\"value\":\"\"");
        take(trial, "photo-before", "before", photo("turn-before.jpg"));
        assertThat(visit.get("/" + trial).body()).contains("Torn: ", "before the turn", "after the turn");
    }

    @Test
    void photo_thatIsNone_isKeptAndSaysWhy() {
        String trial = begin("area", "letter");
        HttpResponse<String> taken = take(trial, "photo-mark-1", "print", new byte[] {1, 2, 3});
        assertThat(taken.statusCode()).isEqualTo(200);
        assertThat(taken.body()).contains("no picture of the kinds JPEG and PNG");
        String at = number(trial);
        assertThat(visit.get(at + "/overlay").statusCode()).isEqualTo(404);
        assertThat(visit.get(at + "/picture").headers().firstValue("Content-Type"))
                .hasValue("application/octet-stream");
        assertThat(visit.post(at + "/use", Map.of()).statusCode()).isEqualTo(409);
    }

    @Test
    void photo_ofWhatCantBe_isRefused() throws IOException {
        String trial = begin("area", "letter");
        assertThat(take(trial, "x", "print", photo("print.jpg")).statusCode()).isEqualTo(400);
        assertThat(take(trial, "photo-mark-1", "before", photo("print.jpg")).statusCode())
                .isEqualTo(404);
        assertThat(take(trial, "photo-mark-1", "print", new byte[0]).statusCode())
                .isEqualTo(400);
        String pull = visit.begin(TrialVisit.beginning());
        assertThat(take(pull, "photo-mark-1", "print", photo("print.jpg")).statusCode())
                .isEqualTo(404);
        Map<String, String> form = TrialVisit.beginning();
        form.put("judge", "area");
        form.put("margin", "");
        form.put("card", "huge");
        assertThat(visit.post("", form).statusCode()).isEqualTo(422);
    }
}
