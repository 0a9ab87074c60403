package footing.web.safety;

import static org.assertj.core.api.Assertions.assertThat;

import footing.web.api.Routes;
import footing.web.serve.Served;
import footing.web.serve.Visitor;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Requests that begin as good ones and are then spoilt, over bare sockets so that no client sets them right. */
class MutatedRequestsTest extends Served {
    private static final int REQUESTS = 5_000;
    private static final long SEED = 20_270_301L;

    /** Only a server that hangs is a fault, not one that is slow since the machine is busy. */
    private static final int HANGS_AFTER_MILLIS = 600_000;

    private static final Pattern INSIDE =
            Pattern.compile("\\tat |Exception|springframework|thymeleaf|sqlite|catalina", Pattern.CASE_INSENSITIVE);

    private static final String[] SPOILERS = {
        "%", "%00", "%zz", "%c0%ae", "..", "//", ";a=b", "\"", "'", "<x>", "\u0000", "\r\n", "{}", "${1+1}", "*{x}",
        "-1", "9999999999999999999999", "NaN", "1e400", "null", "true", "[", "&", "=", "?", "#", "\\", " ", "ü", "😀",
        "' or 1=1 --", "__${T(x)}__", "::x", "A".repeat(9_000)
    };

    private static final String FORM = "version=1&text=a%3A+1&name=x&to=history&then=1&alike=2&wage=20";

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Visitor visitor = visitor();
    private final String cookie = visitor.get("/cases/import")
            .headers()
            .firstValue("Set-Cookie")
            .orElseThrow()
            .replaceAll("^footing-token=([^;]+);.*", "$1");
    private final String token = visitor.token();

    @Test
    void requests_spoiltInEveryWay_neverBreakTheServer() throws IOException {
        List<String> paths = new ArrayList<>(Routes.of(server(), "/"));
        paths.addAll(List.of("/footing.css", "/webjars/htmx.org/2.0.10/dist/htmx.min.js", "/logout", "/nope"));
        String id = visitor.get("/cases").body().replaceAll("(?s).*?href=\"/cases/([a-z0-9]{12})\".*", "$1");
        List<String> broken = new ArrayList<>();
        Map<String, Integer> codes = new TreeMap<>();
        for (int i = 0; i < REQUESTS; i++) {
            String request = spoilt(good(paths.get(i % paths.size()).replace("{id}", id)));
            String response = send(request);
            codes.merge(response.substring(0, Math.min(12, response.length())), 1, Integer::sum);
            boolean failed = response.matches("(?s)HTTP/1.1 5\\d\\d.*") && !response.startsWith("HTTP/1.1 503");
            if (failed
                    || INSIDE.matcher(response.replaceAll("(?s)^.*?\r\n\r\n", ""))
                            .find()) {
                broken.add(request.substring(0, Math.min(400, request.length())) + "\n-->\n"
                        + response.substring(0, Math.min(600, response.length())));
            }
        }
        assertThat(broken).as("seed " + SEED).isEmpty();
        assertThat(codes)
                .as("so many kinds of answers that the requests came far")
                .containsKeys(
                        "HTTP/1.1 200",
                        "HTTP/1.1 302",
                        "HTTP/1.1 400",
                        "HTTP/1.1 403",
                        "HTTP/1.1 404",
                        "HTTP/1.1 405",
                        "HTTP/1.1 409",
                        "HTTP/1.1 415",
                        "HTTP/1.1 422");
        assertThat(visitor.get("/").statusCode()).isEqualTo(200);
    }

    /** A request as a browser or program would send it, often without effect because its version is old. */
    private List<String> good(String path) {
        String sent = random.nextInt(8) == 0 ? "none" : "@token@";
        boolean isForm = random.nextInt(4) != 0;
        String body = isForm ? FORM : pick("{\"format\": 1}", "a: 1", FORM);
        String type = isForm
                ? "application/x-www-form-urlencoded"
                : pick("application/yaml", "application/json", "multipart/form-data; boundary=x", "text/plain");
        if (type.startsWith("multipart")) {
            body = "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a\"\r\n\r\na: 1\r\n--x--\r\n";
        }
        boolean isGet = random.nextInt(3) == 0;
        List<String> parts = new ArrayList<>();
        parts.add(isGet ? "GET" : pick("POST", "POST", "POST", "PUT", "DELETE", "HEAD", "OPTIONS"));
        parts.add(path + pick("", "?version=1", "?futures=2&quick=true", "?archived=x", "?_csrf=x"));
        parts.add("X-XSRF-TOKEN: " + sent);
        parts.add("Content-Type: " + type);
        parts.add("Accept: " + pick("text/html", "*/*", "application/json", "image/png"));
        parts.add("X-More: x");
        parts.add(isGet ? "" : body);
        return parts;
    }

    private String spoilt(List<String> parts) {
        int times = random.nextInt(3);
        for (int i = 0; i < times; i++) {
            int which = random.nextInt(parts.size());
            parts.set(which, spoil(parts.get(which)));
        }
        String body = parts.get(parts.size() - 1);
        int length = body.getBytes(StandardCharsets.UTF_8).length;
        int said = random.nextInt(40) == 0 ? Math.max(0, length - random.nextInt(5)) : length;
        StringBuilder request =
                new StringBuilder(parts.get(0) + " " + parts.get(1) + " HTTP/1.1\r\nHost: localhost\r\n");
        request.append("Cookie: footing-token=@cookie@\r\nConnection: close\r\nContent-Length: ")
                .append(said)
                .append("\r\n");
        parts.subList(2, parts.size() - 1)
                .forEach(header -> request.append(header).append("\r\n"));
        return request.append("\r\n").append(body).toString();
    }

    private String spoil(String text) {
        int at = random.nextInt(text.length() + 1);
        int end = Math.min(text.length(), at + random.nextInt(4));
        return switch (random.nextInt(4)) {
            case 0 -> text.substring(0, at) + text.substring(end);
            case 1 -> text.substring(0, at) + text.substring(at, end).repeat(3) + text.substring(end);
            default -> text.substring(0, at) + SPOILERS[random.nextInt(SPOILERS.length)] + text.substring(end);
        };
    }

    private String pick(String... any) {
        return any[random.nextInt(any.length)];
    }

    /** A right token and its cookie are put in last, so that most requests get past the first gate. */
    private String send(String request) throws IOException {
        String whole = request.replace("@token@", token).replace("@cookie@", cookie);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server().port())) {
            socket.setSoTimeout(HANGS_AFTER_MILLIS);
            socket.getOutputStream().write(whole.getBytes(StandardCharsets.UTF_8));
            socket.shutdownOutput();
            ByteArrayOutputStream response = new ByteArrayOutputStream();
            socket.getInputStream().transferTo(response);
            return response.toString(StandardCharsets.UTF_8);
        } catch (java.net.SocketException e) {
            return "reset";
        }
    }
}
