package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.measured;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.journal.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;

class GasketThicknessRuleTest {
    private static List<Alarm> with(String position, String pressed) {
        return Told.alarms(
                new GasketThicknessRule(new Fits()),
                TrialFitRuleTest.BOOK,
                entered("new", position, Origin.PATTERN),
                measured(position, "new", "pressed", pressed));
    }

    @Test
    void seesAThinnerHeadGasketAndSaysWhatItChanges() {
        assertThat(with("head-gasket", "0.50 ± 0.03")).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("head-gasket");
            assertThat(alarm.severity()).isEqualTo(Severity.LOOK);
            assertThat(alarm.what()).contains("0.50 mm").contains("1.00 mm");
            assertThat(alarm.figures())
                    .anyMatch(figure -> figure.matches("Deck gap: 1.05 mm before, 0.55 mm with it."))
                    .anyMatch(figure -> figure.startsWith("Bore gap of the exhaust valve"))
                    .anyMatch(figure -> figure.startsWith("Compression ratio"));
        });
    }

    @Test
    void stopsWhenTheCrownWouldTouch() {
        assertThat(with("base-gasket", "0.10").stream().map(Alarm::severity)).containsExactly(Severity.LOOK);
        assertThat(Told.alarms(
                        new GasketThicknessRule(new Fits()),
                        TrialFitRuleTest.BOOK,
                        measured("piston", "", "pockets.exhaust.depth", "1.2"),
                        entered("new", "head-gasket", Origin.PATTERN),
                        measured("head-gasket", "new", "pressed", "0.05")))
                .extracting(Alarm::severity)
                .containsExactly(Severity.STOP);
    }

    @Test
    void seesABaseGasketMoveTheCrown() {
        assertThat(with("base-gasket", "0.85 ± 0.03"))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.figures())
                        .anyMatch(figure -> figure.matches("Deck gap: 1.05 mm before, 1.50 mm with it.")));
    }

    @Test
    void gasketsOfOneKindDifferALittle() {
        assertThat(with("head-gasket", "1.04 ± 0.03")).isEmpty();
        assertThat(with("base-gasket", "0.42")).isEmpty();
        // more than a twentieth, but less than can be told
        assertThat(with("base-gasket", "0.46 ± 0.10")).isEmpty();
    }
}
