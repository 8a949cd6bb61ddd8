package gudgeon.bench.web.record;

import gudgeon.rebuild.record.Wish;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A record that is being made, or was.
 *
 * @param kind what comes out
 * @param wish what is in it
 * @param entries how many entries the journal had then
 * @param share how far it is, from 0 to 1
 * @param file the file, once it is done
 * @param fault why it could not be made, a sentence; empty if nothing went wrong
 */
public record Making(Kind kind, Wish wish, long entries, double share, Optional<Path> file, String fault) {
    /** What a record comes out as. */
    public enum Kind {
        PDF("PDF to print or send", "pdf", "application/pdf"),
        PAGE("one web page", "html", "text/html; charset=utf-8");

        private final String words;
        private final String ending;
        private final String mediaType;

        Kind(String words, String ending, String mediaType) {
            this.words = words;
            this.ending = ending;
            this.mediaType = mediaType;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }

        /** The ending of its file. */
        public String ending() {
            return ending;
        }

        String mediaType() {
            return mediaType;
        }
    }

    /** Whether it is still being made. */
    public boolean isUnderWay() {
        return file.isEmpty() && fault.isEmpty();
    }

    /** How far it is, in per cent. */
    public int percent() {
        return (int) Math.round(100 * share);
    }

    Making at(double now) {
        return new Making(kind, wish, entries, now, file, fault);
    }

    Making done(Path made) {
        return new Making(kind, wish, entries, 1, Optional.of(made), "");
    }

    Making failed(String why) {
        return new Making(kind, wish, entries, share, Optional.empty(), why);
    }
}
