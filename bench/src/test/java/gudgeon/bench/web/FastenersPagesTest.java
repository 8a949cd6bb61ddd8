package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Tightness;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Piled;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the Fasteners page keeps, refuses and shows, told by forms without a script. */
class FastenersPagesTest {
    private static final String JOINT = "/fasteners/joint/cover-joint";
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98}
            positions:
              - {id: case, name: case}
              - {id: cover, name: cover}
            steps:
              - {id: place, name: place the case, fits: [case]}
              - {id: close, name: close the cover, fits: [cover], tightens: [cover-joint]}
            joints:
              - id: cover-joint
                name: cover screws
                shape: cover
                outline: [[0, 0], [82, 0], [82, 60], [0, 60]]
                torque: 9 N.m
                passes: 2
                again: after the first heat
                holes:
                  - {id: h1, at: [6, 6], thread: M6, length: 25, stack: 12 mm, depth: 18, into: aluminium, class: "8.8"}
                  - {id: h2, at: [76, 6], thread: M6, length: 25, stack: 12 mm, depth: 18, into: aluminium, class: "8.8"}
                  - {id: h3, at: [76, 54], thread: M6, length: 25, stack: 12 mm, depth: 18, into: aluminium, class: "8.8"}
                  - {id: h4, at: [6, 54], thread: M6, length: 25, stack: 12 mm, depth: 18, into: aluminium, class: "8.8"}
              - {id: bare, name: sump plug}
            """;

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private String id;

    @BeforeEach
    void start() throws IOException {
        shelf = Shelf.open(folder);
        id = shelf.start("Tarn 98 no. 2043", BOOK, Found.IN_PIECES, "bench");
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    @AfterEach
    void stop() {
        bench.close();
        shelf.close();
    }

    private Build build() {
        return shelf.build(id).orElseThrow();
    }

    private JointNow joint() {
        return JointNow.of(build(), "cover-joint").orElseThrow();
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI at(String path) {
        return bench.address().resolve("builds/" + id + path);
    }

    private String page(String path) throws Exception {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(at(path)));
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    private HttpResponse<String> tell(String type, String... fields) throws Exception {
        StringBuilder body = new StringBuilder("type=" + type);
        for (int i = 0; i < fields.length; i += 2) {
            body.append('&')
                    .append(URLEncoder.encode(fields[i], StandardCharsets.UTF_8))
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return send(HttpRequest.newBuilder(at("/entries"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
    }

    private void kept(String type, String... fields) throws Exception {
        HttpResponse<String> answer = tell(type, fields);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    }

    private String refused(String type, String... fields) throws Exception {
        long before = build().size();
        HttpResponse<String> answer = tell(type, fields);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(build().size()).isEqualTo(before);
        return answer.body();
    }

    private void tighten(String hole, String pass) throws Exception {
        kept("tightened", "joint", "cover-joint", "hole", hole, "pass", pass, "torque", "5 N.m");
    }

    private String next() {
        return Tightness.of(joint()).next().orElseThrow().hole();
    }

    @Test
    void theMapIsALinkForEachHoleThatSaysHowItStands() throws Exception {
        String shown = page(JOINT);
        for (String hole : List.of("h1", "h2", "h3", "h4")) {
            assertThat(shown)
                    .contains("data-hole=\"" + hole + "\"")
                    .contains("aria-label=\"Hole " + hole + ", number ");
        }
        assertThat(shown)
                .contains("M6 × 25", "not tightened, this one next", "9 N·m, the maker’s figure".replace('’', '\''))
                .doesNotContain("<script>");
        assertThat(page("/fasteners"))
                .contains("Cover screws", "To be tightened again: after the first heat.", "Sump plug");
    }

    @Test
    void anInterruptedPassIsSeenAtOnceAndGoesOnWhereItStopped() throws Exception {
        List<String> order = Tightness.of(joint()).order().holes();
        for (String hole : order) {
            assertThat(next()).isEqualTo(hole);
            tighten(hole, "1");
        }
        tighten(order.get(0), "2");
        assertThat(page(JOINT))
                .contains("1 of 4 holes has had pass 2")
                .contains("left: " + String.join(", ", order.subList(1, 4)))
                .contains(order.get(1) + " is tight for this pass");
        assertThat(page("/fasteners")).contains("1 of 4 holes has had pass 2");
        assertThat(page("")).contains("Half tightened", "1 of 4 holes has had pass 2");
        assertThat(page(JOINT + "?hole=" + order.get(3))).contains("out of turn", "Next in the order is");
        tighten(order.get(3), "2");
        assertThat(joint().hole(order.get(3)).orElseThrow().pass()).isEqualTo(2);
        kept("loosened", "joint", "cover-joint", "why", "the gasket slipped");
        assertThat(page(JOINT)).contains("Not tightened yet");
    }

    @Test
    void aTightJointIsMarkedAcrossAndTightenedAgain() throws Exception {
        int passes = Tightness.of(joint()).passes().size();
        for (int pass = 1; pass <= passes; pass++) {
            for (String hole : Tightness.of(joint()).order().holes()) {
                tighten(hole, Integer.toString(pass));
            }
        }
        assertThat(page("")).contains("Tighten again", "after the first heat");
        kept("witness-marked", "joint", "cover-joint", "hole", "h1", "hole", "h2");
        assertThat(page(JOINT)).contains("marked across");
        kept("tightened-again", "joint", "cover-joint", "torque", "9");
        assertThat(page("")).doesNotContain("Tighten again");
    }

    @Test
    void theHeapIsCountedAndGivenToHoles() throws Exception {
        kept("fastener-piled", "kind", "long", "thread", "M6", "length", "25 ± 0.5 mm", "head", "cheese", "count", "4");
        kept("fastener-piled", "kind", "long", "thread", "M6", "length", "25 ± 0.5 mm", "head", "cheese", "count", "3");
        assertThat(page("/fasteners/heap")).contains("3 of them").doesNotContain("4 of them");
        assertThat(page("/fasteners")).contains("3 of long", "To buy");
        assertThat(page(JOINT)).contains("Which one goes where", "Nothing in the heap is right for");
        assertThat(page("/fasteners/heap?change=long")).contains("Count long anew");
        kept("hole-given", "joint", "cover-joint", "hole", "h2", "kind", "long");
        HoleGiven given = build().told(HoleGiven.class).get(0).fact();
        assertThat(given).isEqualTo(new HoleGiven("cover-joint", "h2", "long", "M6", "25 ± 0.5 mm", "cheese", ""));
        kept("fastener-out", "joint", "cover-joint", "hole", "h1", "thread", "M6", "length", "25");
        assertThat(joint().hole("h1").orElseThrow().fastener().orElseThrow().cameOut())
                .isTrue();
        kept("hole-measured", "joint", "cover-joint", "hole", "h1", "depth", "16 mm");
        assertThat(joint().hole("h1").orElseThrow().depth().orElseThrow().value())
                .isEqualTo(16);
    }

    @Test
    void aWrenchIsTakenAndItsSettingSaidWithTheAdapter() throws Exception {
        assertThat(page(JOINT)).contains("No torque wrench of yours is known");
        kept("wrench-kept", "wrench", "small click", "range", "5 to 25 N.m", "step", "0.1 N.m");
        kept("lubricated", "joint", "cover-joint", "how", "oiled");
        kept(
                "wrench-chosen",
                "joint",
                "cover-joint",
                "wrench",
                "small click",
                "setting",
                "7.2 N.m",
                "adapter",
                "50",
                "arm",
                "200");
        assertThat(joint().lubricated()).contains(Lubrication.OILED);
        assertThat(page(JOINT)).contains("Set the small click to 7.2 N·m for 9 N·m at the fastener");
        assertThat(page("/fasteners/wrenches")).contains("small click", "can be trusted from");
        assertThat(build().told(WrenchKept.class, Fastening.WRENCHES)).hasSize(1);
    }

    @Test
    void aMapByNumbersMovesTheHoles() throws Exception {
        kept(
                "joint-mapped",
                "joint",
                "cover-joint",
                "x.h1",
                "7,5",
                "y.h1",
                "8",
                "x.h2",
                "70",
                "y.h2",
                "8",
                "outline",
                "0 0\n80 0\n80 60");
        JointMapped fact = build().told(JointMapped.class).get(0).fact();
        assertThat(fact.holes()).isEqualTo(Map.of("h1", new Point(7.5, 8), "h2", new Point(70, 8)));
        assertThat(fact.outline()).hasSize(3);
        kept("joint-mapped", "joint", "bare", "x.h1", "1", "y.h1", "1");
        assertThat(page("/fasteners/joint/bare")).contains("data-hole=\"h1\"");
        assertThat(page("/fasteners/joint/bare/map?holes=7")).contains("x.h7");
    }

    private String[] photo(String... other) {
        return photo(List.of("100 100", "1288 100", "1288 940", "100 940"), other);
    }

    /** With the sheet's corners marked at these places, from top left clockwise. */
    private String[] photo(List<String> corners, String... other) {
        List<String> fields = new ArrayList<>(List.of(
                "joint",
                "cover-joint",
                "photo-hash",
                "0123456789abcdef".repeat(4),
                "sheet",
                "A4 on its side",
                "corner.top-left",
                corners.get(0),
                "corner.top-right",
                corners.get(1),
                "corner.bottom-right",
                corners.get(2),
                "corner.bottom-left",
                corners.get(3),
                "mark.h1",
                "1400 900",
                "mark.h2",
                "1680 900",
                "mark.h3",
                "1680 700"));
        fields.addAll(List.of(other));
        return fields.toArray(String[]::new);
    }

    @Test
    void aMapFromAPhotoComesOutInMillimetres() throws Exception {
        kept(
                "joint-photographed",
                photo("mark.h4", "1400 700", "apart", "70.1 mm", "apart-one", "h1", "apart-other", "h2"));
        JointMapped fact = build().told(JointMapped.class).get(0).fact();
        assertThat(fact.holes())
                .isEqualTo(Map.of(
                        "h1",
                        new Point(0, 0),
                        "h2",
                        new Point(70, 0),
                        "h3",
                        new Point(70, 50),
                        "h4",
                        new Point(0, 50)));
        assertThat(page(JOINT)).contains("residual", "h1 to h2 is 70.0 mm by the photo and 70.1 mm measured");
    }

    @Test
    void aPhotoMarkedWrongIsRefusedWithAllThatIsWrong() throws Exception {
        assertThat(refused("joint-photographed", photo())).contains("Not marked yet: h4.");
        assertThat(refused("joint-photographed", "joint", "cover-joint", "sheet", "A9", "mark.h1", "here"))
                .contains("The sheet's size can't be read")
                .contains("The sheet's corner top left is not marked")
                .contains("Hole h1: 'here' is not two numbers");
        assertThat(refused("joint-photographed", photo("mark.h4", "1400 900"))).contains("h1 and h4 lie on one spot");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    100 100;1288 940;1288 100;100 940 | marked crosswise
                    1288 100;100 100;100 940;1288 940 | marked the wrong way round
                    100 100;700 100;1288 100;100 940 | in line
                    100 100;100 100;1288 940;100 940 | on one spot
                    """)
    void cornersThatMakeNoSheetAreRefusedWithTheOrderWanted(String corners, String said) throws Exception {
        assertThat(refused("joint-photographed", photo(List.of(corners.split(";")), "mark.h4", "1400 700")))
                .contains(said)
                .contains("Mark top left, top right, bottom right and bottom left, in this order.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    tightened | joint;cover-joint;pass;1 | No hole is touched
                    tightened | joint;cover-joint;hole;h9;pass;1 | has no hole
                    tightened | joint;no-such;hole;h1;pass;1 | has no joint
                    tightened | joint;cover-joint;hole;h1;pass;0 | A pass is 1 to 9
                    tightened | joint;cover-joint;hole;h1;pass;1;torque;1000 N.m | twists off at
                    tightened | joint;cover-joint;hole;h1;pass;1;torque;tight | The torque:
                    tightened | joint;cover-joint;hole;h1;pass;1;torque;-3 | more than 0
                    fastener-piled | kind;k;thread;M6;length;25;count;-2 | 0 to 999 in the heap, not -2
                    fastener-piled | kind;k;thread;M6.5;length;25 | M6.5
                    fastener-piled | kind;k;thread;M6;length;long | The length:
                    fastener-piled | kind;k;thread;M6;length;25;strength;99.9 | no strength class
                    hole-given | joint;cover-joint;hole;h1;kind;none such | in the heap
                    hole-given | joint;cover-joint;hole;h1 | not said which fastener
                    hole-measured | joint;cover-joint;hole;h1;stack;-4 mm | more than 0 mm
                    wrench-chosen | joint;cover-joint;wrench;unknown | no torque wrench
                    wrench-kept | wrench;w;range;some | can't be used
                    witness-marked | joint;cover-joint | No hole is ticked
                    lubricated | joint;cover-joint | not said what is on the threads
                    joint-mapped | joint;cover-joint;x.h1;5 | Only one number
                    joint-mapped | joint;cover-joint;x.h1;5;y.h1;a | two numbers
                    joint-mapped | joint;cover-joint;x.h1;5;y.h1;5;x.h2;5.2;y.h2;5 | lie on one spot
                    joint-mapped | joint;cover-joint;x.h1;5;y.h1;5;outline;1 1 | three corners
                    joint-mapped | joint;cover-joint;x.h1;NaN;y.h1;5 | two numbers
                    """)
    void whatCannotBeTakenDownIsSaid(String type, String fields, String said) throws Exception {
        assertThat(refused(type, fields.split(";"))).contains(said);
    }

    @Test
    void stripAsksForTheFastenersAndAssembleTicksThem() throws Exception {
        assertThat(page("/strip?at=cover")).contains("Its fasteners", "This one came out of h1");
        kept("step-begun", "step", "close");
        String step = page("/assemble?at=close");
        assertThat(step).contains("data-hole-map", "is tight for this pass", "9 N·m");
    }

    @Test
    void whatIsTypedIsShownAsTextAndNeverAsMarkup() throws Exception {
        String markup = "<script>alert(1)</script>\"><img src=x>";
        kept("fastener-piled", "kind", markup, "thread", "M6", "length", "25", "head", markup, "remark", markup);
        kept("wrench-kept", "wrench", markup, "range", "5 to 25 N.m", "remark", markup);
        kept("hole-given", "joint", "cover-joint", "hole", "h1", "kind", markup);
        kept("wrench-chosen", "joint", "cover-joint", "wrench", markup);
        kept("joint-mapped", "joint", "bare", "x." + markup, "1", "y." + markup, "1");
        for (String path : List.of(
                "/fasteners",
                "/fasteners/heap",
                "/fasteners/wrenches",
                JOINT,
                JOINT + "/map",
                "/fasteners/joint/bare",
                "/fasteners/joint/bare/map",
                "/assemble?at=close",
                "/strip?at=cover",
                "/journal",
                "")) {
            assertThat(page(path)).as(path).doesNotContain("<script>alert", "<img src=x");
        }
    }

    @Test
    void aJointThatIsNotInTheBookIsNotFound() throws Exception {
        for (String path : List.of("/fasteners/joint/no-such", "/fasteners/joint/no-such/map")) {
            assertThat(send(HttpRequest.newBuilder(at(path))).statusCode()).isEqualTo(404);
        }
        assertThat(page(JOINT + "?hole=no-such")).contains("Hole h");
        assertThat(build().told(Piled.class).stream().map(Told::fact)).isEmpty();
    }
}
