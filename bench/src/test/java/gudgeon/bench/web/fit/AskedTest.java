package gudgeon.bench.web.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Geometry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The form as a browser without script sends it: every field, changed or not. */
class AskedTest {
    private static final String MARGIN = "valves.exhaust.margin";
    private static Geometry book;

    @BeforeAll
    static void read() throws IOException {
        String text = Files.readString(Path.of("../examples/tarn-98.yaml"));
        book = ((BookReading.Read) new EngineBookReader().read(text))
                .book()
                .geometry()
                .orElseThrow();
    }

    private static Map<String, List<String>> untouched(Lengths lengths) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("shown", List.of(lengths.written()));
        fields.put("units", List.of(lengths.written()));
        book.sizes()
                .forEach((path, size) ->
                        fields.put(Asked.SIZE + path, List.of(lengths.number(size.value(), size.unit()))));
        return fields;
    }

    @Test
    void takesAnUntouchedFormAsTheBookHasIt() {
        for (Lengths lengths : Lengths.values()) {
            Asked asked = Asked.of(book, untouched(lengths));
            assertThat(asked.typed()).isEmpty();
            assertThat(asked.choice().changed()).isEmpty();
            assertThat(asked.faults()).isEmpty();
        }
    }

    @Test
    void readsABareNumberInTheUnitItWasShownIn() {
        Map<String, List<String>> fields = untouched(Lengths.INCH);
        fields.put("units", List.of("mm"));
        fields.put(Asked.SIZE + MARGIN, List.of("0.05"));
        Asked asked = Asked.of(book, fields);
        assertThat(asked.choice().changed()).containsExactly(entry(MARGIN, 0.05 * 25.4));
        assertThat(asked.typed()).containsExactly(entry(MARGIN, "0.05 in"));
    }

    @Test
    void putsASizeBack() {
        Map<String, List<String>> fields = untouched(Lengths.MM);
        fields.put(Asked.SIZE + MARGIN, List.of("1.3"));
        assertThat(Asked.of(book, fields).typed()).containsOnlyKeys(MARGIN);
        fields.put("back", List.of(MARGIN));
        assertThat(Asked.of(book, fields).typed()).isEmpty();
    }

    @Test
    void tellsEveryFaultAtOnceAndKeepsWhatWasTyped() {
        Map<String, List<String>> fields = untouched(Lengths.MM);
        fields.put(Asked.SIZE + MARGIN, List.of("thin"));
        fields.put("teeth", List.of("half"));
        fields.put("clearance", List.of("-1"));
        fields.put("piston", List.of("none such"));
        Asked asked = Asked.of(book, fields);
        assertThat(asked.faults()).containsOnlyKeys(Asked.SIZE + MARGIN, "teeth", "clearance", "piston");
        assertThat(asked.typed()).containsExactly(entry(MARGIN, "thin"));
        assertThat(asked.teeth()).isEqualTo("half");
        assertThat(asked.clearance()).isEqualTo("-1");
    }
}
