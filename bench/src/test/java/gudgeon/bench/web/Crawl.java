package gudgeon.bench.web;

import gudgeon.bench.web.page.InAddress;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Every page that can be reached by links from where one starts; so many at most of each kind, told apart by route and what is asked. */
final class Crawl {
    private static final Pattern ATTRIBUTE = Pattern.compile("[a-zA-Z][a-zA-Z:-]*\\d?");
    private static final Pattern ADDRESS = Pattern.compile("(?:[\\w/.~?&=;,:@!$*+-]|%[0-9A-F]{2})*");
    /** Attributes whose text is shown or read out. */
    private static final List<String> READ = List.of("alt", "aria-label", "value", "title", "placeholder");

    private final HttpClient client = HttpClient.newHttpClient();
    private final URI bench;
    private final Map<String, Pattern> routes = new LinkedHashMap<>();
    private final int most;
    private final Deque<String> open = new ArrayDeque<>();
    private final Set<String> known = new HashSet<>();
    private final Map<String, Integer> ofKind = new HashMap<>();
    private final Map<String, String> examples = new LinkedHashMap<>();
    private final Set<String> visited = new TreeSet<>();
    private final Map<String, Element> forms = new LinkedHashMap<>();
    private final List<String> texts = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();

    /**
     * A crawl.
     *
     * @param routes the patterns of what can be asked for
     * @param most how many pages of a kind
     */
    Crawl(URI bench, List<String> routes, int most) {
        this.bench = bench;
        routes.forEach(route -> this.routes.put(route, Pattern.compile(route.replaceAll("\\{\\w+}", "[^/]+"))));
        this.most = most;
    }

    /** Goes to addresses, however many of their kinds there are, and on from there. */
    void from(List<String> addresses) throws IOException, InterruptedException {
        for (String address : addresses) {
            known.add(address);
            examples.putIfAbsent(kind(address), address);
        }
        open.addAll(addresses);
        while (!open.isEmpty()) {
            visit(open.remove());
        }
    }

    private void offer(String address) {
        if (!ADDRESS.matcher(address).matches()) {
            wrong.add(address + ": holds words as they were written");
        } else if (known.add(address) && ofKind.merge(kind(address), 1, Integer::sum) <= most) {
            examples.putIfAbsent(kind(address), address);
            open.add(address);
        }
    }

    /** Its route and the names in its query. */
    private String kind(String address) {
        return route(address) + address.replaceFirst("^[^?]*", "").replaceAll("=[^&]*", "");
    }

    /** The route that answers an address: one without a part that varies before one with. */
    private String route(String address) {
        String path = address.replaceFirst("\\?.*", "");
        List<String> matching = routes.entrySet().stream()
                .filter(route -> route.getValue().matcher(path).matches())
                .map(Map.Entry::getKey)
                .toList();
        return matching.stream()
                .min(Comparator.comparing(
                        route -> route.chars().filter(c -> c == '{').count()))
                .orElse("none");
    }

    private void visit(String address) throws IOException, InterruptedException {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(bench.resolve(address)));
        if (answer.statusCode() < 400) {
            visited.add(route(address));
        }
        look("GET " + address, answer).ifPresent(page -> {
            page.select("a[href^=/]").forEach(link -> offer(link.attr("href").replaceFirst("#.*", "")));
            page.select("form").forEach(form -> forms.putIfAbsent(shape(form), form));
        });
    }

    /** Where a form goes and of which type it is; where it has none, what it asks for. */
    private static String shape(Element form) {
        String type = form.select("[name=type]").attr("value");
        return form.attr("method") + " " + form.attr("action") + " "
                + (type.isEmpty() ? new TreeSet<>(form.select("[name]").eachAttr("name")) : type);
    }

    /** Sends each form that was met with a text in each field that is typed; then in all but the one that tells forms apart. */
    void sendForms(String text) throws IOException, InterruptedException {
        for (Element form : List.copyOf(forms.values())) {
            send(form, "[type=hidden], [type=radio], [type=checkbox], select", text);
            send(form, "[name=type]", text);
        }
    }

    private void send(Element form, String kept, String text) throws IOException, InterruptedException {
        List<String> fields = new ArrayList<>();
        for (Element field : form.select("[name]")) {
            fields.add(InAddress.of(field.attr("name")) + "=" + InAddress.of(field.is(kept) ? field.val() : text));
        }
        String sent = String.join("&", fields);
        HttpRequest.Builder request = form.attr("method").equals("post")
                ? HttpRequest.newBuilder(bench.resolve(form.attr("action")))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(sent))
                : HttpRequest.newBuilder(bench.resolve(form.attr("action") + "?" + sent));
        look("form " + shape(form), send(request));
    }

    /** Asks for an address of each kind that was met with a text in all that is asked; then in each part of the way that varies. */
    void askStrangely(String text) throws IOException, InterruptedException {
        String strange = InAddress.of(text);
        for (String address :
                examples.values().stream().filter(one -> one.contains("=")).toList()) {
            String asked = address.replaceAll("=[^&]*", "=" + strange);
            look("GET " + asked, send(HttpRequest.newBuilder(bench.resolve(asked))));
        }
        for (String route :
                routes.keySet().stream().filter(one -> one.contains("{")).toList()) {
            String way = route.replaceAll("\\{\\w+}", strange);
            look("GET " + way, send(HttpRequest.newBuilder(bench.resolve(way))));
        }
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Notes what is wrong with an answer and what it shows; gives the page, if it is one. */
    private Optional<Document> look(String asked, HttpResponse<String> answer) {
        if (answer.statusCode() >= 500) {
            wrong.add(asked + ": " + answer.statusCode());
        }
        if (!answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
            if (answer.statusCode() < 300
                    && answer.headers().firstValue("X-Content-Type-Options").isEmpty()) {
                wrong.add(asked + ": is no page, and does not say that it must not be taken for one");
            }
            return Optional.empty();
        }
        Document page = Jsoup.parse(answer.body());
        look(asked, page);
        return Optional.of(page);
    }

    /** Notes what is wrong with a page and what it shows. */
    void look(String asked, Document page) {
        page.getAllElements().forEach(element -> look(asked, element));
    }

    private void look(String asked, Element element) {
        boolean script = element.nameIs("script")
                && !(element.attr("src").startsWith("/") && element.data().isBlank());
        boolean own = element.nameIs("img") && !element.attr("src").startsWith("/");
        boolean active = element.is("style, iframe, object, embed, base");
        if (script || own || active) {
            wrong.add(asked + ": " + element.outerHtml());
        }
        for (Attribute attribute : element.attributes()) {
            String key = attribute.getKey();
            boolean leads = List.of("href", "action", "src", "formaction").contains(key);
            if (key.startsWith("on")
                    || !ATTRIBUTE.matcher(key).matches()
                    || (leads && !attribute.getValue().matches("(/|#|\\?|https?://).*|"))) {
                wrong.add(asked + ": " + element.tagName() + " " + attribute);
            }
            if (READ.contains(key)) {
                texts.add(attribute.getValue());
            }
        }
        if (!element.is("textarea.book")) {
            texts.add(element.ownText());
        }
    }

    /** What is not as it should be, each where it was met. */
    List<String> wrong() {
        return List.copyOf(wrong);
    }

    /** Every text that stood on a page. */
    List<String> texts() {
        return List.copyOf(texts);
    }

    /** The routes that were answered. */
    Set<String> visited() {
        return Set.copyOf(visited);
    }

    /** How many forms were met, each shape once. */
    int forms() {
        return forms.size();
    }
}
