package gudgeon.store.source;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.source.PartsList;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A list that goes out comes back the same, and no spreadsheet takes any of it for a formula. */
class PartsTableTest {
    private static final EngineBook BOOK = ((BookReading.Read) new EngineBookReader().read("""
                    book: 1
                    engine: {name: Tarn 98, maker: Merrow & Tull}
                    positions:
                      - {id: clips, name: circlips, quantity: 2, single-use: true}
                      - {id: head-gasket, name: head gasket, single-use: true}
                    steps:
                      - {id: fit-piston, name: Fit the piston, fits: [clips, head-gasket]}
                    """)).book();

    private static final Offered OFFER = new Offered(
            "clips",
            "=HYPERLINK(\"x\")",
            Optional.empty(),
            "-Low Quay-",
            "0.90 EUR",
            Optional.of(new Days(2, 4, 9)),
            Map.of());

    private static Build build(Fact... more) {
        return Build.of(BOOK)
                .asIf(List.of(new Fact.Started("98-1", "", Found.IN_PIECES)))
                .asIf(List.of(more));
    }

    private static String table(Build build) {
        return PartsTable.text(PartsList.of(build, LocalDate.of(2026, 3, 3)));
    }

    @Test
    void whatGoesOutComesBackTheSameAndIsNoFormula() {
        String text = table(build(OFFER));
        assertThat(text)
                .startsWith("\uFEFFposition,")
                .contains("'=HYPERLINK")
                .contains(",'-Low Quay-,")
                .doesNotContain(",=")
                .doesNotContain(",-")
                .doesNotContain(",\"=");
        PartsFile back = PartsFile.of(build(), text.getBytes(StandardCharsets.UTF_8));
        assertThat(back.faults()).isEmpty();
        assertThat(back.facts()).isEqualTo(List.of(OFFER));
        assertThat(PartsFile.of(build(OFFER), text.getBytes(StandardCharsets.UTF_8))
                        .facts())
                .as("told once is enough")
                .isEmpty();
    }

    @Test
    void whatIsOrderedIsNotOrderedAgainByReadingTheListBack() {
        Build ordered = build(new Ordered("A", "head-gasket", 1, "Low Quay Workshop", "7 EUR"));
        String text = table(ordered);
        assertThat(text.lines().filter(line -> line.contains("head-gasket"))).hasSize(1);
        assertThat(PartsFile.of(ordered, text.getBytes(StandardCharsets.UTF_8)).facts())
                .isEmpty();
    }
}
