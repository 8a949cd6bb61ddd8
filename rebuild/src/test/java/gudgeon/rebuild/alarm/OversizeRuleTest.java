package gudgeon.rebuild.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.bore.Worn;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing;
import java.util.List;
import org.junit.jupiter.api.Test;

class OversizeRuleTest {
    private static List<Alarm> alarms(double worst, Fact... more) {
        return new OversizeRule()
                .alarms(Worn.build(Worn.bore(50.05, worst, 50.015, 50.015, more)))
                .toList();
    }

    @Test
    void seesAnOversizeThatDoesNotCleanUp() {
        assertThat(alarms(50.25, Worn.ordered("50.225 mm"))).singleElement().satisfies(alarm -> {
            assertThat(alarm.severity()).isEqualTo(Severity.STOP);
            assertThat(alarm.at()).isEqualTo("piston");
            assertThat(alarm.figures())
                    .singleElement()
                    .asString()
                    .contains("50.350 mm")
                    .contains("0.105 mm more");
            assertThat(alarm.evidence()).startsWith(7L);
        });
    }

    @Test
    void whatIsNotProvedIsOnlyToBeLookedAt() {
        assertThat(alarms(50.13, Worn.ordered("50.225 mm")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.severity()).isEqualTo(Severity.LOOK));
    }

    @Test
    void isSilentOnOneThatDoes() {
        assertThat(alarms(50.25, Worn.ordered("50.475 mm"))).isEmpty();
        assertThat(alarms(50.09, Worn.ordered("50.225 mm"))).isEmpty();
    }

    @Test
    void aPistonForTheBoreAsItIsNeedsNoBoring() {
        assertThat(alarms(50.05, Worn.ordered("49.97 mm"))).isEmpty();
        assertThat(alarms(50.25, Worn.ordered("49.90 mm"))).hasSize(1);
    }

    @Test
    void whatWasNotSaidOrNotMeasuredOrWentBackIsNotJudged() {
        assertThat(alarms(50.25, new Sourcing.Ordered("A", "piston", 1, "a shop", "")))
                .isEmpty();
        assertThat(new OversizeRule().alarms(Worn.build(Worn.ordered("50.225 mm"))))
                .isEmpty();
        assertThat(alarms(
                        50.25, Worn.ordered("50.225 mm"), new Sourcing.Returned("A", "piston", "", 1, "too small", "")))
                .isEmpty();
    }

    @Test
    void onceTheBarrelIsBoredTheOldBoreIsNoMeasure() {
        assertThat(alarms(
                        50.25,
                        Worn.ordered("50.475 mm"),
                        Worn.sent(),
                        Worn.back(),
                        Worn.reading("bore", "", "top, along the pin", 50.50)))
                .isEmpty();
    }
}
