package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.failed;
import static gudgeon.rebuild.alarm.Told.passed;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutOfTurnRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: rings, name: rings}
              - {id: valve, name: valve}
            steps:
              - {id: fit, name: Fit them all, fits: [rings, valve]}
            checks:
              - {id: valve-clearance, name: Valve clearances, how: measured, clears: [valve]}
              - {id: leak-down, name: Leak-down, how: measured, clears: [rings], after: [valve-clearance]}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new OutOfTurnRule(), BOOK, facts);
    }

    @Test
    void seesACheckThatCannotBeBelieved() {
        assertThat(alarms(failed("leak-down", "60 %"))).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("leak-down");
            assertThat(alarm.what()).contains("Valve clearances");
        });
        assertThat(alarms(failed("valve-clearance", "0"), passed("leak-down", "5 %")))
                .hasSize(1);
    }

    @Test
    void stillStandsWhenTheOtherCheckComesAfterIt() {
        Fact[] facts = {failed("leak-down", "60 %"), passed("valve-clearance", "0.05")};
        assertThat(alarms(facts)).hasSize(1);
        assertThat(alarms(facts[0], facts[1], passed("leak-down", "8 %"))).isEmpty();
    }

    @Test
    void whatStoodThenIsEnough() {
        Fact[] facts = {passed("valve-clearance", "0.05"), failed("leak-down", "60 %")};
        assertThat(alarms(facts)).isEmpty();
        assertThat(alarms(facts[0], facts[1], failed("valve-clearance", "0"))).isEmpty();
    }
}
