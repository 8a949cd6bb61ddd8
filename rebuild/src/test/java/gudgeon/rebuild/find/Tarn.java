package gudgeon.rebuild.find;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Finding.HuntOpened;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Recurs;
import gudgeon.rebuild.journal.Trouble;
import gudgeon.rebuild.journal.Turning;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The invented engine, built up, and facts of a search told of it, for the tests of this room. */
final class Tarn {
    static final EngineBook BOOK = read();
    static final String HUNT = "tight";

    private Tarn() {}

    private static EngineBook read() {
        try {
            BookReading reading =
                    new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
            return ((BookReading.Read) reading).book();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The engine as it came, together, and what was told after a search was opened. */
    static Build build(Fact... facts) {
        return build(BOOK, List.of(facts));
    }

    static Build build(EngineBook book, List<? extends Fact> facts) {
        List<Fact> all = new ArrayList<>();
        all.add(new Started("98-1", "", Found.TOGETHER));
        all.add(new HuntOpened(HUNT, Trouble.TIGHT_SPOT, ""));
        all.addAll(facts);
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : all) {
            int number = entries.size();
            entries.add(new Entry(
                    "k" + number,
                    Instant.parse("2026-03-02T08:00:00Z").plusSeconds(60L * number),
                    "tablet",
                    number,
                    fact));
        }
        return Build.of(book).after(entries);
    }

    static TightFelt felt(Turning way, double deg, Recurs recurs) {
        return new TightFelt(HUNT, way, (deg % 720 + 720) % 720, 3, true, recurs, "");
    }

    static TightFelt strokeUnknown(Turning way, double deg) {
        return new TightFelt(HUNT, way, (deg % 720 + 720) % 720, 3, false, Recurs.NOT_SAID, "");
    }

    static Tried tried(String test, String answer) {
        return new Tried(HUNT, test, answer, "");
    }

    static Ranking ranking(Build build) {
        return Ranking.of(build, Hunt.of(build, HUNT).orElseThrow());
    }
}
