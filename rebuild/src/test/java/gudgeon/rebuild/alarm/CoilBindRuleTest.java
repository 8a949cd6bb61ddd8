package gudgeon.rebuild.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.bore.Worn;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoilBindRuleTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: springs, name: valve springs}
              - {id: camshaft, name: camshaft}
            steps:
              - {id: fit-springs, name: Fit the springs, fits: [springs]}
            dimensions:
              - {id: spring-fitted, name: fitted height of the spring, of: springs}
              - {id: spring-solid, name: solid height, of: springs, new: {at-least: 17.4, at-most: 17.8}}
              - {id: valve-lift, name: lift, of: camshaft}
              - id: spring-room
                name: room of the spring
                of: springs
                at-least: 1.0
                derived: {as: difference, of: [spring-fitted, spring-solid, valve-lift]}
            """;

    private static List<Alarm> alarms(String book, Fact... facts) {
        return new CoilBindRule().alarms(Worn.build(book, facts)).toList();
    }

    private static Fact read(String dimension, double mm) {
        return Worn.reading(dimension, "", "", mm);
    }

    @Test
    void seesCoilsThatMeetBeforeFullLift() {
        assertThat(alarms(BOOK, read("valve-lift", 8), read("spring-fitted", 25.5)))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.at()).isEqualTo("springs");
                    assertThat(alarm.what()).contains("meet before full lift");
                    // 25.5 - 8 - 17.6 = -0.1
                    assertThat(alarm.figures())
                            .singleElement()
                            .asString()
                            .contains("leaves -0.10 ±")
                            .contains("from the book: solid height");
                    assertThat(alarm.evidence()).containsExactly(3L);
                });
    }

    @Test
    void lessThanWantedIsTooLittle() {
        assertThat(alarms(BOOK, read("valve-lift", 8), read("spring-fitted", 26.5)))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("all but meet"));
        assertThat(alarms(BOOK, read("valve-lift", 8), read("spring-fitted", 26.7)))
                .isEmpty();
        assertThat(alarms(BOOK.replace("    at-least: 1.0\n", ""), read("valve-lift", 8), read("spring-fitted", 26.5)))
                .hasSize(1);
    }

    @Test
    void shimmedAnewItIsMeasuredAnew() {
        assertThat(alarms(BOOK, read("valve-lift", 8), read("spring-fitted", 25.5), read("spring-fitted", 27)))
                .isEmpty();
    }

    @Test
    void isSilentWhileASizeIsUnknown() {
        assertThat(alarms(BOOK, read("spring-fitted", 20))).isEmpty();
        assertThat(alarms(BOOK, read("valve-lift", 8))).isEmpty();
    }

    @Test
    void measuredSolidHeightGoesBeforeTheBooks() {
        assertThat(alarms(BOOK, read("valve-lift", 8), read("spring-solid", 17.0), read("spring-fitted", 26.1)))
                .isEmpty();
    }
}
