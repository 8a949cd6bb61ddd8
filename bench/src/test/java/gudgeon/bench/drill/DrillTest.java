package gudgeon.bench.drill;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.drill.Expected;
import gudgeon.rebuild.drill.Outcome;
import gudgeon.store.drill.Drill;
import gudgeon.store.drill.DrillReader;
import gudgeon.store.drill.DrillReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The drills of {@code examples/drill} can be read, and what counts as caught, late and missed. */
class DrillTest {
    private static final Path FOLDERS = Path.of("..", "examples", "drill");
    private static final List<Drill> DRILLS = read();
    private static final Map<String, Replay> PLAYED = new HashMap<>();

    private static List<Drill> read() {
        DrillReader reader = new DrillReader();
        try {
            return DrillReader.folders(FOLDERS).stream()
                    .map(folder -> reader.read(FOLDERS, folder))
                    .map(DrillTest::drill)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Drill drill(DrillReading reading) {
        if (reading instanceof DrillReading.Refused refused) {
            throw new AssertionError(refused.sentences());
        }
        return ((DrillReading.Read) reading).drill();
    }

    /** Those of an engine without a figure of its top end, which are played in no time. */
    private static List<Drill> quick() {
        return DRILLS.stream()
                .filter(drill -> drill.book().geometry().isEmpty())
                .toList();
    }

    private static Replay fault(Drill drill) {
        return PLAYED.computeIfAbsent(
                drill.name() + " fault", key -> drill.asWritten().playedFault(new Alarms()));
    }

    private static Replay sound(Drill drill) {
        return PLAYED.computeIfAbsent(
                drill.name() + " sound", key -> drill.asWritten().playedSound(new Alarms()));
    }

    /** Every mistake of the list has its drills. */
    @Test
    void everyNumberHasItsDrill() {
        List<String> numbers = IntStream.rangeClosed(1, 42)
                .mapToObj(number -> String.format("%02d", number))
                .toList();
        assertThat(DRILLS).extracting(Drill::of).containsAll(numbers);
    }

    @Test
    void aMistakeThatIsNotMadeIsNotCaught() {
        assertThat(quick())
                .isNotEmpty()
                .allSatisfy(drill ->
                        assertThat(drill.expected().outcome(sound(drill))).isEqualTo(Outcome.MISSED));
    }

    @Test
    void anAlarmAfterItsTimeIsLate() {
        assertThat(quick()).isNotEmpty().allSatisfy(drill -> {
            Expected sooner = drill.expected().dueAt(drill.expected().due() - 1);
            assertThat(sooner.outcome(fault(drill))).isEqualTo(Outcome.LATE);
        });
    }

    @Test
    void anAlarmAtAnotherPlaceDoesNotCount() {
        assertThat(quick()).isNotEmpty().allSatisfy(drill -> {
            Expected elsewhere = new Expected(
                    drill.expected().kind(), "elsewhere", drill.expected().due());
            assertThat(elsewhere.outcome(fault(drill))).isEqualTo(Outcome.MISSED);
        });
    }
}
