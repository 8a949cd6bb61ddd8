package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.measured;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TrialFitRuleTest {
    static final EngineBook BOOK = Told.withFigures("""
            positions:
              - {id: piston, name: piston, sizes: pistons}
              - {id: base-gasket, name: base gasket, sizes: base-gasket, pressed: 0.40 ± 0.03}
              - {id: head-gasket, name: head gasket, sizes: gaskets}
              - {id: exhaust-valve, name: exhaust valve, sizes: valves.exhaust}
              - {id: inlet-valve, name: inlet valve, sizes: valves.inlet}
            steps:
              - {id: fit, name: Fit them all, fits: [piston, base-gasket, head-gasket, exhaust-valve, inlet-valve]}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new TrialFitRule(new Fits()), BOOK, facts);
    }

    @Test
    void seesAPocketThatIsTooShallowAtTheEntryThatSaysSo() {
        Fact piston = entered("copy", "piston", Origin.PATTERN);
        assertThat(alarms(piston)).isEmpty();
        assertThat(alarms(piston, measured("piston", "copy", "pockets.exhaust.depth", "0.2")))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.kind()).isEqualTo(AlarmKind.VALVE_TOUCHES);
                    assertThat(alarm.severity()).isEqualTo(Severity.STOP);
                    assertThat(alarm.at()).isEqualTo("piston");
                    assertThat(alarm.what()).startsWith("The exhaust valve and the crown touch");
                    assertThat(alarm.evidence()).containsExactly(2L);
                });
        assertThat(alarms(piston, measured("piston", "copy", "pockets.exhaust.depth", "2.0")))
                .isEmpty();
    }

    /** A deeper pocket never raises an alarm that a shallower one did not: also where touching can be neither told nor ruled out. */
    @Test
    void theAlarmEndsOnceAsThePocketGrowsDeeper() {
        Fact piston = entered("copy", "piston", Origin.PATTERN);
        List<Boolean> raised = IntStream.rangeClosed(0, 20)
                .mapToObj(tenths -> !alarms(
                                piston,
                                measured(
                                        "piston",
                                        "copy",
                                        "pockets.exhaust.depth",
                                        String.format(Locale.ROOT, "%.1f with depth-micrometer", tenths / 10.0)))
                        .isEmpty())
                .toList();
        assertThat(raised.get(6))
                .as("0.04 mm within 0.19 mm, where 1.00 mm is wanted")
                .isTrue();
        assertThat(raised).isSortedAccordingTo(Comparator.reverseOrder()).endsWith(false);
    }

    @Test
    void knowsAPistonThatTheBookHas() {
        assertThat(alarms(entered("pattern", "piston", Origin.PATTERN)))
                .extracting(Alarm::at)
                .containsExactly("piston");
    }

    @Test
    void goesWhenThePistonIsNotToBeUsed() {
        Fact piston = entered("pattern", "piston", Origin.PATTERN);
        Fact refused = new Fact.Disposed("piston", "pattern", Disposition.REPLACE, "Pocket too shallow.");
        assertThat(alarms(piston, refused)).isEmpty();
        Fact taken = new Fact.Disposed("piston", "pattern", Disposition.USE_AGAIN, "Pocket cut deeper.");
        assertThat(alarms(piston, refused, taken)).isNotEmpty();
    }

    @Test
    void seesACrownThatMeetsTheHead() {
        assertThat(alarms(
                        entered("copy", "piston", Origin.PATTERN),
                        measured("piston", "copy", "compression-height", "28.60")))
                .filteredOn(alarm -> alarm.kind() == AlarmKind.DECK_GAP)
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.severity()).isEqualTo(Severity.STOP));
    }

    /** The gasket was measured last, but the piston is to blame. */
    @Test
    void blamesThePartWithoutWhichItWouldBeSound() {
        assertThat(alarms(
                        entered("copy", "piston", Origin.PATTERN),
                        measured("piston", "copy", "pockets.exhaust.depth", "0.2"),
                        entered("new", "head-gasket", Origin.PATTERN),
                        measured("head-gasket", "new", "pressed", "1.01")))
                .extracting(Alarm::at)
                .containsOnly("piston");
    }

    @Test
    void seesTwoLargerValvesMeet() {
        assertThat(alarms(measured("exhaust-valve", "", "head", "22.0"), measured("inlet-valve", "", "head", "25.6")))
                .anySatisfy(alarm -> {
                    assertThat(alarm.at()).isEqualTo("inlet-valve");
                    assertThat(alarm.severity()).isEqualTo(Severity.STOP);
                });
    }

    @Test
    void saysNothingOfABookWithoutFigures() {
        EngineBook bare = new EngineBook(BOOK.engine(), Optional.empty(), BOOK.structure());
        assertThat(Told.alarms(new TrialFitRule(new Fits()), bare, measured("piston", "", "land", "49")))
                .isEmpty();
    }
}
