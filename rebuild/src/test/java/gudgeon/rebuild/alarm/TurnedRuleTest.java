package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.fitted;
import static gudgeon.rebuild.alarm.Told.undone;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Way;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurnedRuleTest {
    private static final String STRUCTURE = """
            positions:
              - {id: piston, name: piston, sizes: pistons, mark: arrow to the exhaust}
              - {id: seal, name: seal, mark: lip towards the oil}
              - {id: pin, name: gudgeon pin}
            steps:
              - {id: fit, name: Fit them all, fits: [piston, seal, pin]}
            """;

    private static List<Alarm> alarms(String structure, Fact... facts) {
        EngineBook book = Told.withFigures(structure);
        return Told.alarms(new TurnedRule(new Fits()), book, facts);
    }

    @Test
    void seesAPistonTurned() {
        assertThat(alarms(STRUCTURE, fitted("piston", Way.TURNED)))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.kind()).isEqualTo(AlarmKind.PISTON_TURNED);
                    assertThat(alarm.at()).isEqualTo("piston");
                    assertThat(alarm.what()).contains("arrow to the exhaust");
                    assertThat(alarm.figures()).isNotEmpty();
                });
        assertThat(alarms(STRUCTURE, fitted("piston", Way.AS_MARKED))).isEmpty();
        assertThat(alarms(STRUCTURE, fitted("piston", Way.TURNED), undone("fit")))
                .isEmpty();
        assertThat(alarms(STRUCTURE, fitted("piston", Way.TURNED), fitted("piston", Way.AS_MARKED)))
                .isEmpty();
    }

    /** Its pockets tell. */
    @Test
    void seesAPistonTurnedThatHasNoMark() {
        assertThat(alarms(STRUCTURE.replace(", mark: arrow to the exhaust", ""), fitted("piston", Way.TURNED)))
                .extracting(Alarm::kind)
                .containsExactly(AlarmKind.PISTON_TURNED);
    }

    @Test
    void anotherPartMattersOnlyWithAMark() {
        assertThat(alarms(STRUCTURE, fitted("seal", Way.TURNED), fitted("pin", Way.TURNED)))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.kind()).isEqualTo(AlarmKind.TURNED);
                    assertThat(alarm.at()).isEqualTo("seal");
                });
    }
}
