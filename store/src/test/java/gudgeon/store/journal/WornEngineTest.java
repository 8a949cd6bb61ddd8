package gudgeon.store.journal;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The example of a worn engine: its journal goes with its book, and its readings come to the verdicts that it tells of. */
class WornEngineTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private final EngineBook book = book();
    private final List<Entry> entries = entries();

    private static EngineBook book() {
        if (new EngineBookReader().read(text("tarn-98.yaml")) instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError("the example's book is refused");
    }

    private static List<Entry> entries() {
        Reading reading = JournalFile.read(text("tarn-98-worn.jsonl"));
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).entries();
    }

    private static String text(String example) {
        try {
            return Files.readString(EXAMPLES.resolve(example));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void noEntryIsRefusedAndEachNamesWhatTheBookHas() {
        Build build = Build.of(book);
        for (Entry entry : entries) {
            if (!entry.key().equals("worn-1")) {
                assertThat(Refusals.of(build, entry.fact())).as(entry.key()).isEmpty();
            }
            build = build.after(List.of(entry));
        }
        assertThat(build.unknown()).isEmpty();
        assertThat(build.told(Ordered.class)).hasSize(3);
        assertThat(build.told(Offered.class)).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void whatTheVernierCanNotProveTheMicrometerDoes() {
        assertThat(outcome(before("micrometer"), "pin-diameter")).isEqualTo(Outcome.UNPROVEN);
        assertThat(outcome(whole(), "pin-diameter")).isEqualTo(Outcome.IN_LIMITS);
        assertThat(Verdict.all(whole())).extracting(Verdict::outcome).doesNotContain(Outcome.UNPROVEN);
    }

    @Test
    void theTopEndIsWornWhereItsLastOwnerHeardIt() {
        Build build = whole();
        assertThat(outcome(build, "bore")).isEqualTo(Outcome.OUT_OF_LIMITS);
        assertThat(outcome(build, "ring-gap-top")).isEqualTo(Outcome.OUT_OF_LIMITS);
        assertThat(outcome(build, "exhaust-guide-bore")).isEqualTo(Outcome.OUT_OF_LIMITS);
        assertThat(outcome(build, "exhaust-stem")).isEqualTo(Outcome.IN_LIMITS);
        assertThat(outcome(build, "inlet-stem-clearance")).isEqualTo(Outcome.IN_LIMITS);
        assertThat(outcome(build, "compression-height")).isEqualTo(Outcome.IN_LIMITS);
    }

    @Test
    void noAlarmIsLeftStandingByHonestWearAndAnOversizeThatCleansUp() {
        assertThat(Alarms.of(whole())).isEmpty();
    }

    private Build whole() {
        return Build.of(book).after(entries);
    }

    /** The build before the gudgeon pin was read with a micrometer. */
    private Build before(String kind) {
        int first = 0;
        while (!(entries.get(first).fact() instanceof ReadingTaken reading
                && reading.dimension().equals("pin-diameter")
                && reading.instrument().startsWith(kind))) {
            first++;
        }
        return Build.of(book).after(entries.subList(0, first));
    }

    private Outcome outcome(Build build, String dimension) {
        return Verdict.of(build, book.structure().dimension(dimension).orElseThrow())
                .outcome();
    }
}
