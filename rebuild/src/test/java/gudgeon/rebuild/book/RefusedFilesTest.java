package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Files that are no engine book are refused with a sentence, and nothing that is typed ends in a stack trace. */
class RefusedFilesTest {
    private static final String BOMB = """
            a: &a [x, x, x, x, x, x, x, x, x]
            b: &b [*a, *a, *a, *a, *a, *a, *a, *a]
            c: &c [*b, *b, *b, *b, *b, *b, *b, *b]
            d: [*c, *c, *c, *c, *c, *c, *c, *c]
            """;

    @Test
    void aliasesAreRefusedWhereTheFirstStands() {
        Fault fault = only(BOMB);
        assertThat(fault.sentence())
                .isEqualTo(
                        "Line 2, column 8: The alias *a points to another place of the file, which an engine book does"
                                + " not use. Write the value out here.");
    }

    @Test
    void nestingIsRefused() {
        assertThat(only("[".repeat(100_000)).sentence()).contains("more than 20 deep");
        assertThat(only("a: ".repeat(1) + "{a: ".repeat(50_000)).sentence()).contains("more than 20 deep");
    }

    @Test
    void tagsDocumentsAndKeysThatAreNoWordsAreRefused() {
        assertThat(only("book: !!java.net.URL [x]").what()).contains("The tag");
        assertThat(only("book: !!int 1").what()).contains("The tag");
        assertThat(only("book: 1\n---\nbook: 1\n").what()).contains("A second document begins here");
        assertThat(only("? [a, b]\n: 1\n").what()).contains("stands here as a key");
    }

    @Test
    void aFileOfFiftyMegabytesIsNotReadWhole() throws IOException {
        CountedStream huge = new CountedStream(50_000_000);
        BookReading reading = new EngineBookReader().read(huge);
        assertThat(Books.sentences(reading))
                .containsExactly(
                        "The file is larger than 1 MB, so it is not an engine book. Check that it is the right file.");
        assertThat(huge.given).isLessThan(2_000_000);
    }

    @Test
    void whatIsNotTextIsRefused() throws IOException {
        assertThat(read(new byte[] {'b', 0, 'k'}))
                .containsExactly(
                        "The file holds bytes that are not text, so it is not an engine book. An engine book is a plain text file, saved as UTF-8.");
        assertThat(read("book: 1\nengine: {name: Tarn ±}".getBytes(StandardCharsets.ISO_8859_1)))
                .singleElement()
                .satisfies(
                        said -> assertThat(said).startsWith("Line 2, column 21: This letter is not written in UTF-8."));
        assertThat(read(new byte[0]))
                .singleElement()
                .satisfies(said -> assertThat(said).startsWith("The file is empty."));
        assertThat(Books.sentences(new EngineBookReader().read("# only a remark\n")))
                .singleElement()
                .satisfies(said -> assertThat(said).startsWith("The file holds no keys."));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsDoNoHarm() throws IOException {
        byte[] text = ("\uFEFF" + Books.tarn().replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8);
        assertThat(new EngineBookReader().read(new ByteArrayInputStream(text))).isInstanceOf(BookReading.Read.class);
    }

    @Test
    void yamlThatCannotBeReadSaysWhere() {
        assertThat(only("book: 1\nengine:\n\tname: Tarn\n").sentence())
                .isEqualTo(
                        "Line 3, column 1: A tab stands in the indentation of this line. Use spaces: YAML does not allow"
                                + " tabs there.");
        assertThat(only("book: 1\nengine: name: Tarn\n").sentence())
                .startsWith("Line 2, column 13: ")
                .contains("A colon stands where none can be.");
        assertThat(only("book: 1\nengine: {name: Tarn\n").sentence()).contains("A '{' is not closed");
        assertThat(only("book: 1\nengine: \"Tarn\n").sentence()).contains("A quotation mark is not closed.");
        assertThat(only("book: 1\nengine: a\u0007b\n").sentence()).contains("U+0007");
    }

    @Test
    void manyFaultsAreCutToWhatAPersonWouldRead() {
        String many = "x: 1\n".repeat(100_000);
        assertThat(new EngineBookReader().read(many).faults()).hasSizeBetween(100, 210);
    }

    @Property(tries = 300)
    void anyTextIsReadOrRefused(@ForAll String text) {
        BookReading reading = new EngineBookReader().read(text);
        assertThat(reading).isInstanceOf(BookReading.Refused.class);
        assertThat(reading.faults())
                .isNotEmpty()
                .allSatisfy(fault -> assertThat(fault.sentence()).doesNotContain("null"));
    }

    @Property(tries = 150)
    void aBookWithAnyDamageIsReadOrRefused(@ForAll("damage") String damage, @ForAll int where, @ForAll byte cut) {
        String tarn = Books.tarn();
        int at = Math.floorMod(where, tarn.length());
        int to = Math.min(tarn.length(), at + Math.floorMod(cut, 30));
        BookReading reading = new EngineBookReader().read(tarn.substring(0, at) + damage + tarn.substring(to));
        if (reading instanceof BookReading.Refused) {
            assertThat(reading.faults()).isNotEmpty();
        } else {
            assertThat(((BookReading.Read) reading)
                            .book()
                            .geometry()
                            .orElseThrow()
                            .sizes())
                    .isNotEmpty();
        }
    }

    @Provide
    Arbitrary<String> damage() {
        return Arbitraries.strings()
                .withChars(" \n\t:-,.[]{}&*!'\"#|>%@`?~±°09azOl/")
                .ofMaxLength(6);
    }

    private static Fault only(String text) {
        BookReading reading = new EngineBookReader().read(text);
        assertThat(reading).isInstanceOf(BookReading.Refused.class);
        assertThat(reading.faults()).hasSize(1);
        return reading.faults().get(0);
    }

    private static List<String> read(byte[] bytes) throws IOException {
        return Books.sentences(new EngineBookReader().read(new ByteArrayInputStream(bytes)));
    }

    /** A stream of letters that counts how many were asked for. */
    private static final class CountedStream extends InputStream {
        private final int length;
        private int given;

        CountedStream(int length) {
            this.length = length;
        }

        @Override
        public int read() {
            return given++ < length ? 'a' : -1;
        }

        @Override
        public int read(byte[] into, int from, int most) {
            if (given >= length) {
                return -1;
            }
            int giving = Math.min(most, length - given);
            Arrays.fill(into, from, from + giving, (byte) 'a');
            given += giving;
            return giving;
        }
    }
}
