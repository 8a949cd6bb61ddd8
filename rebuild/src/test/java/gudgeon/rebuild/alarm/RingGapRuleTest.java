package gudgeon.rebuild.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.bore.Worn;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class RingGapRuleTest {
    private static final String NO_LIMITS =
            Worn.BOOK.replace("of: top-ring, at-least: 0.15, at-most: 0.40", "of: top-ring");

    private static List<Alarm> alarms(String book, Fact... facts) {
        return new RingGapRule().alarms(Worn.build(book, facts)).toList();
    }

    private static Fact gap(double mm) {
        return Worn.reading("ring-gap-top", "", "", mm);
    }

    @Test
    void seesAGapBelowTheBooksLimit() {
        assertThat(alarms(Worn.BOOK, gap(0.10))).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("top-ring");
            assertThat(alarm.what())
                    .isEqualTo("The gap of the top ring is 0.10 mm; at least 0.15 mm is wanted by the book.");
            assertThat(alarm.evidence()).containsExactly(2L);
        });
        assertThat(alarms(Worn.BOOK, gap(0.15))).isEmpty();
    }

    @Test
    void filedAndGappedAgainItIsGone() {
        assertThat(alarms(Worn.BOOK, gap(0.10), gap(0.20))).isEmpty();
        assertThat(alarms(Worn.BOOK, gap(0.20), gap(0.10))).hasSize(1);
    }

    /** 0.0035 of 50.5 mm is 0.177 mm. */
    @Test
    void withoutALimitTheBoreAsFinishedGivesIt() {
        Fact[] finished = Worn.bore(50.5, 50.5, 50.5, 50.5, gap(0.17));
        assertThat(alarms(NO_LIMITS, finished))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what())
                        .contains("at least 0.18 mm")
                        .contains("rule of thumb for this bore of 50.50 mm"));
        assertThat(alarms(NO_LIMITS, Worn.bore(50.5, 50.5, 50.5, 50.5, gap(0.18))))
                .isEmpty();
        assertThat(alarms(NO_LIMITS, gap(0.05))).isEmpty();
    }
}
