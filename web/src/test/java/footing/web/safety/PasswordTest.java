package footing.web.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import footing.web.serve.NotServed;
import footing.web.serve.Server;
import footing.web.serve.ServerOptions;
import footing.web.serve.Visitor;
import jakarta.servlet.ServletException;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Base64;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.web.MockFilterChain;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

class PasswordTest {
    private static final String PASSWORD = "gräsgrün und breit";

    @Test
    void start_onAnotherAddress_needsAPassword(@TempDir Path folder) throws Exception {
        ServerOptions everywhere = new ServerOptions(0, "0.0.0.0", folder);
        assertThatThrownBy(() -> Server.start(everywhere))
                .isInstanceOf(NotServed.class)
                .hasMessageContaining("--set-password");
        new PasswordFile(folder).set(PASSWORD.toCharArray());
        try (Server server = Server.start(everywhere)) {
            assertThat(new Visitor("http://127.0.0.1:" + server.port()).get("/").statusCode())
                    .isEqualTo(302);
        }
    }

    @Test
    void start_portTaken_saysWhatElseWouldDo(@TempDir Path one, @TempDir Path two) throws NotServed {
        try (Server server = Server.start(new ServerOptions(0, "127.0.0.1", one))) {
            assertThatThrownBy(() -> Server.start(new ServerOptions(server.port(), "127.0.0.1", two)))
                    .isInstanceOf(NotServed.class)
                    .hasMessageContaining("port " + server.port() + " is taken")
                    .hasMessageContaining("--port 0");
        }
    }

    @Test
    void pages_withAPassword_areShownOnlyToWhoKnowsIt(@TempDir Path folder) throws Exception {
        new PasswordFile(folder).set(PASSWORD.toCharArray());
        try (Server server = Server.start(new ServerOptions(0, "127.0.0.1", folder))) {
            Visitor visitor = new Visitor(server);
            for (String path : new String[] {"/", "/cases/new", "/cases/import", "/nope"}) {
                assertThat(visitor.get(path).statusCode()).as(path).isEqualTo(302);
                assertThat(visitor.get(path).headers().firstValue("Location").orElseThrow())
                        .endsWith("/login");
            }
            HttpResponse<String> wrong =
                    visitor.post("/login", Map.of("username", "footing", "password", "not the password"));
            assertThat(wrong.headers().firstValue("Location").orElseThrow()).endsWith("/login?wrong");
            HttpResponse<String> right = visitor.post("/login", Map.of("username", "footing", "password", PASSWORD));
            assertThat(right.headers().firstValue("Location").orElseThrow()).doesNotContain("login");
            assertThat(right.headers().firstValue("Set-Cookie").orElseThrow()).contains("HttpOnly", "SameSite=Strict");
            assertThat(visitor.get("/cases").body()).contains("Quillbrook", "Leave");
            visitor.post("/logout", Map.of());
            assertThat(visitor.get("/cases").statusCode()).isEqualTo(302);
        }
    }

    @Test
    void api_withAPassword_takesItAsBasic(@TempDir Path folder) throws Exception {
        new PasswordFile(folder).set(PASSWORD.toCharArray());
        try (Server server = Server.start(new ServerOptions(0, "127.0.0.1", folder))) {
            Visitor visitor = new Visitor(server);
            assertThat(visitor.get("/api/openapi.json").statusCode()).isEqualTo(401);
            String known = Base64.getEncoder().encodeToString(("footing:" + PASSWORD).getBytes(StandardCharsets.UTF_8));
            HttpRequest.Builder request =
                    visitor.request("/api/openapi.json").header("Authorization", "Basic " + known);
            assertThat(visitor.send(request.GET()).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void set_aPassword_keepsItsHashForTheOwnerAlone(@TempDir Path folder) throws IOException {
        Path data = folder.resolve("new");
        new PasswordFile(data).set(PASSWORD.toCharArray());
        String kept = Files.readString(data.resolve("password.bcrypt"));
        assertThat(kept).startsWith("$2").doesNotContain(PASSWORD);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data.resolve("password.bcrypt"))))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data)))
                .isEqualTo("rwx------");
    }

    @Test
    void fault_byLength_isSaid() {
        assertThat(PasswordFile.fault("eleven char".toCharArray()))
                .hasValueSatisfying(f -> assertThat(f).contains("12"));
        assertThat(PasswordFile.fault("twelve chars".toCharArray())).isEmpty();
        assertThat(PasswordFile.fault("ü".repeat(37).toCharArray())).isPresent();
        assertThat(PasswordFile.fault("u".repeat(72).toCharArray())).isEmpty();
    }

    @Test
    void throttle_afterFiveWrong_letsOneTryInTenSeconds() throws Exception {
        AtomicLong clock = new AtomicLong();
        LoginThrottle throttle = new LoginThrottle(clock::get);
        for (int i = 0; i < LoginThrottle.FREE; i++) {
            assertThat(passes(throttle)).isTrue();
            throttle.failure()
                    .onAuthenticationFailure(new MockHttpServletRequest(), new MockHttpServletResponse(), wrong());
        }
        assertThat(passes(throttle)).isFalse();
        clock.addAndGet(TimeUnit.SECONDS.toNanos(LoginThrottle.PAUSE_SECONDS));
        assertThat(passes(throttle)).isTrue();
    }

    private static org.springframework.security.core.AuthenticationException wrong() {
        return new org.springframework.security.authentication.BadCredentialsException("wrong");
    }

    private static boolean passes(LoginThrottle throttle) throws IOException, ServletException {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/login");
        request.setServletPath("/login");
        MockFilterChain chain = new MockFilterChain();
        throttle.doFilter(request, new MockHttpServletResponse(), chain);
        return chain.getRequest() != null;
    }
}
