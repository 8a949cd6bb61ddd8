package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.measured;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.timing.CamTiming;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WentTightRuleTest {
    private static Fact tight(double forward, double backward) {
        return new Fact.WentTight(OptionalDouble.of(forward), OptionalDouble.of(backward), "");
    }

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new WentTightRule(new Fits()), CamTimingRuleTest.BOOK, facts);
    }

    /** Where it would go tight, felt by hand: a few degrees off. */
    private static Fact felt(int teeth, boolean turned, Fact... before) {
        AsMeasured parts =
                AsMeasured.of(Told.build(CamTimingRuleTest.BOOK, before)).orElseThrow();
        TrialFit fit = new Fits().of(parts, teeth, turned).orElseThrow();
        return tight(
                fit.tightForwardDeg().orElseThrow() + 2, fit.tightBackwardDeg().orElseThrow() - 2);
    }

    @ParameterizedTest
    @ValueSource(ints = {-2, -1, 1, 2})
    void knowsTheCamByWhereItGoesTight(int teeth) {
        assertThat(alarms(felt(teeth, false))).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.CAM_TIMING);
            assertThat(alarm.at()).isEqualTo("cam-timing");
            assertThat(alarm.what()).contains(CamTiming.teeth(teeth));
        });
    }

    @Test
    void knowsAPistonTurned() {
        assertThat(alarms(felt(0, true))).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.PISTON_TURNED);
            assertThat(alarm.at()).isEqualTo("piston");
        });
    }

    @Test
    void knowsThePartsAsMeasured() {
        Fact piston = entered("copy", "piston", Origin.PATTERN);
        Fact shallow = measured("piston", "copy", "pockets.exhaust.depth", "0.2");
        assertThat(alarms(piston, shallow, felt(0, false, piston, shallow)))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.kind()).isEqualTo(AlarmKind.WENT_TIGHT);
                    assertThat(alarm.what()).contains("parts as measured");
                });
    }

    @Test
    void saysWhenNothingExplainsIt() {
        assertThat(alarms(tight(90, 100)))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("no valve"));
        assertThat(alarms(new Fact.WentTight(OptionalDouble.empty(), OptionalDouble.empty(), "")))
                .hasSize(1);
        assertThat(alarms()).isEmpty();
    }

    @Test
    void goesWhenTheTopEndComesApart() {
        assertThat(alarms(tight(90, 100), Told.fitted("piston", "", 1), Told.undone("fit")))
                .isEmpty();
    }
}
