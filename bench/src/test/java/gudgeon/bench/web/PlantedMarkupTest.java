package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.LongRun;
import gudgeon.bench.web.device.EntryCodes;
import gudgeon.bench.web.device.Network;
import gudgeon.bench.web.page.InAddress;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.device.Devices;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Markup in every text of a build, of its book and of its devices, and in all that is sent: no page takes it for its own. */
class PlantedMarkupTest {
    /** Texts that no page shows, with where they are read instead. */
    private static final Map<String, String> NEVER_SHOWN = Map.of(
            "book.engine.note", "the printed record and the printed sheet",
            "book.pistons.note", "the book itself",
            "book.positions.bearing", "only a bearing number that is one takes part, in what to buy");

    /** What can be asked for and is not here. */
    private static final Set<String> NOT_HERE = Set.of(
            "/workshop.crt", // nothing is encrypted
            "/builds/{build}/record/file"); // no record was made

    /** Pages that show what few entries of the book have. */
    private static final List<String> SEEDS = List.of(
            "/assemble?at=fit-bearings-left",
            "/assemble?at=fit-retainers",
            "/assemble?at=fit-kickstart-spring",
            "/assemble?at=float-joined",
            "/engine/case-left",
            "/print/card?joint=case-joint",
            "/print/list?of=order");

    @TempDir
    private static Path folder;

    private static final Planted PLANTED = new Planted();
    private static Shelf shelf;
    private static Bench bench;
    private static Crawl laptop;
    private static Crawl elsewhere;

    @BeforeAll
    static void plant() throws Exception {
        shelf = Shelf.open(folder);
        String plain = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        String book = PlantedBook.of(plain, PLANTED);
        String build = shelf.start(PLANTED.in("Started.engine"), book, Found.IN_PIECES, "bench");
        Photos photos = new Photos(folder);
        Path picture = folder.resolve("cover.png");
        CoverPhoto.take(picture, CoverPhoto.SHEET, List.of());
        String photo = ((Kept.Photo) photos.keep(Files.readAllBytes(picture))).hash();
        new PlantedFacts(shelf, build, PLANTED, photo).tell();
        long seen = shelf.build(build).orElseThrow().size();
        assertThat(shelf.changeBook(build, book + "\n# read again\n", PLANTED.in("BookChanged.why"), "bench", seen))
                .isInstanceOf(Outcome.Kept.class);
        Devices devices = Devices.in(folder);
        devices.letIn(PLANTED.in("LetIn.name"), Instant.now());
        bench = Bench.start(
                shelf,
                photos,
                List.of(new NamedBook("planted", geometry(book))),
                0,
                Optional.of(new Network(
                        List.of(Elsewhere.outer()), devices, new EntryCodes(Clock.systemUTC()), Optional.empty())));
        int most = LongRun.of(3, 1000);
        laptop = new Crawl(bench.address(), bench.routes(), most);
        laptop.from(addresses(build, photo));
        elsewhere = new Crawl(bench.addressesForOthers().get(0), bench.routes(), most);
        elsewhere.from(List.of("/enter"));
    }

    /** Every route, with what the build has in it. */
    private static List<String> addresses(String build, String photo) {
        List<String> asked = new ArrayList<>();
        SEEDS.forEach(seed -> asked.add("/builds/" + build + seed));
        for (String route : bench.routes()) {
            asked.add(route.replace("{build}", build)
                    .replace("{photo}", photo)
                    .replace("{position}", "piston")
                    .replace("{joint}", "case-joint")
                    .replace("{hunt}", InAddress.of(PLANTED.in("HuntOpened.hunt")))
                    .replace("{book}", "planted")
                    .replace("{file}", "three.module.js")
                    .replace("{page}", "strip")
                    .replace("{picture}", "assemble.png"));
        }
        return asked;
    }

    private static Geometry geometry(String book) {
        return ((BookReading.Read) new EngineBookReader().read(book))
                .book()
                .geometry()
                .orElseThrow();
    }

    @AfterAll
    static void close() {
        bench.close();
        shelf.close();
    }

    @Test
    void noPageTakesAnyTextForMarkup() {
        assertThat(laptop.wrong()).isEmpty();
        assertThat(elsewhere.wrong()).isEmpty();
    }

    @Test
    void aPageThatTookItForMarkupWouldBeSeen() {
        String text = "p000" + Planted.MARKUP;
        for (String page : List.of(
                "<p>" + text + "</p>",
                "<input value=\"" + text + "\">",
                "<p title='" + text + "'>",
                "<p title=" + text + ">",
                "<a href='javascript:planted()'>x</a>",
                "<p onclick='planted()'>x</p>")) {
            Crawl crawl = new Crawl(bench.address(), List.of(), 1);
            crawl.look("a page", Jsoup.parse(page));
            assertThat(crawl.wrong()).as(page).isNotEmpty();
        }
    }

    @Test
    void everyPageWasAsked() {
        List<String> all = new ArrayList<>(bench.routes());
        all.removeAll(NOT_HERE);
        assertThat(laptop.visited()).containsAll(all);
    }

    @Test
    void everyTextIsShownAsItWasWritten() {
        Set<String> unseen = new TreeSet<>(PLANTED.fields());
        unseen.removeAll(PLANTED.shown(laptop.texts()));
        assertThat(PLANTED.fields()).hasSizeGreaterThan(120);
        assertThat(unseen).isEqualTo(new TreeSet<>(NEVER_SHOWN.keySet()));
    }

    @Test
    void whatIsNoTextTakesNoneAndSaysSo() {
        Map<String, List<String>> refused = new TreeMap<>(PLANTED.refused());
        assertThat(refused)
                .containsKeys("TakenOff.position", "StepDone.step", "CheckPassed.check", "ReadingTaken.dimension")
                .containsKeys("Tightened.joint", "Tightened.hole", "ReadingTaken.value", "Ordered.price")
                .containsKeys("Photographed.photo", "Corrected.entry", "book.positions.id", "book.dimensions.unit");
        refused.forEach((field, sentences) -> assertThat(sentences)
                .as(field)
                .isNotEmpty()
                .allSatisfy(sentence -> assertThat(sentence).endsWith(".")));
    }

    @Test
    void whatIsSentAndRefusedIsShownAsTextToo() throws Exception {
        assertThat(laptop.forms()).isGreaterThan(50);
        laptop.sendForms(PLANTED.in("a form"));
        laptop.askStrangely(PLANTED.in("an address"));
        elsewhere.sendForms(PLANTED.in("a form"));
        assertThat(laptop.wrong()).isEmpty();
        assertThat(elsewhere.wrong()).isEmpty();
        assertThat(PLANTED.shown(laptop.texts())).contains("a form", "an address");
    }

    /** What a script puts into a page, it puts there as text. */
    @Test
    void noScriptMakesMarkupOfText() throws IOException {
        try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/gudgeon/bench/web/assets"))) {
            List<Path> all =
                    scripts.filter(file -> file.toString().endsWith(".js")).toList();
            assertThat(all).hasSizeGreaterThan(8);
            for (Path script : all) {
                assertThat(Files.readString(script))
                        .as("%s", script)
                        .doesNotContainPattern(
                                "innerHTML|outerHTML|insertAdjacentHTML|document\\.write|\\beval\\(|new Function|srcdoc");
            }
        }
    }
}
