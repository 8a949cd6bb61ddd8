package gudgeon.bench.drill;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.AlarmKind;
import gudgeon.rebuild.alarm.Replay;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plays every drill of {@code examples/drill}: the mistake must be caught in time, and its twin without it raise no alarm. */
class DrillTest {
    private static final Path FOLDERS = Path.of("..", "examples", "drill");
    private static final List<Drill> DRILLS = read();
    private static final Map<String, Replay> PLAYED = new HashMap<>();

    private static List<Drill> read() {
        try (Stream<Path> folders = Files.list(FOLDERS)) {
            return folders.filter(Files::isDirectory).sorted().map(Drill::of).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<Drill> drills() {
        return DRILLS;
    }

    private static Replay fault(Drill drill) {
        return PLAYED.computeIfAbsent(drill.folder() + " fault", key -> drill.replay("fault.jsonl"));
    }

    private static Replay sound(Drill drill) {
        return PLAYED.computeIfAbsent(drill.folder() + " sound", key -> drill.replay("sound.jsonl"));
    }

    @ParameterizedTest
    @MethodSource("drills")
    void theMistakeIsCaughtInTime(Drill drill) {
        Replay fault = fault(drill);
        assertThat(fault.build().unknown())
                .as("entries that the book knows nothing of")
                .isEmpty();
        assertThat(fault.build().size()).isGreaterThanOrEqualTo(drill.due());
        assertThat(drill.judged(fault)).as("%s", fault.turns()).isEqualTo(Drill.Outcome.CAUGHT);
    }

    @ParameterizedTest
    @MethodSource("drills")
    void itsTwinRaisesNoAlarmAtAll(Drill drill) {
        Replay sound = sound(drill);
        assertThat(sound.build().unknown())
                .as("entries that the book knows nothing of")
                .isEmpty();
        assertThat(sound.turns()).as("%s", drill).isEmpty();
    }

    @Test
    void eachKindOfAlarmThatADrillNamesIsOne() {
        List<String> kinds =
                Arrays.stream(AlarmKind.values()).map(AlarmKind::key).toList();
        assertThat(drills()).extracting(Drill::kind).isSubsetOf(kinds);
    }

    /** Every mistake of the list that this tells of has its folder. */
    @Test
    void everyNumberHasItsDrill() {
        assertThat(drills())
                .extracting(drill -> drill.folder().getFileName().toString().substring(0, 2))
                .contains(
                        "01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12", "13", "14", "15", "16",
                        "17", "18", "19", "20", "21", "22", "23", "24", "25", "26", "27", "31", "34", "35", "36", "37",
                        "38", "40");
    }

    @Test
    void aMistakeThatIsNotMadeIsNotCaught() {
        assertThat(drills())
                .allSatisfy(drill -> assertThat(drill.judged(sound(drill))).isEqualTo(Drill.Outcome.MISSED));
    }

    @Test
    void anAlarmAfterItsTimeIsLate() {
        assertThat(drills()).allSatisfy(drill -> {
            Drill sooner =
                    new Drill(drill.folder(), drill.mistake(), drill.book(), drill.kind(), drill.at(), drill.due() - 1);
            assertThat(sooner.judged(fault(drill))).isEqualTo(Drill.Outcome.LATE);
        });
    }

    @Test
    void anAlarmOfAnotherKindOrAtAnotherPlaceDoesNotCount() {
        assertThat(drills()).allSatisfy(drill -> {
            Drill elsewhere =
                    new Drill(drill.folder(), drill.mistake(), drill.book(), drill.kind(), "tappet-caps", drill.due());
            assertThat(elsewhere.judged(fault(drill))).isEqualTo(Drill.Outcome.MISSED);
        });
    }
}
