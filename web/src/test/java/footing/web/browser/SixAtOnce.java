package footing.web.browser;

import footing.web.serve.Server;
import footing.web.serve.ServerOptions;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long six people wait who change numbers of cases of their own at once, each every two seconds: from the change to
 * the first answer. Prints percentiles, judges nothing: -Dtest=SixAtOnce -Dsix=yes.
 */
@EnabledIfSystemProperty(named = "six", matches = ".+")
class SixAtOnce {
    private static final int PEOPLE = 6;
    private static final int CHANGES = 12;
    private static final long PAUSE = 2000;
    private static final Pattern TOKEN = Pattern.compile("X-XSRF-TOKEN&quot;:&quot;([^&]+)&quot;");

    private String at = "";

    @Test
    void changes_sixAtOnce_areTimed(@TempDir Path folder) throws Exception {
        Server server = Server.start(new ServerOptions(0, ServerOptions.THIS_MACHINE, folder));
        at = server.url();
        ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
        try {
            List<Future<List<Double>>> all = new ArrayList<>();
            for (int i = 0; i < PEOPLE; i++) {
                int person = i;
                all.add(people.submit(() -> change(person)));
            }
            List<Double> waits = new ArrayList<>();
            for (Future<List<Double>> each : all) {
                waits.addAll(each.get());
            }
            double[] sorted =
                    waits.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            System.out.printf(
                    "%d changes by %d people: median %.0f ms, 95th percentile %.0f ms, longest %.0f ms%n",
                    sorted.length,
                    PEOPLE,
                    sorted[sorted.length / 2],
                    sorted[(int) Math.ceil(0.95 * sorted.length) - 1],
                    sorted[sorted.length - 1]);
            System.out.println(Arrays.toString(sorted));
        } finally {
            people.shutdownNow();
            server.close();
        }
    }

    private List<Double> change(int person) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newBuilder()
                .cookieHandler(new java.net.CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        String page = get(client, "cases").body();
        String token = token(page);
        Matcher example =
                Pattern.compile("/cases/([a-z0-9]{12})\"[^>]*>Quillbrook").matcher(page);
        if (!example.find()) {
            throw new IllegalStateException("no example");
        }
        HttpResponse<String> copy = post(client, "cases/" + example.group(1) + "/copy", "", token);
        String id = copy.uri().getPath().replace("/cases/", "");
        List<Double> waits = new ArrayList<>();
        for (int i = 0; i < CHANGES; i++) {
            Thread.sleep(PAUSE + 37L * person);
            String form = "path=" + encoded("crews.estates.billing") + "&value=" + (150 + 10 * i + person);
            long from = System.nanoTime();
            HttpResponse<String> answer = post(client, "cases/" + id + "/inputs", form, token);
            waits.add((System.nanoTime() - from) / 1e6);
            if (answer.statusCode() != 200 || !answer.body().contains("id=\"sentence\"")) {
                throw new IllegalStateException("no answer: " + answer.statusCode());
            }
        }
        return waits;
    }

    private static String token(String page) {
        Matcher token = TOKEN.matcher(page);
        if (!token.find()) {
            throw new IllegalStateException("no token");
        }
        return token.group(1);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private HttpResponse<String> get(HttpClient client, String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(at + path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(HttpClient client, String path, String form, String token)
            throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(at + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("X-XSRF-TOKEN", token)
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
