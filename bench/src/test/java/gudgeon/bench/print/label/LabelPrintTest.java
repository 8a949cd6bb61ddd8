package gudgeon.bench.print.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.label.LabelPages.OnSheet;
import gudgeon.bench.print.label.ReadBack.Seen;
import gudgeon.rebuild.bag.Bag;
import gudgeon.rebuild.bag.BagLabel;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact.TakenOff;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels, measured back from the file and read by an independent reader of codes. */
class LabelPrintTest {
    private static final BagAddress PHONE = new BagAddress("http://192.168.1.20:8080", "tarn-98-1", "Tarn 98 no. 1187");

    private final LabelPrint print = new LabelPrint(new Pdf());

    /** A build of which that many parts came off, each into a bag of its own. */
    private static Build build(int parts, String bag) {
        StringBuilder book = new StringBuilder("book: 1\nengine: {name: Tarn 98}\npositions:\n");
        IntStream.rangeClosed(1, parts)
                .forEach(i -> book.append("  - {id: p")
                        .append(i)
                        .append(", name: clutch spring ")
                        .append(i)
                        .append(", quantity: 4, space: wet}\n"));
        book.append("steps:\n  - {id: close, name: close the clutch, fits: [p1]}\n");
        try {
            BookReading reading = new EngineBookReader()
                    .read(new ByteArrayInputStream(book.toString().getBytes(StandardCharsets.UTF_8)));
            assertThat(reading).as(() -> reading.faults().toString()).isInstanceOf(BookReading.Read.class);
            return Build.of(((BookReading.Read) reading).book())
                    .asIf(IntStream.rangeClosed(1, parts)
                            .mapToObj(i -> new TakenOff("p" + i, 4, bag + i, "shelf A", ""))
                            .toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static LabelPages pages(Build build, LabelSheet sheet, int first, BagAddress address) {
        LabelPages.Asked asked = LabelPages.of(BagLabel.all(build, ZoneOffset.UTC), sheet, first, address, false);
        assertThat(asked).as(asked::toString).isInstanceOf(LabelPages.Asked.Ready.class);
        return ((LabelPages.Asked.Ready) asked).pages();
    }

    @ParameterizedTest
    @EnumSource(CommonSheet.class)
    void everyCodeOpensItsBagAndLiesWhereTheSheetHasIt(CommonSheet common) {
        LabelSheet sheet = common.sheet();
        LabelPages pages = pages(build(sheet.count(), ""), sheet, 1, PHONE);
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            assertThat(paper.pages()).isEqualTo(1);
            BufferedImage image = paper.image(0);
            for (OnSheet one : pages.pages().get(0)) {
                Code code = one.placed().code().orElseThrow();
                Seen seen = ReadBack.code(image, sheet, one.slot()).orElseThrow();
                assertThat(seen.text())
                        .isEqualTo("http://192.168.1.20:8080/builds/tarn-98-1/bag?of=" + (one.slot() + 1));
                double module = LabelPages.px(one.placed().codeSize()) * 25.4 / 96 / code.modules();
                double finder = 7.5 * module;
                assertThat(seen.x())
                        .isCloseTo(sheet.leftOf(one.slot()) + one.placed().codeLeft() + finder, within(0.2));
                assertThat(seen.y())
                        .isCloseTo(sheet.topOf(one.slot()) + one.placed().codeTop() + finder, within(0.2));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(CommonSheet.class)
    void textsLieWithinTheirLabelAndBesideTheCode(CommonSheet common) {
        LabelSheet sheet = common.sheet();
        LabelPages pages = pages(build(sheet.count(), ""), sheet, 1, PHONE);
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            List<ReadBack.Written> written = paper.written(0);
            for (OnSheet one : pages.pages().get(0)) {
                double left = sheet.leftOf(one.slot());
                double top = sheet.topOf(one.slot());
                assertThat(written).anySatisfy(text -> {
                    assertThat(text.text()).startsWith("Bag " + (one.slot() + 1));
                    assertThat(text.x() - left)
                            .isCloseTo(one.placed().lines().get(0).left(), within(0.4));
                    assertThat(text.y() - top).isBetween(3.0, 9.0);
                });
            }
            assertThat(paper.text().replaceAll("\\s+", " "))
                    .contains("4 × clutch spring 1", "wet side", "Tarn 98 no. 1187", "1970-01-01");
        }
    }

    @Test
    void theCommonSheetsAreThoseOfThePacks() {
        // 99.1 × 38.1 mm, 14 to the sheet: margins of 4.65 and 15.15 mm, 101.6 mm from column to column, as packs of
        // such labels say
        LabelSheet fourteen = CommonSheet.A4_14.sheet();
        assertThat(fourteen.left()).isCloseTo(4.65, within(0.01));
        assertThat(fourteen.top()).isCloseTo(15.15, within(0.01));
        assertThat(fourteen.leftOf(1) - fourteen.leftOf(0)).isCloseTo(101.6, within(0.01));
        // 2⅝ × 1 in, 30 to the sheet: margins of 3/16 and 1/2 in, 2¾ in from column to column
        LabelSheet thirty = CommonSheet.LETTER_30.sheet();
        assertThat(thirty.left()).isCloseTo(25.4 * 3 / 16, within(0.01));
        assertThat(thirty.top()).isCloseTo(25.4 / 2, within(0.01));
        assertThat(thirty.leftOf(1) - thirty.leftOf(0)).isCloseTo(25.4 * 2.75, within(0.01));
        assertThat(thirty.topOf(3) - thirty.topOf(0)).isCloseTo(25.4, within(0.01));
        for (CommonSheet common : CommonSheet.values()) {
            assertThat(common.sheet().faults()).as(common.word()).isEmpty();
        }
    }

    @Test
    void aBegunSheetIsGoneOnWith() {
        LabelPages pages = pages(build(20, "A"), CommonSheet.A4_14.sheet(), 12, PHONE);
        assertThat(pages.pages()).hasSize(3);
        assertThat(pages.pages().get(0)).extracting(OnSheet::slot).containsExactly(11, 12, 13);
        assertThat(pages.pages().get(1).get(0).slot()).isZero();
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            BufferedImage image = paper.image(0);
            assertThat(ReadBack.code(image, pages.sheet(), 10)).isEmpty();
            assertThat(ReadBack.code(image, pages.sheet(), 11).map(Seen::text))
                    .hasValue("http://192.168.1.20:8080/builds/tarn-98-1/bag?of=A1");
        }
    }

    @Test
    void twoHundredBagsEachHaveALabel() {
        LabelPages pages = pages(build(200, ""), CommonSheet.LETTER_30.sheet(), 1, PHONE);
        assertThat(pages.pages()).hasSize(7);
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            assertThat(paper.pages()).isEqualTo(7);
            String text = paper.text();
            Set<String> missing = new TreeSet<>();
            IntStream.rangeClosed(1, 200)
                    .mapToObj(i -> "clutch spring " + i)
                    .filter(name -> !text.contains(name))
                    .forEach(missing::add);
            assertThat(missing).isEmpty();
            assertThat(text).contains("sheet 7 of 7");
        }
    }

    @Test
    void withoutAnAddressTheCodeNamesTheBagAndTheSheetSaysSo() {
        BagAddress none = new BagAddress("", "tarn-98-1", "Tarn 98 <no. 1187>");
        LabelPages pages = pages(build(3, "front "), CommonSheet.A4_14.sheet(), 1, none);
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            assertThat(ReadBack.code(paper.image(0), pages.sheet(), 1).map(Seen::text))
                    .hasValue("Bag front 2, Tarn 98 <no. 1187>");
            assertThat(paper.text()).contains("The codes hold only the name of bag and build", "Tarn 98 <no. 1187>");
        }
    }

    @Test
    void longNamesStayInTheirLabel() {
        String bag = "tray on the upper shelf behind the lathe with the cracked corner, number ";
        BagAddress long0 = new BagAddress("", "", "Tarn 98 of the Low Quay Workshop with the long ÄÖÜ name & more");
        LabelPages pages = pages(build(24, bag), CommonSheet.A4_24.sheet(), 1, long0);
        for (OnSheet one : pages.pages().get(0)) {
            assertThat(one.placed().lines())
                    .allSatisfy(line -> assertThat(line.top() + 4.1)
                            .isLessThanOrEqualTo(pages.sheet().height() - 2.9));
        }
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            BufferedImage image = paper.image(0);
            for (ReadBack.Written written : paper.written(0)) {
                assertThat(written.x()).isLessThan(210);
            }
            assertThat(ReadBack.code(image, pages.sheet(), 23).map(Seen::text)).hasValue(bag + "24, " + long0.name());
        }
    }

    @Test
    void aCodeThatWouldBeTooFineIsLeftOutAndNamed() {
        LabelPages pages = pages(build(2, "x".repeat(400)), CommonSheet.LETTER_30.sheet(), 1, PHONE);
        assertThat(pages.pages().get(0))
                .allSatisfy(one -> assertThat(one.placed().code()).isEmpty());
        assertThat(pages.sentences())
                .anySatisfy(sentence -> assertThat(sentence).startsWith("Without a code"));
    }

    @Test
    void aTrialShowsEveryOutlineAndALineOfHundredMillimetres() {
        LabelPages pages = ((LabelPages.Asked.Ready)
                        LabelPages.of(BagLabel.empty(build(1, "7"), 24), CommonSheet.A4_24.sheet(), 1, PHONE, true))
                .pages();
        try (ReadBack paper = new ReadBack(print.of(pages))) {
            assertThat(paper.pages()).isEqualTo(2);
            BufferedImage image = paper.image(0);
            // the outline between the first two columns and the first two rows, and white beside it
            assertThat(darkest(image, 70, 20)).isLessThan(100);
            assertThat(darkest(image, 10, 37.5)).isLessThan(100);
            assertThat(darkest(image, 67.5, 35.8)).isGreaterThan(200);
            assertThat(paper.text())
                    .contains("This line is 100 mm", "Bag 72", "Bag 95", "A4, 3 × 8 labels of 70 × 37 mm");
            assertThat(ReadBack.code(image, pages.sheet(), 0).map(Seen::text))
                    .hasValue("http://192.168.1.20:8080/builds/tarn-98-1/bag?of=72");
        }
    }

    /** The darkest grey within half a millimetre of a place, 0 to 255. */
    private static int darkest(BufferedImage image, double x, double y) {
        int middleX = (int) Math.round(x * ReadBack.DOTS_PER_MM);
        int middleY = (int) Math.round(y * ReadBack.DOTS_PER_MM);
        return IntStream.rangeClosed(-6, 6)
                .flatMap(dx -> IntStream.rangeClosed(-6, 6)
                        .map(dy -> image.getRaster().getSample(middleX + dx, middleY + dy, 0)))
                .min()
                .orElseThrow();
    }

    @Test
    void lettersAreInTheFileAndItsTitleAndTongueAreSaid() throws IOException {
        try (ReadBack paper = new ReadBack(print.of(pages(build(5, ""), CommonSheet.A4_21.sheet(), 1, PHONE)))) {
            assertThat(paper.document().getDocumentInformation().getTitle()).isEqualTo("Bag labels, Tarn 98 no. 1187");
            assertThat(paper.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(paper.document().getDocumentCatalog().getMarkInfo().isMarked())
                    .isTrue();
            for (PDPage page : paper.document().getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 15, -3})
    void aFirstLabelThatTheSheetDoesNotHaveIsRefused(int first) {
        assertThat(LabelPages.of(
                        BagLabel.all(build(1, ""), ZoneOffset.UTC), CommonSheet.A4_14.sheet(), first, PHONE, false))
                .isEqualTo(new LabelPages.Asked.Refused(
                        List.of("The first free label must be from 1 to 14, not " + first + ".")));
    }

    @Test
    void nothingToLabelIsSaid() {
        assertThat(((LabelPages.Asked.Refused) LabelPages.of(List.of(), CommonSheet.A4_14.sheet(), 1, PHONE, false))
                        .sentences())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("There is nothing to label");
    }

    @Test
    void aSheetThatDoesNotFitIsRefusedWithAllReasons() {
        SheetWish.Read read = new SheetWish("", "A5", "3 x 8", "70 x 37", "", "").read();
        assertThat(((SheetWish.Read.Refused) read).sentences())
                .containsExactly(
                        "3 labels of 70 mm need 210 mm across, and A5 has 148 mm. Take fewer or smaller ones, or another"
                                + " paper.",
                        "8 labels of 37 mm need 296 mm from top to bottom, and A5 has 210 mm. Take fewer or smaller ones,"
                                + " or another paper.");
        assertThat(((SheetWish.Read.Refused) new SheetWish("", "A9", "many", "20 x 10", "", "").read()).sentences())
                .hasSize(2);
        assertThat(((SheetWish.Read.Refused) new SheetWish("a4-25", "", "", "", "", "").read()).sentences())
                .hasSize(1)
                .first()
                .asString()
                .contains("known are a4-24, a4-21, a4-14, letter-30, letter-14");
        assertThat(((SheetWish.Read.Refused) new SheetWish("", "A4", "2 x 2.5", "70 x 37", "", "").read()).sentences())
                .hasSize(1);
    }

    @Test
    void aSheetOfOnesOwnIsReadInMillimetresAndInches() {
        LabelSheet own = ((SheetWish.Read.Sheet)
                        new SheetWish("", "letter", "3x10", "2.625 x 1 in", "0.125 × 0 in", "0.1875 x 0.5 in").read())
                .sheet();
        assertThat(own.width()).isCloseTo(66.675, within(1e-9));
        assertThat(own.left()).isCloseTo(4.7625, within(1e-9));
        assertThat(own.paper()).isEqualTo(Paper.LETTER);
        LabelSheet comma =
                ((SheetWish.Read.Sheet) new SheetWish("", "A4", "2 x 7", "99,1 x 38,1", "2,5 x 0", "").read()).sheet();
        assertThat(comma).isEqualTo(CommonSheet.A4_14.sheet());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"192.168.1.20:8080", "ftp://a.b", "http://", "http://a b", "http://a/?x=1", "javascript:alert(1)"
            })
    void whatIsNoAddressIsRefused(String typed) {
        assertThat(BagAddress.typed(typed)).isInstanceOf(BagAddress.Asked.Refused.class);
    }

    @Test
    void anAddressOfThisComputerAloneIsSaidToBeSo() {
        assertThat(BagAddress.typed(" http://127.0.0.1:8080/ "))
                .isEqualTo(new BagAddress.Asked.Usable("http://127.0.0.1:8080"));
        assertThat(new BagAddress("http://127.0.0.1:8080", "a", "b").sentence()).contains("a phone can't");
        assertThat(BagAddress.path("b", new Bag("front 1/ä&?", List.of())))
                .isEqualTo("/builds/b/bag?of=front%201%2F%C3%A4%26%3F");
    }
}
