package gudgeon.rebuild.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The text of a book's file, if it is one. */
final class BookText {
    /** A book of many pistons is a few thousand lines; a larger file is not a book. */
    static final int LARGEST = 1 << 20;

    private BookText() {}

    /**
     * Reads no more than the largest size allowed.
     *
     * @throws IOException if the stream can't be read
     */
    static Optional<String> of(InputStream stream, Faults faults) throws IOException {
        byte[] bytes = stream.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            faults.ofFile(
                    "The file is larger than 1 MB, so it is not an engine book.", "Check that it is the right file.");
            return Optional.empty();
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                faults.ofFile(
                        "The file holds bytes that are not text, so it is not an engine book.",
                        "An engine book is a plain text file, saved as UTF-8.");
                return Optional.empty();
            }
        }
        return decoded(bytes, faults).filter(text -> accepted(text, faults));
    }

    /** Whether a text can be a book at all; says why if not. */
    static boolean accepted(String text, Faults faults) {
        if (text.length() > LARGEST) {
            faults.ofFile(
                    "The text is larger than 1 MB, so it is not an engine book.", "Check that it is the right file.");
            return false;
        }
        if (text.isBlank()) {
            faults.ofFile("The file is empty.", "Start it with 'book: 1', then 'engine:', see docs/engine-book.md.");
            return false;
        }
        return true;
    }

    private static Optional<String> decoded(byte[] bytes, Faults faults) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = (int) text.chars().filter(c -> c == '\n').count() + 1;
            int column = text.length() - text.lastIndexOf('\n');
            faults.fault(
                    new Where(line, column),
                    "",
                    "This letter is not written in UTF-8.",
                    "Save the file as UTF-8 in your editor; ± and ° are the letters this happens to most.");
            return Optional.empty();
        }
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }
}
