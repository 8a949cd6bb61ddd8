package gudgeon.store.source;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is understood of the files that spreadsheets write, and what is said of the rest. */
class PartsFileTest {
    static final Build BUILD = build();

    private static Build build() {
        BookReading reading = new EngineBookReader().read("""
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: piston, name: piston}
              - {id: head-gasket, name: Zylinderkopfdichtung für links, single-use: true}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston]}
            """);
        if (reading instanceof BookReading.Read read) {
            return Build.of(read.book()).asIf(List.of(new Fact.Started("98-1", "", Found.TOGETHER)));
        }
        throw new AssertionError(reading.faults());
    }

    private static PartsFile read(String text) {
        return PartsFile.of(BUILD, text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aGermanSpreadsheetsFileIsRead() {
        String text = String.join(
                "\r\n",
                "\uFEFFPosition;Part;From;Price;Currency;Ordered;Order;Promised;Postage",
                "",
                "piston;\"Kolben; 0,25\";Low Quay Workshop;42,50;EUR;1;Mai;31.5.2024;4,90 €",
                "Zylinderkopfdichtung für links;;Low Quay Workshop;1.234,50;EUR;2,0;Mai;;",
                "");
        for (byte[] bytes : List.of(
                text.getBytes(StandardCharsets.UTF_8),
                text.getBytes(StandardCharsets.UTF_16LE),
                text.substring(1).getBytes(Charset.forName("windows-1252")))) {
            PartsFile file = PartsFile.of(BUILD, bytes);
            assertThat(file.faults()).isEmpty();
            assertThat(file.notes()).containsExactly("Days such as 31.5.2024 were read as day, month, year.");
            assertThat(file.facts())
                    .containsExactly(
                            new Ordered(
                                    "Mai",
                                    "piston",
                                    "Kolben; 0,25",
                                    Optional.empty(),
                                    1,
                                    "Low Quay Workshop",
                                    "42,50 EUR",
                                    Optional.empty(),
                                    Optional.of(LocalDate.of(2024, 5, 31)),
                                    Map.of()),
                            new PostagePaid("Mai", "4,90 €"),
                            new Ordered("Mai", "head-gasket", 2, "Low Quay Workshop", "1.234,50 EUR"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void offersAndArrivalsAreToldByWhatIsFilledIn(String separator) {
        PartsFile file = read("""
                position,from,price,origin,days least,days,days most,order,ordered,arrived,remark
                piston,Merrow & Tull,39 EUR,pattern,3,5,9,,,,
                piston,,,,,,,A,1,1,in its box
                head-gasket,,,,,,,,,,
                """.replace(",", separator));
        assertThat(file.faults()).isEmpty();
        assertThat(file.facts())
                .containsExactly(
                        new Offered(
                                "piston",
                                "",
                                Optional.of(Origin.PATTERN),
                                "Merrow & Tull",
                                "39 EUR",
                                Optional.of(new Days(3, 5, 9)),
                                Map.of()),
                        new Ordered("A", "piston", 1, "", ""),
                        new Arrived("A", "piston", 1, "in its box"));
    }

    @Test
    void whatWasOfferedAlreadyIsNotToldAgain() {
        PartsFile file = read("position,from,price\npiston,Low Quay,39 EUR\n");
        assertThat(file.facts()).hasSize(1);
        assertThat(PartsFile.of(BUILD.asIf(file.facts()), file.text()).facts()).isEmpty();
        assertThat(PartsFile.of(BUILD.asIf(file.facts()), file.text().replace("39", "40"))
                        .facts())
                .hasSize(1);
    }

    @Test
    void everyLineThatIsNotUnderstoodIsNamedWithItsNumberAndTheOthersAreRead() {
        PartsFile file = read("""
                position,from,price,colour,ordered,arrived,order,promised
                piston,Low Quay,39 EUR,red,1,,A,
                pistol,Low Quay,39 EUR,,1,,A,
                ,Low Quay,39 EUR,,1,,A,
                piston,Low Quay,39,,1,,A,
                piston,,39 EUR,,,,,
                piston,Low Quay,39 EUR,,one,,A,03/04/2024
                piston,,,,,1,B,
                piston,,,,,1,A,
                """);
        assertThat(file.facts()).hasSize(2);
        assertThat(file.notes()).containsExactly("Columns that tell nothing here: colour.");
        assertThat(file.faults()).extracting(PartsFile.Fault::line).containsExactly(3, 4, 5, 6, 7, 8);
        assertThat(file.faults())
                .extracting(PartsFile.Fault::sentence)
                .satisfiesExactly(
                        said -> assertThat(said).contains("no position 'pistol'"),
                        said -> assertThat(said).contains("does not say for which position"),
                        said -> assertThat(said).contains("has no currency"),
                        said -> assertThat(said).contains("does not say who offers it"),
                        said -> assertThat(said).contains("'one' under 'ordered' is not a whole number"),
                        said -> assertThat(said).contains("No order 'B' for the piston"));
        assertThat(file.sentence()).isEqualTo("2 entries understood, 6 lines not.");
    }

    @Test
    void whatIsNoTableIsRefusedWithASentence() {
        assertThat(read("").faults())
                .extracting(PartsFile.Fault::sentence)
                .containsExactly("The file is empty. Write the columns' names in its first line.");
        assertThat(read("a,b\n1,2\n").faults().get(0).sentence()).contains("No column is headed 'position'");
        assertThat(PartsFile.of(BUILD, new byte[PartsFile.LARGEST + 1])
                        .faults()
                        .get(0)
                        .sentence())
                .contains("larger than 1 MB");
        assertThat(read("position,from\npiston,\"Low Quay\n").facts()).isEmpty();
        assertThat(read("position,from\n" + "piston,Low Quay\n".repeat(2001))
                        .faults()
                        .get(0)
                        .sentence())
                .contains("more than 2000 lines");
        byte[] noise = new byte[4096];
        new Random(4).nextBytes(noise);
        assertThat(PartsFile.of(BUILD, noise).facts()).isEmpty();
    }
}
