package footing.web.serve;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody who visits the page over HTTP, with cookies and the token of forms. */
public final class Visitor {
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final String root;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    public Visitor(Server server) {
        this(server.url());
    }

    public Visitor(String url) {
        root = url.replaceAll("/$", "");
    }

    public HttpResponse<String> get(String path) {
        return send(request(path).GET());
    }

    /** A file that is no text. */
    public HttpResponse<byte[]> bytes(String path) {
        return send(request(path).GET(), HttpResponse.BodyHandlers.ofByteArray());
    }

    /** Sends a form with the token of the page it stands on. */
    public HttpResponse<String> post(String path, Map<String, String> form) {
        String token = token();
        return send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(encoded(form) + "&_csrf=" + encoded(token))));
    }

    /** The token that stands in every form. */
    public String token() {
        Matcher token = TOKEN.matcher(get("/cases/import").body());
        if (!token.find()) {
            token = TOKEN.matcher(get("/login").body());
            if (!token.find()) {
                throw new IllegalStateException("no form has a token");
            }
        }
        return token.group(1);
    }

    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(root + path));
    }

    public HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, HttpResponse.BodyHandlers.ofString());
    }

    private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> body) {
        try {
            return client.send(request.build(), body);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    public static String encoded(Map<String, String> form) {
        return form.entrySet().stream()
                .map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
