package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.failed;
import static gudgeon.rebuild.alarm.Told.measured;
import static gudgeon.rebuild.alarm.Told.passed;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: shims, name: crank shims}
              - {id: exhaust-valve, name: exhaust valve, sizes: valves.exhaust}
            steps:
              - {id: fit, name: Fit them all, fits: [shims, exhaust-valve]}
            checks:
              - {id: end-float, name: Crank end float, how: measured, clears: [shims], expect: {at-least: 0.05, at-most: 0.20}}
              - {id: valve-clearance, name: Valve clearances, how: measured, clears: [exhaust-valve], expect: {at-least: 0.03, at-most: 0.07}}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new ReadingRule(), BOOK, facts);
    }

    @ParameterizedTest
    @CsvSource({"0.3 mm, 1", "0.01, 1", "0.05, 0", "0.2 mm, 0", "8 thou, 1", "4 thou, 0", "about right, 0", "'', 0"})
    void seesAPassOnAReadingOutOfLimits(String reading, int count) {
        assertThat(alarms(passed("end-float", reading))).hasSize(count);
    }

    @Test
    void aFailureOutOfLimitsSpeaksForItself() {
        assertThat(alarms(failed("end-float", "0.3 mm"))).isEmpty();
    }

    @Test
    void aValveWithoutClearanceNeverShuts() {
        assertThat(alarms(passed("valve-clearance", "exhaust 0 mm, inlet 0.05 mm")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.why()).contains("worn rings"));
        assertThat(alarms(failed("valve-clearance", "0.00"))).hasSize(1);
        assertThat(alarms(failed("valve-clearance", "0.20"))).isEmpty();
        assertThat(alarms(measured("exhaust-valve", "", "clearance", "0 mm")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.at()).isEqualTo("exhaust-valve"));
        assertThat(alarms(
                        entered("new", "exhaust-valve", Origin.PATTERN),
                        measured("exhaust-valve", "new", "clearance", "0.05")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,05|0.05",
                "0.05 / 0.06|0.05 0.06",
                "exhaust 0.05 mm; inlet -0.01 mm|0.05 -0.01",
                "1/2 in|12.7",
                "exhaust 0.05, inlet good|",
                "free|"
            })
    void readsSeveralFiguresOrNone(String reading, String figures) {
        List<String> read =
                Readings.of(reading, Unit.MM).stream().map(String::valueOf).toList();
        assertThat(String.join(" ", read)).isEqualTo(figures == null ? "" : figures);
    }
}
