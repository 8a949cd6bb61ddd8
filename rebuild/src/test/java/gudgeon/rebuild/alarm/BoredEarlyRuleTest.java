package gudgeon.rebuild.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.bore.Worn;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Sourcing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoredEarlyRuleTest {
    private static final Fact PISTON = Worn.piston("copy");
    private static final Fact SKIRT = Worn.reading("piston-skirt", "copy", "", 50.46);

    private static List<Alarm> alarms(Fact... facts) {
        return new BoredEarlyRule().alarms(Worn.build(facts)).toList();
    }

    @Test
    void seesABarrelSentOffWithoutItsPiston() {
        assertThat(alarms(Worn.sent())).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("barrel");
            assertThat(alarm.what()).isEqualTo("The barrel went off to be bored, and no piston for it is in hand.");
            assertThat(alarm.evidence()).containsExactly(2L);
        });
        assertThat(alarms(PISTON, Worn.sent()))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("'copy' has not been measured"));
    }

    @Test
    void aPistonInHandAndMeasuredSilencesIt() {
        assertThat(alarms(PISTON, SKIRT, Worn.sent())).isEmpty();
        assertThat(alarms(Worn.sent(), PISTON, SKIRT)).isEmpty();
    }

    @Test
    void otherWorkNeedsNoPiston() {
        Fact fins = new Sourcing.WorkSent("barrel", "", "a welder", "mend a fin", "", Optional.empty());
        Fact other = new Sourcing.WorkSent("barrel", "", "a shop", "Re-bored to suit", "", Optional.empty());
        assertThat(alarms(fins)).isEmpty();
        assertThat(alarms(other)).hasSize(1);
    }

    @Test
    void seesTheWrongClearanceOfTheFinishedBore() {
        Fact[] tight = {PISTON, SKIRT, Worn.sent(), Worn.back(), bore(50.475)};
        assertThat(alarms(tight)).singleElement().satisfies(alarm -> {
            assertThat(alarm.what()).contains("a clearance of 0.015").contains("0.02 mm to 0.05 mm is wanted");
            assertThat(alarm.why()).contains("nips up");
            assertThat(alarm.evidence()).containsExactly(6L);
        });
        assertThat(alarms(PISTON, SKIRT, Worn.sent(), Worn.back(), bore(50.53)))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.why()).contains("knocks"));
        assertThat(alarms(PISTON, SKIRT, Worn.sent(), Worn.back(), bore(50.495)))
                .isEmpty();
    }

    private static Fact bore(double mm) {
        return Worn.reading("bore", "", "top, along the pin", mm);
    }
}
