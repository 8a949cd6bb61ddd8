package gudgeon.store.journal;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.StepBegun;
import gudgeon.rebuild.journal.Fact.StepDone;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A journal as a text file. */
class JournalFileTest {
    private static final List<Entry> TWO = List.of(
            new Entry("e1", Instant.parse("2026-01-01T09:01:00Z"), "bench", 0, new StepBegun("fit-crank")),
            new Entry("e3", Instant.parse("2026-01-01T09:03:00Z"), "bench", 1, new StepDone("fit-crank", "")));

    @Test
    void aFileWrittenByHandMayLeaveOutWhatCanBeKnown() {
        assertThat(JournalFile.read("{\"type\":\"step-begun\",\"version\":1,\"step\":\"fit-crank\"}\n\n"
                        + "{\"type\":\"step-done\",\"version\":1,\"step\":\"fit-crank\"}"))
                .isEqualTo(new Reading.Read(TWO));
    }

    @Test
    void whatIsWrittenReads() {
        assertThat(JournalFile.read(JournalFile.write(TWO))).isEqualTo(new Reading.Read(TWO));
        assertThat(JournalFile.read("")).isEqualTo(new Reading.Read(List.of()));
    }

    @Test
    void everyFaultIsToldWithItsLine() {
        assertThat(JournalFile.read("""
                        {"type":"step-begun","version":1,"step":"a","key":"x"}
                        nothing
                        {"type":"step-done","version":1,"step":"a","key":"x"}
                        {"type":"step-done","version":1}
                        """))
                .isInstanceOfSatisfying(
                        Reading.Refused.class,
                        refused -> assertThat(refused.sentences())
                                .hasSize(3)
                                .anyMatch(sentence -> sentence.startsWith("Line 2 is not JSON"))
                                .anyMatch(sentence -> sentence.startsWith("Line 3: 'key' is x, as in line 1"))
                                .anyMatch(sentence -> sentence.startsWith("Line 4: 'step' is missing")));
    }
}
