package gudgeon.fuzz;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.lesson.Manuscript;
import gudgeon.rebuild.plan.Plan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;

/** An engine book is read the same every time; one that is taken can be planned by and keeps its every letter when it is written. */
public final class BookTarget {
    private static final Instant NOW = Instant.parse("2026-01-31T12:00:00Z");

    private BookTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        BookReading reading = read(input);
        reading.faults().stream().map(Fault::sentence).forEach(Promise::sentence);
        if (reading instanceof BookReading.Read read) {
            String text = new String(input, StandardCharsets.UTF_8);
            Promise.same(content(reading), content(read(input)), "the book");
            Promise.same(text, Manuscript.of(text).text(), "the book's text");
            use(read.book());
        } else {
            Promise.kept(!reading.faults().isEmpty(), "refused without a fault");
        }
    }

    private static BookReading read(byte[] input) {
        try {
            return new EngineBookReader().read(new ByteArrayInputStream(input));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** What a book says, as lists that can be compared. */
    private static List<?> content(BookReading reading) {
        if (reading instanceof BookReading.Read read) {
            EngineBook book = read.book();
            Structure structure = book.structure();
            return List.of(
                    book.engine(),
                    book.geometry(),
                    book.ignition(),
                    book.commissioning(),
                    structure.positions(),
                    structure.joints(),
                    structure.steps(),
                    structure.checks(),
                    structure.dimensions(),
                    structure.family(),
                    read.faults());
        }
        return List.of(reading.faults());
    }

    private static void use(EngineBook book) {
        Build build = Build.of(book);
        Plan.of(build, NOW).now().forEach(step -> Promise.sentence(step.name()));
        Alarms.of(build).forEach(alarm -> Promise.sentence(alarm.what()));
    }
}
