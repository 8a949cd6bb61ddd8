package gudgeon.store.source;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** The text of a file that a spreadsheet wrote, whatever letters and separators it used. */
final class SheetText {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final String SEPARATORS = ";\t,";

    private SheetText() {}

    /** In UTF-8 or, with its mark at the beginning, UTF-16; else in the letters of older spreadsheets, windows-1252. */
    static String of(byte[] content) {
        if (begins(content, 0xFF, 0xFE)) {
            return new String(content, 2, content.length - 2, StandardCharsets.UTF_16LE);
        }
        if (begins(content, 0xFE, 0xFF)) {
            return new String(content, 2, content.length - 2, StandardCharsets.UTF_16BE);
        }
        int from = begins(content, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content, from, content.length - from))
                    .toString();
        } catch (CharacterCodingException older) {
            return new String(content, WINDOWS);
        }
    }

    private static boolean begins(byte[] content, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (content.length <= i || (content[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** What parts the fields: of semicolon, tab and comma the one that the first line has most of, outside quotes. */
    static char separator(String text) {
        int[] counts = new int[SEPARATORS.length()];
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == '"') {
                quoted = !quoted;
            } else if (!quoted
                    && (letter == '\n' || letter == '\r')
                    && !text.substring(0, i).isBlank()) {
                break;
            } else if (!quoted && SEPARATORS.indexOf(letter) >= 0) {
                counts[SEPARATORS.indexOf(letter)]++;
            }
        }
        int most = 0;
        for (int i = 1; i < counts.length; i++) {
            most = counts[i] > counts[most] ? i : most;
        }
        return SEPARATORS.charAt(most);
    }
}
