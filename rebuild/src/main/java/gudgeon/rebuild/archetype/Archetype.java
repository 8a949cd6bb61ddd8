package gudgeon.rebuild.archetype;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** An engine book to start from. */
public enum Archetype {
    LYING_OVERHEAD_CAM_SINGLE(
            "lying-overhead-cam-single",
            "Lying overhead-cam single",
            "Parted crankcase, chain-driven cam, wet clutch, foot-change gearbox in the case."),
    UPRIGHT_PUSHROD_SINGLE(
            "upright-pushrod-single",
            "Upright pushrod single",
            "Enclosed rockers, gear-driven cam and magneto, dry sump, separate gearbox."),
    SIDE_VALVE_STATIONARY(
            "side-valve-stationary",
            "Side-valve stationary engine",
            "Splash oiling, governor, magneto, flywheel on a taper.");

    private final String id;
    private final String words;
    private final String note;

    Archetype(String id, String words, String note) {
        this.id = id;
        this.words = words;
        this.note = note;
    }

    /** What a fitter calls that kind of engine. */
    public String words() {
        return words;
    }

    /** What such an engine has, a sentence. */
    public String note() {
        return note;
    }

    /** The one of that id. */
    public static Optional<Archetype> of(String id) {
        return Arrays.stream(values())
                .filter(archetype -> archetype.id.equals(id))
                .findFirst();
    }

    /** Its name on the command line and in addresses. */
    public String id() {
        return id;
    }

    /** The text of its book, to be copied and filled in. */
    public String text() {
        try (InputStream stream = Archetype.class.getResourceAsStream(id + ".yaml")) {
            if (stream == null) {
                throw new IllegalStateException("the archetype " + id + " is not in the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Its book. */
    public EngineBook book() {
        if (new EngineBookReader().read(text()) instanceof BookReading.Read read) {
            return read.book();
        }
        throw new IllegalStateException("the archetype " + id + " has faults");
    }
}
