package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.off;
import static gudgeon.rebuild.alarm.Told.together;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is passed though it is not proved, kept though it is out, and slips. */
class MeasuredRulesTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: piston, name: piston}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston]}
            dimensions:
              - {id: skirt, name: piston skirt, of: piston, with: micrometer, new: {at-least: 49.965, at-most: 49.98}, at-least: 49.92}
            """);
    private static final Fact VERNIER = kept("vernier", InstrumentKind.CALLIPER, "0.02 mm", "0.03 mm");
    private static final Fact MICROMETER = kept("micrometer", InstrumentKind.MICROMETER, "0.01 mm", "0.004 mm");
    private static final Fact KEEP = new Fact.Disposed("piston", "", Disposition.USE_AGAIN, "");

    private static Fact kept(String name, InstrumentKind kind, String resolution, String error) {
        return new InstrumentKept(name, kind, "0 to 150 mm", resolution, error, Optional.empty(), "");
    }

    private static Fact read(String value, String with) {
        return new ReadingTaken("skirt", "", 1, "", value, with, OptionalDouble.empty(), "");
    }

    private static List<Alarm> alarms(Rule rule, Fact... facts) {
        Fact[] all = new Fact[facts.length + 4];
        System.arraycopy(new Fact[] {together(), off("piston"), VERNIER, MICROMETER}, 0, all, 0, 4);
        System.arraycopy(facts, 0, all, 4, facts.length);
        return Told.alarms(rule, BOOK, all);
    }

    @Test
    void aPartIsNotPassedOnADoubtfulReading() {
        Fact doubtful = read("49.94 mm", "vernier");
        assertThat(alarms(new UnprovenRule(), doubtful)).isEmpty();
        assertThat(alarms(new UnprovenRule(), doubtful, KEEP)).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("piston");
            assertThat(alarm.what()).contains("is to be used again", "piston skirt");
            assertThat(alarm.todo()).contains("micrometer");
            assertThat(alarm.evidence()).containsExactly(5L, 6L);
        });
        assertThat(alarms(new UnprovenRule(), doubtful, begun("fit-piston")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("goes in"));
        assertThat(alarms(new UnprovenRule(), doubtful, KEEP, read("49.94 mm", "micrometer")))
                .isEmpty();
    }

    @Test
    void whatIsOutOfLimitsIsNotKept() {
        Fact out = read("49.90 mm", "micrometer");
        assertThat(alarms(new MeasuredOutRule(), out)).isEmpty();
        assertThat(alarms(new MeasuredOutRule(), out, KEEP)).hasSize(1);
        assertThat(alarms(new MeasuredOutRule(), out, begun("fit-piston"))).hasSize(1);
        assertThat(alarms(new UnprovenRule(), out, KEEP)).isEmpty();
        Fact replaced = new Fact.Disposed("piston", "", Disposition.REPLACE, "worn");
        assertThat(alarms(new MeasuredOutRule(), out, KEEP, replaced)).isEmpty();
        assertThat(alarms(new MeasuredOutRule(), read("49.95 mm", "micrometer"), KEEP))
                .isEmpty();
    }

    @Test
    void aSlipIsAskedAboutUntilItIsSettled() {
        Fact slip = read("94.95 mm", "micrometer");
        assertThat(alarms(new SlipRule(), slip)).singleElement().satisfies(alarm -> {
            assertThat(alarm.what()).contains("49.95 mm meant?");
            assertThat(alarm.evidence()).containsExactly(5L);
        });
        assertThat(alarms(new SlipRule(), slip, read("94.95 mm", "vernier"))).isEmpty();
        assertThat(alarms(
                        new SlipRule(),
                        slip,
                        new Fact.Corrected("e5", "slip", Optional.of(read("49.95 mm", "micrometer")))))
                .isEmpty();
        assertThat(alarms(new SlipRule(), read("49.90 mm", "micrometer"))).isEmpty();
    }
}
