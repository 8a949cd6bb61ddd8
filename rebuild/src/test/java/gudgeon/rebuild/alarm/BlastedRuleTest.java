package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.passed;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class BlastedRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: case, name: crankcase}
              - {id: bearing, name: main bearing}
              - {id: cover, name: clutch cover}
              - {id: seal, name: seal}
            steps:
              - {id: lay-case, name: Lay the case ready, fits: [case, cover]}
              - {id: fit-bearing, name: Fit the bearing, fits: [bearing], into: [case]}
              - {id: fit-seal, name: Fit the seal, fits: [seal], into: [cover]}
            checks:
              - {id: oilways-proved, name: Oilways proved, how: seen, clears: [case], disturbed-by: [blasting]}
              - {id: case-flat, name: Case flat, how: measured, clears: [case]}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new BlastedRule(), BOOK, facts);
    }

    private static Fact blasted(String position) {
        return new Fact.Cleaned(position, Cleaning.BLASTED, "");
    }

    @Test
    void seesPartsGoIntoABlastedCasting() {
        assertThat(alarms(blasted("case"))).isEmpty();
        assertThat(alarms(passed("oilways-proved"), blasted("case"), passed("case-flat"), begun("fit-bearing")))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.at()).isEqualTo("case");
                    assertThat(alarm.todo()).contains("Oilways proved").contains("eye protection");
                    assertThat(alarm.evidence()).containsExactly(2L, 4L);
                });
    }

    @Test
    void isSilentOnceItIsProvedOrWasOnlyWashed() {
        assertThat(alarms(blasted("case"), passed("oilways-proved"), begun("fit-bearing")))
                .isEmpty();
        assertThat(alarms(blasted("case"), begun("fit-bearing"), passed("oilways-proved")))
                .isEmpty();
        assertThat(alarms(new Fact.Cleaned("case", Cleaning.WASHED, ""), begun("fit-bearing")))
                .isEmpty();
    }

    @Test
    void saysThatTheBookHasNoCheckForIt() {
        assertThat(alarms(blasted("cover"), begun("fit-seal")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.todo()).contains("the book has no check"));
    }
}
