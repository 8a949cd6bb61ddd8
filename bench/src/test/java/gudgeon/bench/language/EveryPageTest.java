package gudgeon.bench.language;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.TwoRebuilds;
import gudgeon.bench.web.Bench;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of page of two rebuilds, followed link by link: no text of the program on it is without its German. */
class EveryPageTest {
    /** Pages of one kind that are looked at, such as those of single parts. */
    private static final int OF_A_KIND = 6;

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;

    @BeforeEach
    void serve() throws IOException {
        shelf = Shelf.open(folder);
        TwoRebuilds.on(shelf);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    @AfterEach
    void close() {
        bench.close();
        shelf.close();
    }

    @Test
    void everyTextOfEveryPageHasItsGerman() throws Exception {
        Map<String, Translator> translators = new HashMap<>();
        Map<String, String> lacking = new TreeMap<>();
        Deque<String> open = new ArrayDeque<>(List.of("/"));
        Set<String> seen = new HashSet<>(open);
        Map<String, Integer> kinds = new HashMap<>();
        int pages = 0;
        while (!open.isEmpty()) {
            String path = open.removeFirst();
            HttpResponse<String> answer = get(path);
            if (!answer.headers().firstValue("Content-Type").orElse("").contains("html")) {
                continue;
            }
            pages++;
            Document page = Jsoup.parse(answer.body(), bench.address().toString());
            Translator translator = translators.computeIfAbsent(build(path), this::translator);
            Localization.spoken(page).forEach(text -> {
                if (translator.unexplained(text) > 0) {
                    lacking.putIfAbsent(text.strip().replaceAll("\\s+", " "), path);
                }
            });
            for (String link : page.select("a[href^=/]").eachAttr("href")) {
                String target = link.replaceFirst("#.*", "");
                // the handbook is written in each language by itself
                if (!target.startsWith("/handbook")
                        && seen.add(target)
                        && kinds.merge(kind(target), 1, Integer::sum) <= OF_A_KIND) {
                    open.add(target);
                }
            }
        }
        assertThat(pages).as("pages looked at").isGreaterThan(60);
        assertThat(lacking.keySet())
                .as("texts without German, each with a page that has it: %s", lacking)
                .isEmpty();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        URI address = bench.address().resolve(path.replace(" ", "%20"));
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static String build(String path) {
        return path.startsWith("/builds/") ? path.split("[/?]", -1)[2] : "";
    }

    /** Pages whose addresses differ only in the build and in what they are of. */
    private static String kind(String path) {
        String own = path.replaceFirst("^/builds/[^/?]+", "");
        String[] parts = own.split("[/?]", -1);
        return Stream.of(parts)
                        .limit(3)
                        .reduce("", (a, b) -> a + "/" + b.replaceFirst("=.*", ""))
                        .replaceAll("(/(engine|measure|fault|fasteners|print|journal)/).*", "$1")
                + build(path);
    }

    private Translator translator(String build) {
        OwnTexts own = new OwnTexts();
        if (!build.isEmpty()) {
            own.book(shelf.bookText(build));
            own.entries(shelf.build(build).orElseThrow().entries());
        }
        shelf.builds().forEach(one -> own.name(one.name()));
        return new Translator(PhraseBook.of(Language.GERMAN).orElseThrow(), own.texts());
    }
}
