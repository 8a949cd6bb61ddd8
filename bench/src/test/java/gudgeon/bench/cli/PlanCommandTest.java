package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plan and undo at the command line. */
class PlanCommandTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: drum, name: shift drum}
              - {id: case-gasket, name: crankcase gasket, single-use: true}
            steps:
              - {id: fit-drum, name: Fit the shift drum, fits: [drum], minutes: 20}
              - {id: close-case, name: Close the crankcase, fits: [case-gasket], covers: [drum], minutes: 30}
            checks:
              - {id: gears-by-hand, name: Every gear by hand, how: tried, clears: [drum], with: [drum], minutes: 5}
            """;

    @TempDir
    Path folder;

    private String file(String name, String... lines) throws Exception {
        return Files.write(folder.resolve(name), Arrays.asList(lines)).toString();
    }

    private String book() throws Exception {
        return file("book.yaml", BOOK);
    }

    /** Both steps done, and nothing proved. */
    private String closed() throws Exception {
        return file(
                "journal.jsonl",
                "{\"type\": \"step-done\", \"version\": 1, \"step\": \"fit-drum\"}",
                "{\"type\": \"step-done\", \"version\": 1, \"step\": \"close-case\"}");
    }

    private static JsonNode json(Terminal outcome) throws Exception {
        assertThat(outcome.code()).isZero();
        return new ObjectMapper().readTree(outcome.out());
    }

    @Test
    void thePlanOfAnUntouchedBookWaitsForItsParts() throws Exception {
        Terminal plan = run("plan", "--book", book());
        assertThat(plan.code()).isZero();
        assertThat(plan.out())
                .contains("0 of 2 steps done, about 55 min of work left.")
                .contains("part: Not in hand: shift drum.")
                .contains("step: 'Fit the shift drum' is not done yet.");
    }

    @Test
    void thePlansJsonHasWhatIsDocumented() throws Exception {
        JsonNode plan = json(run("plan", "--book", book(), "--journal", closed(), "--order", "--json"));
        assertThat(plan.at("/now/0/id").asText()).isEqualTo("gears-by-hand");
        assertThat(plan.at("/now/0/isCheck").asBoolean()).isTrue();
        assertThat(plan.at("/waiting").isEmpty()).isTrue();
        assertThat(plan.at("/progress/done").asInt()).isEqualTo(2);
        assertThat(plan.at("/order/order/0").asText()).isEqualTo("gears-by-hand");
        assertThat(plan.at("/order/proven").asBoolean()).isTrue();
        assertThat(plan.has("nextHoldPoint")).isTrue();
        documented(plan, "now", "waiting", "nextHoldPoint", "progress", "order", "costMinutes", "boundMinutes");
    }

    @Test
    void theUndosJsonHasWhatIsDocumented() throws Exception {
        JsonNode undo = json(run("undo", "drum", "--book", book(), "--journal", closed(), "--json"));
        assertThat(undo.at("/off/0/id").asText()).isEqualTo("close-case");
        assertThat(undo.at("/off/1/id").asText()).isEqualTo("fit-drum");
        assertThat(undo.at("/buy/0/position").asText()).isEqualTo("case-gasket");
        assertThat(undo.at("/buy/0/price").isNull()).isTrue();
        assertThat(undo.at("/minutesOff").asInt()).isEqualTo(25);
        documented(undo, "of", "off", "again", "voidChecks", "buy", "minutesOff", "minutesBack", "back", "sentences");
    }

    private static void documented(JsonNode json, String... keys) throws Exception {
        String text = Files.readString(Path.of("..", "docs", "plan-json.md"));
        assertThat(text)
                .contains(Arrays.stream(keys).map(key -> "`" + key + "`").toList());
        json.fieldNames().forEachRemaining(key -> assertThat(text).contains("`" + key + "`"));
    }

    @Test
    void theOrderSaysWhatItSavesOverTheBooks() throws Exception {
        assertThat(run("plan", "--book", book(), "--order").out())
                .contains(
                        "'Every gear by hand' before 'Close the crankcase' saves 1 step undone and done again, about 45 min,"
                                + " if something is wrong with the shift drum.");
    }

    @Test
    void aBuildOnTheShelfIsPlannedByItsId() {
        String id;
        try (Shelf shelf = Shelf.open(folder)) {
            id = shelf.start("The Tarn", BOOK, Found.TOGETHER, "tablet");
        }
        assertThat(run("plan", id, "--data", folder.toString()).out())
                .contains("The engine is together as it was found.");
        assertThat(run("undo", id, "drum", "--data", folder.toString()).out())
                .contains("undo 2 steps: 'Close the crankcase' and 'Fit the shift drum'")
                .contains("Destroyed and to be bought: crankcase gasket.");
    }

    @Test
    void whatCanNotBeUsedEndsInASentence() throws Exception {
        refused("There is no build 'tarn'", "plan", "tarn", "--data", folder.toString());
        refused("Name a build", "plan");
        refused("Name a build and a position", "undo", "drum");
        refused("no position, step or check 'dru'. Like it are: drum, fit-drum", "undo", "dru", "--book", book());
        refused("name its engine book with --book", "plan", "--journal", closed());
        refused("There is no file", "plan", "--book", book(), "--journal", "nowhere.jsonl");
        refused("Line 1", "plan", "--book", book(), "--journal", file("bad.jsonl", "{"));
        refused("less than no time", "plan", "--book", book(), "--seconds", "-1");
    }

    private static void refused(String sentence, String... args) {
        Terminal outcome = run((Object[]) args);
        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains(sentence);
    }
}
