package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.failed;
import static gudgeon.rebuild.alarm.Told.passed;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CamTimingRuleTest {
    static final EngineBook BOOK = Told.withFigures("""
            positions:
              - {id: piston, name: piston, sizes: pistons}
              - {id: cam-chain, name: cam chain}
            steps:
              - {id: fit, name: Fit piston and chain, fits: [piston, cam-chain]}
            checks:
              - {id: cam-timing, name: Cam timing, how: measured, clears: [cam-chain], expect: {at-least: -5 deg, at-most: 5 deg}}
              - {id: ignition-timing, name: Ignition timing, how: measured, clears: [cam-chain], expect: {at-least: -2 deg, at-most: 2 deg}}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new CamTimingRule(), BOOK, facts);
    }

    /** The sprocket has 28 teeth: one is 720° / 28 = 25.7° of the crank. */
    @ParameterizedTest
    @CsvSource({
        "26 deg, one tooth late",
        "-25, one tooth early",
        "50 deg, 2 teeth late",
        "12°, no whole tooth",
        "exhaust 27 deg and inlet 25 deg, one tooth late"
    })
    void namesTheTeeth(String reading, String teeth) {
        assertThat(alarms(passed("cam-timing", reading))).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.CAM_TIMING);
            assertThat(alarm.at()).isEqualTo("cam-timing");
            assertThat(alarm.figures())
                    .isNotEmpty()
                    .allSatisfy(figure -> assertThat(figure).contains("25.7°").contains(teeth));
        });
    }

    @Test
    void isSilentWithinTheSpanAndOfTheIgnition() {
        assertThat(alarms(passed("cam-timing", "-4.5 deg"))).isEmpty();
        assertThat(alarms(passed("cam-timing"))).isEmpty();
        assertThat(alarms(failed("ignition-timing", "26 deg"))).isEmpty();
    }

    @Test
    void aFailureNeedsNoReading() {
        assertThat(alarms(failed("cam-timing", ""))).hasSize(1);
        assertThat(alarms(failed("cam-timing", ""), passed("cam-timing", "1 deg")))
                .isEmpty();
    }
}
