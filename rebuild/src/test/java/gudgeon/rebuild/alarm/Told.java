package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Small books, and facts told of them one after another on one device, for the tests of this room. */
final class Told {
    private static final Path TARN = Path.of("..", "examples", "tarn-98.yaml");
    private static final String HEAD = "book: 1\nengine: {name: Tarn 98, maker: Merrow & Tull}\n";

    private Told() {}

    static EngineBook book(String structure) {
        return read(HEAD + structure);
    }

    /** A small structure with the figures of the invented engine. */
    static EngineBook withFigures(String structure) {
        try {
            EngineBook tarn = read(Files.readString(TARN));
            return new EngineBook(
                    tarn.engine(), tarn.geometry(), book(structure).structure());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The book of the invented engine with some joints more, each with its figures. */
    static EngineBook tarnWithJoints(String joints) {
        try {
            return read(Files.readString(TARN).replace("\njoints:\n", "\njoints:\n" + joints));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static EngineBook read(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    static Build build(EngineBook book, Fact... facts) {
        return after(Build.of(book), facts);
    }

    static Build after(Build build, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long seen = build.size() + entries.size();
            entries.add(new Entry("e" + (seen + 1), Instant.EPOCH.plusSeconds(60 * seen), "tablet", seen, fact));
        }
        return build.after(entries);
    }

    /** The alarms of a rule after some facts. */
    static List<Alarm> alarms(Rule rule, EngineBook book, Fact... facts) {
        return rule.alarms(build(book, facts)).toList();
    }

    static Fact together() {
        return new Fact.Started("98-1", "", Found.TOGETHER);
    }

    static Fact inPieces() {
        return new Fact.Started("98-1", "", Found.IN_PIECES);
    }

    static Fact begun(String step) {
        return new Fact.StepBegun(step);
    }

    static Fact done(String step) {
        return new Fact.StepDone(step, "");
    }

    static Fact undone(String step, String... toBuy) {
        return new Fact.Undone(step, "", List.of(toBuy));
    }

    static Fact off(String position) {
        return new Fact.TakenOff(position, 1, "7", "", "");
    }

    static Fact entered(String part, String position, Origin origin) {
        return new Fact.PartEntered(part, position, origin, 1, "");
    }

    static Fact measured(String position, String part, String size, String value) {
        return new Fact.Measured(position, part, Map.of(size, value));
    }

    static Fact compared(String position, String part, boolean agrees, String... what) {
        return new Fact.Compared(position, part, List.of(what), agrees, "");
    }

    static Fact fitted(String position, String part, int count) {
        return new Fact.Fitted(position, part, count, Way.NOT_SAID, "");
    }

    static Fact fitted(String position, Way way) {
        return new Fact.Fitted(position, "", 1, way, "");
    }

    static Fact passed(String check, String reading) {
        return new Fact.CheckPassed(check, reading, "");
    }

    static Fact passed(String check) {
        return passed(check, "");
    }

    static Fact failed(String check, String reading) {
        return new Fact.CheckFailed(check, reading, "");
    }
}
