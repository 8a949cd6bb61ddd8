package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.failed;
import static gudgeon.rebuild.alarm.Told.measured;
import static gudgeon.rebuild.alarm.Told.passed;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;

class AlarmsTest {
    @Test
    void putsTheWorstFirstAndTellsEachTroubleOnce() {
        List<Alarm> alarms = Alarms.of(Told.build(
                TrialFitRuleTest.BOOK,
                entered("thin", "head-gasket", Origin.PATTERN),
                entered("copy", "piston", Origin.PATTERN),
                measured("piston", "copy", "pockets.exhaust.depth", "0.2")));
        assertThat(alarms).extracting(Alarm::severity).isSorted();
        assertThat(alarms).extracting(alarm -> alarm.kind() + alarm.at()).doesNotHaveDuplicates();
        assertThat(alarms.get(0).at()).isEqualTo("piston");
        assertThat(alarms).extracting(Alarm::kind).contains(AlarmKind.VALVE_TOUCHES, AlarmKind.GASKET_THICKNESS);
    }

    /** What is remembered must not change what is told. */
    @Test
    void tellsTheSameWithWhatItRemembers() {
        Alarms remembering = new Alarms();
        Build build = Build.of(TrialFitRuleTest.BOOK);
        for (String depth : List.of("2.0", "0.2", "0.4", "2.0", "0.2")) {
            build = Told.after(build, measured("piston", "", "pockets.exhaust.depth", depth));
            assertThat(remembering.standing(build)).isEqualTo(Alarms.of(build));
        }
    }

    @Test
    void aReplayTellsWhenAlarmsComeAndGo() {
        Build build = Told.build(
                HoldPointRuleTest.BOOK,
                begun("close-case"),
                passed("gears-by-hand"),
                failed("gears-by-hand", ""),
                begun("close-case"));
        Replay replay = Replay.of(HoldPointRuleTest.BOOK, build.entries());
        assertThat(replay.turns()).extracting(Replay.Turn::number).containsExactly(1L, 2L, 4L);
        assertThat(replay.turns().get(1).gone()).extracting(Alarm::kind).containsExactly(AlarmKind.HOLD_POINT);
        assertThat(replay.standing()).isEqualTo(Alarms.of(build));
    }
}
