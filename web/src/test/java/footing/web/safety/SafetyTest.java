package footing.web.safety;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafetyTest extends Served {
    private final Visitor visitor = visitor();

    @ParameterizedTest
    @ValueSource(strings = {"/", "/cases/new", "/footing.css", "/nope", "/api/openapi.json", "/webjars/htmx.org/nope"})
    void headers_ofEveryResponse_letNothingInFromElsewhere(String path) {
        HttpResponse<String> response = visitor.get(path);
        assertThat(response.headers().firstValue("Content-Security-Policy").orElseThrow())
                .startsWith("default-src 'none'")
                .contains("frame-ancestors 'none'", "form-action 'self'")
                .doesNotContain("unsafe")
                .doesNotContain("http");
        assertThat(response.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(response.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(response.headers().firstValue("Cross-Origin-Opener-Policy")).hasValue("same-origin");
        assertThat(response.headers().firstValue("X-Powered-By")).isEmpty();
        assertThat(response.headers().firstValue("Server")).isEmpty();
    }

    @Test
    void pages_anyOfThem_nameNoOtherHostAndHoldNoCode() {
        for (String path : new String[] {"/", "/cases/new", "/cases/import", "/cases/archived", "/nope"}) {
            String page = visitor.get(path).body();
            assertThat(page).doesNotContain("http://", "https://", "<style", "style=", "javascript:");
            assertThat(page).doesNotContainPattern("\\son[a-z]+=").doesNotContainPattern("<script(?![^>]*src=)");
        }
    }

    @Test
    void post_withoutAToken_isRefusedAndChangesNothing() {
        HttpResponse<String> response = visitor.send(visitor.request("/cases/new")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("")));
        assertThat(response.statusCode()).isEqualTo(403);
        assertThat(response.body()).contains("Nothing was changed");
        assertThat(visitor.get("/").body()).doesNotContain("One crew");
    }

    @Test
    void post_withTheTokenInAHeader_isTaken() {
        String token = visitor.token();
        HttpResponse<String> response = visitor.send(visitor.request("/cases/new/look")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("X-XSRF-TOKEN", token)
                .POST(HttpRequest.BodyPublishers.ofString("")));
        assertThat(response.statusCode()).isEqualTo(200);
    }

    @Test
    void post_fromAnotherOrigin_isRefused() {
        assertThat(visitor.send(visitor.request("/api/answers")
                                .header("Content-Type", "application/json")
                                .header("Origin", "http://elsewhere.example")
                                .POST(HttpRequest.BodyPublishers.ofString("{}")))
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void token_inItsCookie_isForThisSiteAlone() {
        String cookie =
                visitor.get("/cases/import").headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("HttpOnly", "SameSite=Strict");
    }

    @Test
    void host_ofAnotherName_isMisdirected() throws IOException {
        assertThat(raw("Host: rebound.example")).startsWith("HTTP/1.1 421");
        assertThat(raw("Host: 127.0.0.1.example:80")).startsWith("HTTP/1.1 421");
        assertThat(raw("X-Nothing: x")).startsWith("HTTP/1.1 400");
        assertThat(raw("Host: localhost:1234")).startsWith("HTTP/1.1 200");
        assertThat(raw("Host: [::1]")).startsWith("HTTP/1.1 200");
    }

    private static String raw(String header) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server().port())) {
            String request = "GET / HTTP/1.1\r\n" + header + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void hosts_byName_areThoseOfThisMachine() {
        AllowedHosts hosts = new AllowedHosts(Set.of("shop"));
        for (String good : new String[] {"shop", "SHOP:8300", "localhost", "127.0.0.1:1", "[fe80::1]:80", "10.0.0.7"}) {
            assertThat(hosts.contains(good)).as(good).isTrue();
        }
        for (String bad : new String[] {"shop.example", "", "x", "localhost.example:80", "127.0.0.1.x", "[x]", ":80"}) {
            assertThat(hosts.contains(bad)).as(bad).isFalse();
        }
        assertThat(hosts.contains(null)).isFalse();
    }

    @Test
    void errors_ofEveryKind_showNothingOfTheInside() {
        for (String path :
                new String[] {"/nope", "/cases/%2e%2e/x", "/cases/;x=1", "/error", "/cases/x/history?version=%"}) {
            HttpResponse<String> response = visitor.send(HttpRequest.newBuilder(java.net.URI.create(
                            server().url().replaceAll("/$", "") + path.replace("version=%", "version=%25")))
                    .GET());
            assertThat(response.statusCode()).as(path).isBetween(400, 499);
            assertThat(response.body()).doesNotContain("Exception", "\tat ", "springframework", "Tomcat");
        }
        assertThat(visitor.get("/nope").body()).contains("<nav", "There is no such page");
    }
}
