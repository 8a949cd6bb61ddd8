package gudgeon.rebuild.timing;

import gudgeon.mechanics.timing.Flanks;
import gudgeon.mechanics.valvetrain.LiftEvents;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.BookedLift;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.IgnitionSize;
import gudgeon.rebuild.journal.Proving.IgnitionRead;
import gudgeon.rebuild.journal.Proving.LobeRead;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** The invented engine with a cam that stands where a test puts it. */
final class Tarn {
    static final EngineBook BOOK = book(text -> text);

    private Tarn() {}

    static EngineBook book(UnaryOperator<String> change) {
        try {
            String text = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
            BookReading reading = new EngineBookReader().read(change.apply(text));
            if (reading instanceof BookReading.Read read) {
                return read.book();
            }
            throw new AssertionError(
                    reading.faults().stream().map(Fault::sentence).toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Build after(EngineBook book, List<? extends Fact> facts) {
        return Build.of(book).asIf(facts);
    }

    static Build after(Fact... facts) {
        return after(BOOK, List.of(facts));
    }

    /** What a disc would read of a valve whose cam stands some degrees late, to a tenth. */
    static LobeRead lobe(String valve, double liftMm, double lateDeg) {
        ValveEntry entry = BOOK.geometry().orElseThrow().valve(valve).orElseThrow();
        LiftEvents events = LiftEvents.of(BookedLift.of(entry), liftMm);
        Flanks flanks = new Flanks(events.opensDeg(), events.closesDeg());
        return new LobeRead(
                valve,
                String.format(Locale.ROOT, "%.2f mm", liftMm),
                String.format(Locale.ROOT, "%.1f", flanks.opensDeg() + lateDeg),
                String.format(Locale.ROOT, "%.1f", flanks.closesDeg() + lateDeg),
                "");
    }

    static IgnitionRead opens(String value) {
        return new IgnitionRead(IgnitionSize.OPENS, value, "");
    }

    static IgnitionRead gap(String value) {
        return new IgnitionRead(IgnitionSize.GAP, value, "");
    }

    static IgnitionRead dwell(String value) {
        return new IgnitionRead(IgnitionSize.DWELL, value, "");
    }
}
