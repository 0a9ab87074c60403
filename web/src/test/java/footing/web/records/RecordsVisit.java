package footing.web.records;

import footing.web.serve.Visitor;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody who keeps records in a copy of an example. */
final class RecordsVisit {
    private static final Pattern CASE = Pattern.compile("href=\"/cases/([a-z0-9]{12})\">Quillbrook");
    private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"(\\d+)\"");

    final Visitor visitor;
    final String id;

    RecordsVisit(Visitor visitor) {
        this.visitor = visitor;
        Matcher first = CASE.matcher(visitor.get("/cases").body());
        if (!first.find()) {
            throw new IllegalStateException("no example");
        }
        id = copyOf(first.group(1));
    }

    private RecordsVisit(Visitor visitor, String id) {
        this.visitor = visitor;
        this.id = id;
    }

    private String copyOf(String of) {
        String copied = visitor.post("/cases/" + of + "/copy", Map.of())
                .headers()
                .firstValue("Location")
                .orElseThrow();
        return copied.replaceAll(".*/", "");
    }

    /** The same at a copy of the case. */
    RecordsVisit copied() {
        return new RecordsVisit(visitor, copyOf(id));
    }

    HttpResponse<String> get(String path) {
        return visitor.get("/cases/" + id + path);
    }

    HttpResponse<String> post(String path, Map<String, String> form) {
        return visitor.post("/cases/" + id + path, form);
    }

    String page() {
        HttpResponse<String> page = get("/records");
        if (page.statusCode() != 200) {
            throw new IllegalStateException(page.statusCode() + page.body());
        }
        return page.body();
    }

    String version() {
        Matcher m = VERSION.matcher(get("/history").body());
        if (!m.find()) {
            throw new IllegalStateException("no version");
        }
        return m.group(1);
    }

    HttpResponse<String> handOver(String name, byte[] content) {
        String head = "--xyz\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + visitor.token()
                + "\r\n--xyz\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n";
        return visitor.send(visitor.request("/cases/" + id + "/records/sheets")
                .header("Content-Type", "multipart/form-data; boundary=xyz")
                .POST(HttpRequest.BodyPublishers.ofByteArrays(List.of(
                        head.getBytes(StandardCharsets.UTF_8),
                        content,
                        "\r\n--xyz--\r\n".getBytes(StandardCharsets.UTF_8)))));
    }

    HttpResponse<String> handOver(String name, String csv) {
        return handOver(name, csv.getBytes(StandardCharsets.UTF_8));
    }

    /** Keys of the rows to mend, in the order of the page. */
    List<String> rowsToMend() {
        Matcher m = Pattern.compile("id=\"cell-(\\d+-\\d+)-date\"").matcher(page());
        List<String> keys = new ArrayList<>();
        while (m.find()) {
            keys.add(m.group(1));
        }
        return keys;
    }
}
