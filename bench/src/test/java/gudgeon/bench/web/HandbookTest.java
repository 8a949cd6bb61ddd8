package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.TwoRebuilds;
import gudgeon.bench.cli.Gudgeon;
import gudgeon.bench.web.page.Tab;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;

/**
 * The handbook can't go stale: its links lead somewhere, its commands are there, and its pictures show pages whose headings still are
 * what they were when the pictures were taken. The headings lie beside each picture as text.
 */
class HandbookTest {
    private static final Path HANDBOOK = Path.of("..", "docs", "handbook");
    private static final Pattern HEADING = Pattern.compile("<h[12][^>]*>(.*?)</h[12]>", Pattern.DOTALL);
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/[^\"]*)\"");
    private static final Pattern COMMAND = Pattern.compile("gudgeon ([a-z-]+)");
    private static final Pattern PICTURE = Pattern.compile("\\(images/([a-z-]+)\\.png\\)");

    /** What each picture shows, of the demo's builds. */
    enum Shown {
        SHELF("", ""),
        TODAY("1187", ""),
        STRIP("1187", "/strip"),
        MEASURE("2043", "/measure"),
        PARTS("2043", "/parts"),
        FASTENERS("1187", "/fasteners"),
        ASSEMBLE("1187", "/assemble"),
        FAULT("1187", "/fault"),
        TIMING("1187", "/timing"),
        FIRST_START("1187", "/start"),
        RECORD("1187", "/record"),
        JOURNAL("1187", "/journal"),
        PHONE("1187", "");

        private final String build;
        private final String path;

        Shown(String build, String path) {
            this.build = build;
            this.path = path;
        }

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }

        String address() {
            return build.isEmpty() ? "/" : "/builds/" + id(build) + path;
        }

        Path file(Path folder, String ending) {
            return folder.resolve(word() + ending);
        }
    }

    @TempDir
    static Path folder;

    private static Shelf shelf;
    private static Bench bench;

    @BeforeAll
    static void serveTheDemo() throws IOException {
        shelf = Shelf.open(folder);
        TwoRebuilds.on(shelf);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    @AfterAll
    static void close() {
        bench.close();
        shelf.close();
    }

    private static String id(String number) {
        return shelf.builds().stream()
                .filter(build -> build.name().endsWith(number))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static HttpResponse<String> get(String address) throws IOException, InterruptedException {
        URI uri = bench.address().resolve(address);
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** The main headings of a page, numbers left out since they change with the day. */
    private static String headings(Shown shown) throws IOException, InterruptedException {
        HttpResponse<String> page = get(shown.address());
        assertThat(page.statusCode()).as(shown.address()).isEqualTo(200);
        return HEADING.matcher(page.body())
                .results()
                .map(heading -> heading.group(1)
                        .replaceAll("<[^>]*>", "")
                        .replaceAll("\\d+", "#")
                        .replaceAll("\\s+", " ")
                        .strip())
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(HANDBOOK)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    private static String all() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path page : pages()) {
            all.append(Files.readString(page));
        }
        return all.toString();
    }

    @ParameterizedTest
    @EnumSource
    void thePictureShowsThePageAsItIsNow(Shown shown) throws IOException, InterruptedException {
        Path images = HANDBOOK.resolve("images");
        assertThat(shown.file(images, ".png")).isNotEmptyFile();
        assertThat(headings(shown))
                .as("the headings of %s changed since its picture was taken; take the pictures again", shown.word())
                .isEqualTo(Files.readString(shown.file(images, ".txt")));
    }

    @Test
    void everyPictureIsOneThatIsTakenAndEachIsUsed() throws IOException {
        TreeSet<String> used = PICTURE.matcher(all())
                .results()
                .map(one -> one.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(used)
                .isEqualTo(Stream.of(Shown.values()).map(Shown::word).collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void everyPageOfTheHandbookIsInTheProgramAndItsLinksLeadSomewhere() throws IOException, InterruptedException {
        assertThat(pages()).hasSizeGreaterThan(10);
        for (Path page : pages()) {
            String name = page.getFileName().toString().replace(".md", "");
            HttpResponse<String> served = get("/handbook/" + name);
            assertThat(served.statusCode()).as(name).isEqualTo(200);
            assertThat(served.body()).as(name).contains("<h1 ").doesNotContain(".md\"");
            Matcher links = LINK.matcher(served.body());
            while (links.find()) {
                assertThat(get(links.group(1)).statusCode())
                        .as("%s on %s", links.group(1), name)
                        .isEqualTo(200);
            }
        }
        assertThat(get("/handbook").body()).contains("Start here");
        assertThat(get("/handbook/no-such-page").statusCode()).isEqualTo(404);
        assertThat(get("/handbook/images/no-such.png").statusCode()).isEqualTo(404);
    }

    @Test
    void everyPageOfABuildIsNamedAndEveryCommandIsThere() throws IOException {
        assertThat(Stream.of(Tab.values()).map(tab -> "**" + tab.word() + "**"))
                .allSatisfy(name -> assertThat(all()).contains(name));
        assertThat(COMMAND.matcher(all()).results().map(one -> one.group(1)).collect(Collectors.toSet()))
                .isSubsetOf(new CommandLine(new Gudgeon()).getSubcommands().keySet());
    }

    @Test
    void thePageAboutTellsTheVersionWhatIsNewAndTheLicences() throws IOException, InterruptedException {
        String page = get("/about").body();
        assertThat(page).contains("Version 0.", "Added", "Trial fit", "Apache", "picocli", "sqlite");
        assertThat(get("/").body()).contains("href=\"/about\"", "href=\"/handbook\"");
    }

    @Test
    void thePagesAreSoundForThumbAndScreenReader() {
        try (Browser browser = new Browser()) {
            Visit visit = new Visit(browser, shelf, bench.address());
            browser.screen(360, 780, "light");
            for (String page : List.of("handbook", "handbook/keep", "about")) {
                browser.driver.get(bench.address() + page);
                visit.sound(page);
            }
        }
    }

    /** Takes the pictures: {@code mvn -pl bench -am test -Dtest=HandbookTest -Dgudgeon.handbook=../docs/handbook/images}. */
    @Test
    @EnabledIfSystemProperty(named = "gudgeon.handbook", matches = ".+")
    void takesThePictures() throws IOException, InterruptedException {
        Path images = Path.of(System.getProperty("gudgeon.handbook", ""));
        try (Browser browser = new Browser()) {
            for (Shown shown : Shown.values()) {
                boolean phone = shown == Shown.PHONE;
                browser.screen(phone ? 360 : 1366, 860, "light");
                browser.driver.get(bench.address().resolve(shown.address()).toString());
                browser.picture(shown.file(images, ".png"), phone ? 360 : 1366, 860);
                Files.writeString(shown.file(images, ".txt"), headings(shown));
            }
        }
    }
}
