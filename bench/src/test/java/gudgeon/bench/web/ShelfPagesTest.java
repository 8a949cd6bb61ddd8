package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.LongRun;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shelf of many builds is shown page by page, so that none has to wait until all of them are read. */
class ShelfPagesTest {
    private static final int BUILDS = LongRun.of(60, 1_000);
    private static final int A_PAGE = 25;
    private static final Pattern NAME = Pattern.compile("<h2><a href=\"/builds/[^\"]+\">([^<]+)</a></h2>");
    private static final Pattern NEXT = Pattern.compile("href=\"(/\\?from=[0-9]+&amp;q=[^\"]*)\"");

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    private String page(URI bench, String path) throws IOException, InterruptedException {
        var answer = client.send(HttpRequest.newBuilder(bench.resolve(path)).build(), BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private static List<String> names(String page) {
        return NAME.matcher(page).results().map(found -> found.group(1)).toList();
    }

    private static Optional<String> next(String page) {
        Matcher next = NEXT.matcher(page);
        return next.find() ? Optional.of(next.group(1).replace("&amp;", "&")) : Optional.empty();
    }

    @Test
    void everyBuildIsOnOnePage() throws Exception {
        List<String> started = new ArrayList<>();
        try (Shelf shelf = Shelf.open(folder)) {
            for (int n = 1; n <= BUILDS; n++) {
                shelf.start("Engine no. " + n, Archetype.SIDE_VALVE_STATIONARY.text(), Found.TOGETHER, "bench");
                started.add(0, "Engine no. " + n);
            }
            try (Bench bench = Bench.start(shelf, new Photos(folder), List.of(), 0)) {
                List<String> shown = new ArrayList<>();
                for (Optional<String> next = Optional.of("/"); next.isPresent(); ) {
                    String page = page(bench.address(), next.get());
                    assertThat(names(page)).hasSizeBetween(1, A_PAGE);
                    shown.addAll(names(page));
                    next = next(page);
                }
                assertThat(shown).containsExactlyInAnyOrderElementsOf(started);
                assertThat(shown.get(0)).as("the one last worked on").isEqualTo("Engine no. " + BUILDS);
                assertThat(names(page(bench.address(), "/?q=NO.+17"))).contains("Engine no. 17");
                for (String odd : List.of("/?from=9999999", "/?from=-1", "/?from=x&q=")) {
                    assertThat(names(page(bench.address(), odd))).as(odd).hasSize(A_PAGE);
                }
            }
        }
    }
}
