package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Verdicts at the command line. */
class MeasureCommandTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: piston, name: piston}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston]}
            dimensions:
              - {id: skirt, name: piston skirt, of: piston, with: micrometer, new: {at-least: 49.965, at-most: 49.98}, at-least: 49.92}
              - {id: groove, name: ring groove, of: piston, with: feeler gauges, at-most: 1.6}
            """;
    private static final String JOURNAL = """
            {"type": "started", "version": 1, "engine": "Tarn 98, number 3", "book": "", "found": "together"}
            {"type": "instrument-kept", "version": 1, "instrument": "vernier", "kind": "calliper", "range": "0 to 150 mm", "resolution": "0.02 mm", "error": "0.03 mm"}
            {"type": "instrument-kept", "version": 1, "instrument": "micrometer", "kind": "micrometer", "range": "25 to 50 mm", "resolution": "0.01 mm", "error": "0.004 mm", "checked": "2020-01-31"}
            {"type": "reading-taken", "version": 1, "dimension": "skirt", "piece": 1, "value": "49.94 mm", "instrument": "vernier"}
            """;
    private static final String BETTER = """
            {"type": "reading-taken", "version": 1, "dimension": "skirt", "piece": 1, "value": "49.94 mm", "instrument": "micrometer"}
            """;

    @TempDir
    Path folder;

    private Terminal measure(String journal, String... options) throws Exception {
        List<String> args = new ArrayList<>(List.of("measure", "--book"));
        args.add(Files.writeString(folder.resolve("book.yaml"), BOOK).toString());
        args.add("--journal");
        args.add(Files.writeString(folder.resolve("journal.jsonl"), journal).toString());
        args.addAll(List.of(options));
        return run(args.toArray());
    }

    @Test
    void whatIsUnprovenIsSaidWithWhatWouldProveIt() throws Exception {
        Terminal measure = measure(JOURNAL, "--budget");
        assertThat(measure.code()).isEqualTo(1);
        assertThat(measure.out())
                .contains("2 dimensions: 1 unproven and 1 not measured.")
                .contains("UNPROVEN  piston skirt (skirt)")
                .contains("Read the piston skirt with the micrometer: if it reads the same, that proves it in limits.")
                .contains("Permissible error of the vernier: 0.0173 mm.")
                .contains("The micrometer was last checked on 2020-01-31")
                .doesNotContain("ring groove");
        assertThat(measure(JOURNAL, "--all").out()).contains("NOT MEASURED  ring groove (groove)");
    }

    @Test
    void theBetterInstrumentClearsIt() throws Exception {
        Terminal measure = measure(JOURNAL + BETTER);
        assertThat(measure.code()).isZero();
        assertThat(measure.out()).contains("IN LIMITS  piston skirt (skirt)");
    }

    @Test
    void theJsonHasWhatIsDocumented() throws Exception {
        JsonNode json = new ObjectMapper().readTree(measure(JOURNAL, "--json").out());
        JsonNode skirt = json.at("/dimensions/0");
        assertThat(skirt.at("/outcome").asText()).isEqualTo("unproven");
        assertThat(skirt.at("/chances/inside").asDouble()).isBetween(0.8, 0.95);
        assertThat(skirt.at("/worst/budget/0/what").asText()).isEqualTo("permissible error of the vernier");
        assertThat(skirt.at("/proofs/0/instruments/0").asText()).isEqualTo("micrometer");
        assertThat(skirt.at("/readings/0/entry").asInt()).isEqualTo(4);
        assertThat(skirt.at("/suited")).hasSize(2);
        assertThat(json.at("/dimensions/1/worst").isNull()).isTrue();
        assertThat(json.at("/instruments/1/checked").asText()).isEqualTo("2020-01-31");
        String documented = Files.readString(Path.of("..", "docs", "measure-json.md"));
        skirt.fieldNames().forEachRemaining(key -> assertThat(documented).contains("`" + key + "`"));
    }
}
