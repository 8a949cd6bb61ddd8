package gudgeon.bench.print.fasten;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.fasten.MeasuredBack.Ring;
import gudgeon.bench.print.fasten.MeasuredBack.Sheet;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Card;
import gudgeon.rebuild.fasten.CardHole;
import gudgeon.rebuild.fasten.JointNow;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cards, measured back from the file. */
class CardPrintTest {
    private static final String COVER = """
              - id: cover
                name: clutch cover
                shape: cover
                outline: [[0, 0], [82, 0], [82, 60], [0, 60]]
                holes:
                  - {id: h1, at: [6.0, 8.5], thread: M6, length: 40}
                  - {id: h2, at: [75.9, 8.5], thread: M6, length: 25}
                  - {id: h3, at: [75.9, 52.3], thread: M5, length: 25, left-hand: true}
                  - {id: h4, at: [6.0, 52.3], thread: M8}
            """;

    /** Thirty holes along the rim of a face that no usual sheet holds. */
    private static final String LARGE =
            "  - id: large\n    name: long case\n    outline: [[0, 0], [520, 0], [520, 390], [0, 390]]\n    holes:\n"
                    + IntStream.range(0, 30).mapToObj(CardPrintTest::rim).collect(Collectors.joining());

    private static String rim(int i) {
        return String.format(
                Locale.ROOT,
                "      - {id: h%d, at: [%.2f, %.2f], thread: M8, length: 30}%n",
                i,
                260 + 250 * Math.cos(i * Math.PI / 15),
                195 + 185 * Math.sin(i * Math.PI / 15));
    }

    private final CardPrint print = new CardPrint(new Pdf());

    private static Card card(String joints, String id) {
        String book =
                "book: 1\nengine: {name: Tarn 98}\njoints:\n" + joints + "steps:\n  - {id: close, name: close it}\n";
        try (InputStream stream = new ByteArrayInputStream(book.getBytes(StandardCharsets.UTF_8))) {
            BookReading reading = new EngineBookReader().read(stream);
            assertThat(reading).as(() -> reading.faults().toString()).isInstanceOf(BookReading.Read.class);
            Build build = Build.of(((BookReading.Read) reading).book());
            return Card.of(JointNow.of(build, id).orElseThrow());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static CardLayout layout(Card card, Paper paper) {
        return ((CardLayout.Asked.Ready) CardLayout.of(card, paper)).layout();
    }

    private List<Sheet> sheets(Card card, Paper paper) {
        return MeasuredBack.sheets(print.of("Tarn 98 no. 2043", layout(card, paper)));
    }

    private static void hasCheckLine(Sheet sheet) {
        assertThat(sheet.strokes())
                .filteredOn(stroke -> Math.abs(stroke.y1() - stroke.y2()) < 0.01)
                .anySatisfy(stroke -> assertThat(stroke.length()).isCloseTo(100.0, within(0.02)));
    }

    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "A5, 148, 210", "LETTER, 215.9, 279.4"})
    void theSheetAndTheLineAreTrue(Paper paper, double width, double height) {
        List<Sheet> sheets = sheets(card(COVER, "cover"), paper);
        assertThat(sheets).allSatisfy(sheet -> {
            assertThat(sheet.width()).isCloseTo(width, within(0.1));
            assertThat(sheet.height()).isCloseTo(height, within(0.1));
        });
        hasCheckLine(sheets.get(0));
    }

    @Test
    void holesLieTrueAndPassTheirScrew() {
        List<Ring> rings = sheets(card(COVER, "cover"), Paper.A4).get(0).rings();
        assertThat(rings).hasSize(4);
        Ring h1 = ring(rings, 0, 0, rings);
        Ring h3 = ring(rings, 1, 1, rings);
        assertThat(h3.x() - h1.x()).isCloseTo(69.9, within(0.05));
        assertThat(h3.y() - h1.y()).isCloseTo(43.8, within(0.05));
        assertThat(h1.diameter()).isCloseTo(6, within(0.02));
        assertThat(h3.diameter()).isCloseTo(5, within(0.02));
    }

    /** The ring at the left or right, below or above, of those found. */
    private static Ring ring(List<Ring> from, int right, int up, List<Ring> all) {
        double middleX = all.stream().mapToDouble(Ring::x).average().orElseThrow();
        double middleY = all.stream().mapToDouble(Ring::y).average().orElseThrow();
        return from.stream()
                .filter(ring -> (ring.x() > middleX) == (right == 1) && (ring.y() > middleY) == (up == 1))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void saysTurnFastenerAndWhatIsNotKnown() {
        String text =
                sheets(card(COVER, "cover"), Paper.A4).stream().map(Sheet::text).collect(Collectors.joining());
        assertThat(text)
                .contains("Tarn 98 no. 2043: Clutch cover", "M6 × 40", "M5 × 25", "M8 × ?", "left-hand thread")
                .contains("This line is 100 mm", "sheet 1 of 1", "Seen from outside");
    }

    @ParameterizedTest
    @CsvSource({"A4", "A5", "LETTER"})
    void everyHoleIsWholeOnOneSheetAtLeast(Paper paper) {
        Card card = card(LARGE, "large");
        CardLayout layout = layout(card, paper);
        List<Drawing> drawings = layout.drawings();
        assertThat(drawings).hasSizeGreaterThan(3);
        List<Sheet> sheets = sheets(card, paper);
        for (CardHole hole : card.holes()) {
            Point at = hole.at().orElseThrow();
            List<Integer> whole = IntStream.range(0, drawings.size())
                    .filter(i -> drawings.get(i).window().holds(at.x(), at.y(), 4))
                    .boxed()
                    .toList();
            assertThat(whole).as(hole.hole().id()).isNotEmpty();
            for (int i : whole) {
                double x =
                        CardLayout.MARGIN_MM + at.x() - drawings.get(i).window().left();
                double y = layout.sheet().heightMm()
                        - CardLayout.BAND_MM
                        - (drawings.get(i).window().top() - at.y());
                assertThat(sheets.get(i).rings()).as(hole.hole().id()).anySatisfy(ring -> {
                    assertThat(ring.x()).isCloseTo(x, within(0.1));
                    assertThat(ring.y()).isCloseTo(y, within(0.1));
                });
            }
        }
    }

    @Test
    void eachSheetOfALargeCardHasItsNumberLineAndMarks() {
        Card card = card(LARGE, "large");
        CardLayout layout = layout(card, Paper.A4);
        List<Sheet> sheets = sheets(card, Paper.A4);
        for (int i = 0; i < layout.drawings().size(); i++) {
            hasCheckLine(sheets.get(i));
            assertThat(sheets.get(i).text())
                    .contains("sheet " + (i + 1) + " of " + sheets.size(), "Tarn 98 no. 2043: Long case")
                    .contains("Part " + (i + 1) + " of " + layout.drawings().size());
        }
        layout.tiling()
                .marks()
                .forEach(mark -> assertThat(layout.drawings().stream()
                                .filter(drawing -> drawing.registers().stream()
                                        .anyMatch(register -> register.name().equals(mark.name()))))
                        .as(mark.name())
                        .hasSizeGreaterThanOrEqualTo(2));
        assertThat(sheets).anySatisfy(sheet -> assertThat(sheet.text()).contains("Which goes where"));
    }

    @Test
    void hostileNamesComeOutAsText() {
        Card card = card(COVER.replace("clutch cover", "\"<script>&\\\"]]> \\u0007\\u0416\\u6f22 cover\""), "cover");
        byte[] file = print.of("</style><b>Tarn\u0000\uD800", layout(card, Paper.A4));
        String text = MeasuredBack.sheets(file).get(0).text();
        assertThat(text).contains("</style><b>Tarn", "<script>&\"]]>", "\u0416");
    }

    @Test
    void whatCanNotBeDrawnIsRefusedWithASentence() {
        assertThat(CardLayout.of(card("  - {id: bare, name: bare joint}\n", "bare"), Paper.A4))
                .isInstanceOfSatisfying(
                        CardLayout.Asked.Refused.class,
                        refused -> assertThat(refused.sentence())
                                .contains("Bare joint has no hole with a place", "by numbers, or from a photo"));
        assertThat(CardLayout.of(card(COVER.replace("[82, 0]", "[90000, 0]"), "cover"), Paper.A4))
                .isInstanceOfSatisfying(
                        CardLayout.Asked.Refused.class,
                        refused -> assertThat(refused.sentence()).contains("sheets of A4 at true size"));
    }
}
