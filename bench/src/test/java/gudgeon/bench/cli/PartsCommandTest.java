package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts and schedule at the command line. */
class PartsCommandTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: piston, name: piston}
              - {id: clips, name: circlips, quantity: 2, single-use: true}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston, clips], minutes: 60}
            checks:
              - {id: piston-free, name: Piston free in its bore, how: tried, clears: [piston], holds: [fit-piston], minutes: 5}
            dimensions:
              - {id: piston-skirt, name: piston skirt, of: piston, with: micrometer, inspect: true}
            """;

    @TempDir
    Path folder;

    private String file(String name, String... lines) throws Exception {
        return Files.write(folder.resolve(name), Arrays.asList(lines)).toString();
    }

    private String[] args(String command, String... more) throws Exception {
        List<String> args = new ArrayList<>(List.of(
                command,
                "--book",
                file("book.yaml", BOOK),
                "--journal",
                file(
                        "journal.jsonl",
                        "{\"type\": \"started\", \"version\": 1, \"engine\": \"98-1\", \"book\": \"\", \"found\": \"in-pieces\"}",
                        "{\"type\": \"part-entered\", \"version\": 2, \"part\": \"copy\", \"position\": \"piston\", \"origin\": \"pattern\"}",
                        "{\"type\": \"ordered\", \"version\": 2, \"order\": \"A\", \"position\": \"clips\", \"count\": 1, \"from\": \"Low Quay Workshop\", \"price\": \"0.90 EUR\", \"days\": [5, 9, 21]}",
                        "{\"type\": \"offered\", \"version\": 1, \"position\": \"clips\", \"from\": \"Low Quay Workshop\", \"price\": \"0.80 EUR\"}"),
                "--today",
                "2026-11-25"));
        args.addAll(List.of(more));
        return args.toArray(String[]::new);
    }

    private static JsonNode json(Terminal outcome) throws Exception {
        assertThat(outcome.code()).as(outcome.err()).isZero();
        return new ObjectMapper().readTree(outcome.out());
    }

    /** Every key that comes out, however deep, is described. */
    private static void documented(String document, JsonNode json) throws Exception {
        String text = Files.readString(Path.of("..", "docs", document));
        for (JsonNode child : json) {
            documented(document, child);
        }
        json.fieldNames().forEachRemaining(key -> assertThat(text).contains("`" + key + "`"));
    }

    @Test
    void theListSaysWhatIsToBuyAndWhatItCosts() throws Exception {
        assertThat(run((Object[]) args("parts")).out())
                .contains("1 position to order, 1 position still to come.")
                .contains("can't be used again. Needed 2, in hand 0, on the way 1, to order 1.")
                .contains("A, Low Quay Workshop,")
                .contains("'copy': 1 thing to compare before it goes in, first piston skirt.")
                .contains("Spent: 0.90 EUR. To come: 0.80 EUR.");
    }

    @Test
    void theListsJsonHasWhatIsDocumented() throws Exception {
        JsonNode parts = json(run((Object[]) args("parts", "--json")));
        assertThat(parts.at("/lines/0/toOrder").asInt()).isEqualTo(1);
        assertThat(parts.at("/lines/0/kind").asText()).isEqualTo("single-use");
        assertThat(parts.at("/orders/0/days/2").asInt()).isEqualTo(21);
        assertThat(parts.at("/spent/0/amount").asText()).isEqualTo("0.90");
        assertThat(parts.at("/inspections/0/sizes/0/agrees").asText()).isEqualTo("not-measured");
        documented("parts-json.md", parts);
    }

    @Test
    void theScheduleAndItsCalendarHaveWhatIsDocumented() throws Exception {
        Path calendar = folder.resolve("tarn.ics");
        JsonNode schedule = json(run((Object[]) args("schedule", "--json", "--calendar", calendar.toString())));
        assertThat(schedule.at("/hangsOn/0/id").asText()).isEqualTo("clips");
        assertThat(schedule.at("/end/half").asText()).isGreaterThan("2026-11-25");
        assertThat(schedule.at("/toPlace/0/position").asText()).isEqualTo("clips");
        assertThat(schedule.at("/holdPoints/0/id").asText()).isEqualTo("piston-free");
        documented("schedule-json.md", schedule);
        assertThat(calendar).content().contains("Hold point: Piston free in its bore");
        assertThat(run((Object[]) args("schedule", "--calendar", calendar.toString()))
                        .err())
                .contains("is there already");
        assertThat(run((Object[]) args("schedule")).out())
                .contains("This evening:")
                .contains("The end hangs on:")
                .contains("Assumed:");
    }

    @Test
    void aTableIsKeptOnlyWhenThePersonSaysSo() throws Exception {
        String id;
        try (Shelf shelf = Shelf.open(folder)) {
            id = shelf.start("The Tarn", BOOK, Found.IN_PIECES, "tablet");
        }
        String data = folder.toString();
        String half = file("half.csv", "position;ordered;order;price", "clips;2;A;0,90 EUR", "clip;1;A;1 EUR");
        assertThat(run("parts", id, "--data", data, "--read", half))
                .satisfies(read -> assertThat(read.code()).isEqualTo(1))
                .satisfies(read -> assertThat(read.out()).contains("Line 3: ").contains("Nothing was kept; --keep"));
        assertThat(run("parts", id, "--data", data, "--read", half, "--keep").out())
                .contains("Nothing was kept.");
        assertThat(run("parts", id, "--data", data).out()).doesNotContain("Orders:");
        assertThat(run("parts", id, "--data", data, "--read", half, "--keep", "--without-faults")
                        .out())
                .contains("1 kept.");
        assertThat(run("parts", id, "--data", data).out()).contains("Orders:").contains("1.80 EUR");
        String csv = run("parts", id, "--data", data, "--csv").out();
        assertThat(csv).startsWith("\uFEFFposition,").contains("clips,");
    }

    @Test
    void whatCanNotBeUsedEndsInASentence() throws Exception {
        assertThat(run("parts").err()).contains("Name a build");
        assertThat(run((Object[]) args("parts", "--keep")).err()).contains("name the file");
        assertThat(run((Object[]) args("parts", "--read", "nowhere.csv")).err()).contains("There is no file");
        assertThat(run((Object[]) args("schedule", "--today", "soon")).err()).contains("'soon' is not a day");
    }
}
