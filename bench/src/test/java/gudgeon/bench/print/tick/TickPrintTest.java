package gudgeon.bench.print.tick;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.tick.TickList;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TickPrintTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static Build build() throws IOException {
        BookReading reading = new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
        List<Fact> facts = List.of(
                new Started("Tarn 98", "", Found.IN_PIECES),
                new CheckPassed("oilways-proved", "", ""),
                new Ordered("A", "piston", 1, "Quillfeather Spares", "41.50 EUR"));
        return Build.of(((BookReading.Read) reading).book()).asIf(facts);
    }

    private static PDDocument printed(TickList.Kind kind) throws IOException {
        TickList list = TickList.of(kind, build(), DAY);
        return Loader.loadPDF(new TickPrint(new Pdf()).of("Tarn 98 no. 1187", list, Paper.A4, DAY));
    }

    @ParameterizedTest
    @EnumSource(TickList.Kind.class)
    void everySheetHasNameDayNumberAndItsLetters(TickList.Kind kind) throws IOException {
        try (PDDocument document = printed(kind)) {
            int sheets = document.getNumberOfPages();
            for (int sheet = 1; sheet <= sheets; sheet++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(sheet);
                text.setEndPage(sheet);
                assertThat(text.getText(document))
                        .contains("Tarn 98 no. 1187: " + kind.title() + ", 2026-11-25")
                        .contains("sheet " + sheet + " of " + sheets);
            }
            assertThat(document.getDocumentCatalog().getStructureTreeRoot())
                    .as("tagged")
                    .isNotNull();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void theStepsHaveTheirCautionsTheirStopsAndWhatIsDone() throws IOException {
        TickList steps = TickList.of(TickList.Kind.STEPS, build(), DAY);
        List<TickList.Line> lines = steps.groups().get(0).lines();
        assertThat(lines)
                .hasSize(build().structure().steps().size()
                        + build().structure().checks().size());
        assertThat(lines.stream().filter(TickList.Line::done)).hasSize(1);
        assertThat(lines).anyMatch(line -> line.stop() && line.words().contains("hold point"));
        try (PDDocument document = printed(TickList.Kind.STEPS)) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("Caution: Blow through oilways with goggles on", "stop here until it is done");
        }
    }

    @Test
    void eachListSaysItsOwn() throws IOException {
        assertThat(TickList.of(TickList.Kind.ORDER, build(), DAY).groups().toString())
                .contains("1 × piston");
        assertThat(TickList.of(TickList.Kind.MEASURING, build(), DAY).groups().toString())
                .contains("top of the rings' travel", "bore, mm");
        assertThat(TickList.of(TickList.Kind.FIRST_START, build(), DAY).groups().toString())
                .containsIgnoringCase("extinguisher");
    }
}
