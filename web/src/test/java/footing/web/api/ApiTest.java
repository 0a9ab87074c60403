package footing.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ApiTest extends Served {
    private static final Path CASES = Path.of(System.getProperty("basedir", "web"), "..", "cases");

    private final Visitor visitor = visitor();

    private HttpResponse<String> ask(String query, String type, String body) {
        return visitor.send(visitor.request("/api/answers" + query)
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private static JsonNode json(HttpResponse<String> response) {
        return JsonMapper.shared().readTree(response.body());
    }

    @Test
    void answers_yaml_isTheCommandLinesDocument() throws IOException {
        String text = Files.readString(CASES.resolve("quillbrook.yaml"));
        HttpResponse<String> response = ask("?futures=200&seed=7&quick=true", "application/yaml", text);
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(json(response).get("format").asString()).isEqualTo("footing-answer/1");
        assertThat(json(response).get("futures").asInt()).isEqualTo(200);
        assertThat(json(response).get("seed").asInt()).isEqualTo(7);
        assertThat(json(response).get("machines")).hasSize(9);
        assertThat(ask("?futures=200&seed=7&quick=true", "application/yaml", text)
                        .body())
                .isEqualTo(response.body());
    }

    @Test
    void answers_brokenJson_listsAllProblems() {
        HttpResponse<String> response =
                ask("", "application/json", "{\"format\": \"footing-case/1\",\n\"asOf\": \"soon\"}");
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/problem+json");
        JsonNode asOf = json(response)
                .get("problems")
                .valueStream()
                .filter(p -> p.get("path").asString().equals("asOf"))
                .findFirst()
                .orElseThrow();
        assertThat(asOf.get("line").asInt()).isEqualTo(2);
        assertThat(asOf.get("read").asString()).isEqualTo("soon");
        assertThat(asOf.get("message").asString()).isNotBlank();
        assertThat(asOf.get("advice").asString()).contains("2027-03-01");
        assertThat(json(response)
                        .get("problems")
                        .valueStream()
                        .map(p -> p.get("path").asString()))
                .contains("title", "crews", "machines", "packages");
    }

    @Test
    void answers_badQuery_namesEveryParameter() {
        HttpResponse<String> response = ask("?futures=1&seed=x&quick=maybe", "application/yaml", "a: 1");
        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(json(response)
                        .get("problems")
                        .valueStream()
                        .map(p -> p.get("path").asString()))
                .containsExactly("futures", "seed", "quick");
    }

    @Test
    void answers_tooLargeOrNoText_areTurnedAway() {
        assertThat(ask("", "application/yaml", "#".repeat(2_000_001)).statusCode())
                .isEqualTo(413);
        assertThat(ask("", "text/plain", "a: 1").statusCode()).isEqualTo(415);
        assertThat(ask("", "application/x-www-form-urlencoded", "a=1").statusCode())
                .isEqualTo(415);
        HttpResponse<String> noText = visitor.send(visitor.request("/api/answers")
                .header("Content-Type", "application/yaml")
                .POST(HttpRequest.BodyPublishers.ofByteArray(new byte[] {(byte) 0xff, (byte) 0xfe})));
        assertThat(noText.statusCode()).isEqualTo(422);
        assertThat(noText.body()).contains("UTF-8");
    }

    @Test
    void answers_yamlBombs_areRefused() {
        for (String bomb : List.of(
                "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n", "[".repeat(50_000), "!!java.net.URL [x]", "a: 1e400")) {
            assertThat(ask("", "application/yaml", bomb).statusCode()).isEqualTo(422);
        }
    }

    @Test
    void unknownRoute_isAProblemDocument() {
        HttpResponse<String> response = visitor.get("/api/nothing");
        assertThat(response.statusCode()).isEqualTo(404);
        assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/problem+json");
    }

    @Test
    void openApi_namesEveryRouteAndEachReferenceLeadsSomewhere() {
        JsonNode document = json(visitor.get("/api/openapi.json"));
        assertThat(document.get("openapi").asString()).startsWith("3.1");
        assertThat(document.get("paths").propertyNames()).isEqualTo(Routes.of(server(), "/api/"));
        assertThat(document.findValuesAsString("$ref"))
                .isNotEmpty()
                .allSatisfy(ref -> assertThat(document.at(ref.substring(1)).isMissingNode())
                        .isFalse());
    }

    @Test
    void queue_moreThanCanWait_isTurnedAwayAndTheRestComesInTurn() throws Exception {
        Queue queue = new Queue(1, 60_000);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch end = new CountDownLatch(1);
        var first = CompletableFuture.supplyAsync(() -> queue.inTurn(() -> {
            begun.countDown();
            await(end);
            return 1;
        }));
        await(begun);
        var second = CompletableFuture.supplyAsync(() -> queue.inTurn(() -> 2));
        while (queue.waiting() == 0) {
            Thread.onSpinWait();
        }
        assertThat(queue.inTurn(() -> 3)).isEmpty();
        assertThat(second).isNotDone();
        end.countDown();
        assertThat(first.get(60, TimeUnit.SECONDS)).isEqualTo(Optional.of(1));
        assertThat(second.get(60, TimeUnit.SECONDS)).isEqualTo(Optional.of(2));
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(60, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void busy_saysWhenToAskAgain() {
        assertThat(ApiFault.busy().getStatusCode().value()).isEqualTo(503);
        assertThat(ApiFault.busy().getHeaders().getFirst("Retry-After")).isEqualTo("5");
    }
}
