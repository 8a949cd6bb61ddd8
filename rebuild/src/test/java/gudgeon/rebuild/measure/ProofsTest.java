package gudgeon.rebuild.measure;

import static gudgeon.rebuild.measure.TopEnd.bore;
import static gudgeon.rebuild.measure.TopEnd.join;
import static gudgeon.rebuild.measure.TopEnd.read;
import static gudgeon.rebuild.measure.TopEnd.verdict;
import static gudgeon.rebuild.measure.TopEnd.with;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProofsTest {
    private static OwnInstrument own(Build build, String name) {
        return OwnInstruments.of(build.instruments()).named(name).orElseThrow();
    }

    @Test
    void theBoreGaugeWouldProveIt() {
        Build build = with(bore("vernier", "39.08", "39.08", "39.06", "39.06"));
        assertThat(Proofs.of(build, verdict(build, "bore"))).singleElement().satisfies(proof -> {
            assertThat(proof.instruments()).containsExactly("bore gauge");
            assertThat(proof.outcome()).isEqualTo(Outcome.IN_LIMITS);
            assertThat(proof.sentence()).contains("Read the bore with the bore gauge");
        });
        // and it does
        Build then = TopEnd.after(build, bore("bore gauge", "39.08", "39.08", "39.06", "39.06"));
        assertThat(verdict(then, "bore").outcome()).isEqualTo(Outcome.IN_LIMITS);
    }

    @Test
    void aClearanceIsProvedByReadingWhatWasReadCoarsely() {
        Build build = with(join(
                bore("bore gauge", "39.080", "39.085", "39.060", "39.060"), read("skirt", "", "38.96 mm", "vernier")));
        assertThat(verdict(build, "clearance").outcome()).isEqualTo(Outcome.UNPROVEN);
        assertThat(Proofs.of(build, verdict(build, "clearance")))
                .extracting(Proof::instruments)
                .contains(List.of("micrometer"))
                .doesNotContain(List.of("bore gauge"));
    }

    @Test
    void onTheLimitNothingInTheWorkshopTells() {
        Build build = with(bore("bore gauge", "39.1", "39.05", "39.06", "39.06"));
        assertThat(Proofs.of(build, verdict(build, "bore")))
                .singleElement()
                .satisfies(proof -> assertThat(proof.sentence()).contains("no workshop instrument"));
    }

    @Test
    void elseWhatToBorrowIsSaid() {
        Build build = with(bore("bore gauge", "39.097", "39.05", "39.06", "39.06"));
        assertThat(Proofs.of(build, verdict(build, "bore")))
                .singleElement()
                .satisfies(proof -> assertThat(proof.sentence()).contains("Borrow one that errs by at most 0.00"));
    }

    @Test
    void moreReadingsHelpWhereTheyScatter() {
        Build build = with(
                read("skirt", "", "38.937 mm", "micrometer"),
                read("skirt", "", "38.944 mm", "micrometer"),
                read("skirt", "", "38.938 mm", "micrometer"),
                read("skirt", "", "38.945 mm", "micrometer"));
        Verdict verdict = verdict(build, "skirt");
        assertThat(verdict.outcome()).isEqualTo(Outcome.IN_LIMITS);
        Build fewer = with(read("skirt", "", "38.937 mm", "micrometer"), read("skirt", "", "38.945 mm", "micrometer"));
        assertThat(verdict(fewer, "skirt").outcome()).isEqualTo(Outcome.UNPROVEN);
        assertThat(Proofs.of(fewer, verdict(fewer, "skirt")))
                .anySatisfy(proof -> assertThat(proof.sentence()).contains("times in all with the micrometer"));
    }

    @Test
    void nothingIsAskedOfAVerdictThatStands() {
        Build build = with(bore("bore gauge", "39.05", "39.05", "39.02", "39.03"));
        assertThat(Proofs.of(build, verdict(build, "bore"))).isEmpty();
        assertThat(Proofs.of(build, verdict(build, "skirt"))).isEmpty();
    }

    @Test
    void aHopelessInstrumentIsToldBeforehand() {
        Build build = with();
        assertThat(Hopeless.of(build, TopEnd.dimension("bore"), own(build, "vernier")))
                .isEmpty();
        Build wide = with(TopEnd.kept("rule", InstrumentKind.SCALE_RULE, "0 to 300 mm", "0.5 mm", "0.15 mm"));
        assertThat(Hopeless.of(wide, TopEnd.dimension("bore"), own(wide, "rule")))
                .hasValueSatisfying(sentence -> assertThat(sentence).contains("too coarse", "at most 39.1 mm"));
        assertThat(Hopeless.of(build, TopEnd.dimension("bore"), own(build, "bore gauge")))
                .isEmpty();
    }

    @Test
    void whatWasNotCheckedForAYearIsToldAndNotRefused() {
        OwnInstrument vernier = own(with(), "vernier");
        assertThat(vernier.unchecked(LocalDate.of(2026, 11, 1))).isEmpty();
        assertThat(vernier.unchecked(LocalDate.of(2027, 3, 2)))
                .hasValueSatisfying(sentence -> assertThat(sentence).contains("2026-03-01"));
    }

    @Test
    void whatIsWrongWithAnInstrumentIsSaid() {
        Build build = with(TopEnd.kept("gauge", InstrumentKind.DIAL_GAUGE, "10 to 5 mm", "fine", ""));
        OwnInstruments own = OwnInstruments.of(build.instruments());
        assertThat(own.named("gauge")).isEmpty();
        assertThat(own.faults()).hasSize(3);
        assertThat(String.join(" ", own.faults())).contains("resolution", "permissible error", "backward");
        OwnInstrument inch = own(with(), "inch micrometer");
        assertThat(inch.least()).isEqualTo(25.4);
        assertThat(inch.most()).isEqualTo(50.8);
        assertThat(inch.inches()).isTrue();
        assertThat(Optional.of(inch.scale().resolution())).contains(0.00254);
    }
}
