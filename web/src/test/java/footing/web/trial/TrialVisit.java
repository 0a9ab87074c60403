package footing.web.trial;

import footing.web.serve.Visitor;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody who tries wheels in a copy of an example. */
final class TrialVisit {
    private static final Pattern CASE = Pattern.compile("href=\"/cases/([a-z0-9]{12})\">Quillbrook");
    private static final Pattern PLACE = Pattern.compile("<option value=\"(\\d+-\\d+-\\d)\"[^>]*>([^<]+)</option>");

    final Visitor visitor;
    final String id;

    TrialVisit(Visitor visitor) {
        this.visitor = visitor;
        Matcher first = CASE.matcher(visitor.get("/cases").body());
        if (!first.find()) {
            throw new IllegalStateException("no example");
        }
        id = visitor.post("/cases/" + first.group(1) + "/copy", Map.of())
                .headers()
                .firstValue("Location")
                .orElseThrow()
                .replaceAll(".*/", "");
    }

    HttpResponse<String> get(String path) {
        return visitor.get("/cases/" + id + "/trials" + path);
    }

    HttpResponse<String> post(String path, Map<String, String> form) {
        return visitor.post("/cases/" + id + "/trials" + path, form);
    }

    /** A form that begins a trial of steady pulls with two pairs on one surface. */
    static Map<String, String> beginning() {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("sentAs", UUID.randomUUID().toString());
        form.put("judge", "steady");
        form.put("a.name", "air");
        form.put("a.pressure", "12");
        form.put("a.operator", "Ana");
        form.put("b.name", "airless");
        form.put("b.operator", "Ana");
        form.put("surfaces", "dry fescue");
        form.put("pairs", "2");
        form.put("margin", "8 %");
        return form;
    }

    /** Begins a trial; gives its number. */
    String begin(Map<String, String> form) {
        HttpResponse<String> begun = post("", form);
        if (begun.statusCode() != 302) {
            throw new IllegalStateException(begun.statusCode() + begun.body());
        }
        return begun.headers().firstValue("Location").orElseThrow().replaceAll(".*/", "");
    }

    /** Places of a trial's plan, in order, with their words. */
    Map<String, String> plan(String trial) {
        Matcher m = PLACE.matcher(visitor.get("/field/" + id + "/" + trial).body());
        Map<String, String> plan = new LinkedHashMap<>();
        while (m.find()) {
            plan.put(m.group(1), m.group(2));
        }
        return plan;
    }

    HttpResponse<String> field(String trial, String what, Map<String, String> form) {
        return visitor.post("/field/" + id + "/" + trial + what, form);
    }

    /** Writes all planned runs down, with values by what runs. */
    void writeAll(String trial, Map<String, Double> values) {
        List<String> places = new ArrayList<>();
        plan(trial).forEach((place, words) -> {
            String thing = words.replaceAll(".*?: ([^,]+),.*", "$1");
            double value = values.getOrDefault(thing, 0.0) + 7 * Math.sin(3.0 * places.size());
            places.add(place);
            field(
                    trial,
                    "/entry",
                    Map.of(
                            "sentAs",
                            "mark-" + trial + "-" + place,
                            "place",
                            place,
                            "value",
                            String.format(java.util.Locale.ROOT, "%.1f", value),
                            "moisture",
                            "18",
                            "made",
                            String.format("2027-02-06T10:%02d:00Z", places.size())));
        });
    }

    HttpResponse<String> handOver(String name, String content) {
        String head = "--xyz\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + visitor.token()
                + "\r\n--xyz\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n";
        return visitor.send(visitor.request("/cases/" + id + "/trials/file")
                .header("Content-Type", "multipart/form-data; boundary=xyz")
                .POST(HttpRequest.BodyPublishers.ofString(head + content + "\r\n--xyz--\r\n", StandardCharsets.UTF_8)));
    }
}
