package gudgeon.bench.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A device on the network with a browser that keeps cookies and goes where it is sent only when told. */
final class Phone {
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client;
    private final URI bench;

    Phone(URI bench) {
        this(bench, HttpClient.newBuilder());
    }

    Phone(URI bench, HttpClient.Builder client) {
        this.bench = bench;
        this.client = client.cookieHandler(cookies).build();
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(bench.resolve(path)));
    }

    HttpResponse<String> post(String path, String... fields) throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i + 1 < fields.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(URLEncoder.encode(fields[i], StandardCharsets.UTF_8))
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return send(HttpRequest.newBuilder(bench.resolve(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
    }

    HttpResponse<String> enter(String code, String name) throws IOException, InterruptedException {
        return post("/enter", "code", code, "name", name);
    }

    HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** The token that it was given; empty if none. */
    String token() {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals("gudgeon-in"))
                .map(java.net.HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }

    static Optional<String> cookie(HttpResponse<String> answer) {
        List<String> all = answer.headers().allValues("Set-Cookie");
        return all.stream().filter(one -> one.startsWith("gudgeon-in=")).findFirst();
    }
}
