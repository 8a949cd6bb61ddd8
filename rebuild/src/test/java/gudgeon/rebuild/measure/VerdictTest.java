package gudgeon.rebuild.measure;

import static gudgeon.rebuild.measure.TopEnd.bore;
import static gudgeon.rebuild.measure.TopEnd.join;
import static gudgeon.rebuild.measure.TopEnd.piece;
import static gudgeon.rebuild.measure.TopEnd.read;
import static gudgeon.rebuild.measure.TopEnd.verdict;
import static gudgeon.rebuild.measure.TopEnd.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.reading.Component;
import gudgeon.rebuild.reading.Component.Role;
import gudgeon.rebuild.reading.Figure;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class VerdictTest {
    @Test
    void theWorstPlaceDecides() {
        Build build = with(bore("bore gauge", "39.05", "39.05", "39.02", "39.16"));
        Verdict verdict = verdict(build, "bore");
        assertThat(verdict.outcome()).isEqualTo(Outcome.OUT_OF_LIMITS);
        assertThat(verdict.worst().map(Figure::at)).contains("bottom, across the pin");
        assertThat(verdict.sentence())
                .contains(
                        "out of limits", "39.160 ± 0.006 mm", "bottom, across the pin", "at most 39.1 mm", "below 1 %");
    }

    @Test
    void inLimitsOnlyOnceEveryPlaceWasRead() {
        Verdict some = verdict(with(bore("bore gauge", "39.05", "39.05", "39.02")), "bore");
        assertThat(some.outcome()).isEqualTo(Outcome.UNPROVEN);
        assertThat(some.waitsForPlaces()).isTrue();
        assertThat(some.sentence()).contains("1 place was not read yet");
        Verdict all = verdict(with(bore("bore gauge", "39.05", "39.05", "39.02", "39.03")), "bore");
        assertThat(all.outcome()).isEqualTo(Outcome.IN_LIMITS);
        assertThat(all.condition()).isEqualTo(Condition.WORN);
    }

    @Test
    void aCoarseInstrumentNearTheLimitProvesNothing() {
        // by hand: step 0.02 / sqrt 12 = 0.00577, error 0.03 / sqrt 3 = 0.01732, together 0.01826; 0.02 is 1.10 of it
        Verdict verdict = verdict(with(bore("vernier", "39.08", "39.08", "39.06", "39.06")), "bore");
        assertThat(verdict.outcome()).isEqualTo(Outcome.UNPROVEN);
        assertThat(verdict.wrong()).isEqualTo(0.137, within(0.002));
        assertThat(verdict.sentence()).contains("chance of 14 %");
    }

    @Test
    void aBetterInstrumentClearsIt() {
        Build build = with(join(
                bore("vernier", "39.08", "39.08", "39.06", "39.06"),
                bore("bore gauge", "39.071", "39.076", "39.052", "39.055")));
        Verdict verdict = verdict(build, "bore");
        assertThat(verdict.outcome()).isEqualTo(Outcome.IN_LIMITS);
        assertThat(verdict.worst().orElseThrow().value()).isEqualTo(39.076);
        assertThat(verdict.worst().orElseThrow().readings()).hasSize(2);
    }

    @Test
    void aGaugeIsNoBetterThanWhatItWasSetWith() {
        Figure figure =
                verdict(with(bore("bore gauge", "39.05")), "bore").worst().orElseThrow();
        assertThat(figure.components())
                .extracting(Component::role)
                .containsExactlyInAnyOrder(Role.STEP, Role.ERROR, Role.SETTING, Role.SETTING_STEP);
        // two of 0.004 / sqrt 3 and two of 0.001 / sqrt 12
        assertThat(figure.quantity().standardUncertainty()).isEqualTo(0.003291, within(1e-6));
    }

    @Test
    void nobodySaidWhatItWasReadWith() {
        Verdict verdict = verdict(with(read("skirt", "", "38.97 mm", "")), "skirt");
        assertThat(verdict.outcome()).isEqualTo(Outcome.UNPROVEN);
        assertThat(verdict.sentence()).contains("Nobody said what it was read with");
    }

    @Test
    void onePlaceOfUnknownDoubtKeepsItOpenUnlessAnotherIsOut() {
        Build open = with(
                join(bore("bore gauge", "39.05", "39.05", "39.02"), read("bore", TopEnd.PLACES.get(3), "39.03", "")));
        assertThat(verdict(open, "bore").outcome()).isEqualTo(Outcome.UNPROVEN);
        Build out = with(
                join(bore("bore gauge", "39.05", "39.15", "39.02"), read("bore", TopEnd.PLACES.get(3), "39.2", "")));
        assertThat(verdict(out, "bore").outcome()).isEqualTo(Outcome.OUT_OF_LIMITS);
    }

    @Test
    void aClearanceIsTheLeastHoleLessTheShaftAndTheGreatest() {
        Build build = with(join(
                bore("bore gauge", "39.05", "39.06", "39.02", "39.03"), read("skirt", "", "38.97 mm", "micrometer")));
        Evaluated clearance = Evaluated.of(build, TopEnd.dimension("clearance"));
        assertThat(clearance.figures()).extracting(Figure::at).containsExactly("least", "greatest");
        assertThat(clearance.figures().get(0).value()).isEqualTo(0.05, within(1e-9));
        assertThat(clearance.figures().get(1).value()).isEqualTo(0.09, within(1e-9));
        assertThat(verdict(build, "clearance").outcome()).isEqualTo(Outcome.IN_LIMITS);
        // the micrometer's error counts once: it set the gauge and read the skirt
        assertThat(clearance.figures().get(0).components())
                .filteredOn(one -> one.role() == Role.ERROR || one.role() == Role.SETTING)
                .hasSize(2);
    }

    @Test
    void ovalityTaperAndWearFollow() {
        Build build = with(bore("bore gauge", "39.05", "39.12", "39.02", "39.03"));
        Evaluated ovality = Evaluated.of(build, TopEnd.dimension("ovality"));
        assertThat(ovality.figures()).extracting(Figure::at).containsExactly("top", "bottom");
        assertThat(ovality.figures().get(0).value()).isEqualTo(0.07, within(1e-9));
        assertThat(verdict(build, "ovality").outcome()).isEqualTo(Outcome.OUT_OF_LIMITS);
        Evaluated taper = Evaluated.of(build, TopEnd.dimension("taper"));
        assertThat(taper.figures()).extracting(Figure::at).containsExactly("along the pin", "across the pin");
        assertThat(taper.figures().get(1).value()).isEqualTo(0.09, within(1e-9));
        assertThat(verdict(build, "wear").worst().orElseThrow().value()).isEqualTo(0.105, within(1e-9));
        // what the gauge was set with is the same for all its readings
        assertThat(ovality.figures().get(0).components())
                .noneMatch(one -> one.what().contains("set with"));
    }

    @Test
    void whatAMachinistDidMakesOldReadingsOld() {
        Build build =
                with(join(bore("bore gauge", "39.05", "39.06", "39.02", "39.16"), new WorkBack("barrel", "", "bored")));
        assertThat(verdict(build, "bore").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    }

    @Test
    void piecesAreJudgedEach() {
        Build build = with(
                piece("spring", 1, "35.2 mm", "vernier"),
                piece("spring", 2, "35.3 mm", "vernier"),
                piece("spring", 3, "33.1 mm", "vernier"),
                piece("spring", 4, "35.2 mm", "vernier"));
        Verdict verdict = verdict(build, "spring");
        assertThat(verdict.outcome()).isEqualTo(Outcome.OUT_OF_LIMITS);
        assertThat(verdict.sentence()).contains("piece 3");
    }

    @Test
    void anInchInstrumentReadsInches() {
        Verdict verdict = verdict(with(read("skirt", "", "1.5340", "inch micrometer")), "skirt");
        assertThat(verdict.worst().orElseThrow().value()).isEqualTo(38.9636, within(1e-9));
        assertThat(verdict.outcome()).isEqualTo(Outcome.IN_LIMITS);
    }

    @Test
    void whatCannotBeReadIsToldAndDoesNotCount() {
        Verdict verdict = verdict(with(read("bore", "nowhere", "39.05 mm", "bore gauge")), "bore");
        assertThat(verdict.outcome()).isEqualTo(Outcome.NOT_MEASURED);
        assertThat(verdict.evaluated().unread())
                .singleElement()
                .satisfies(sentence -> assertThat(sentence).contains("no place 'nowhere'", "entry 8"));
    }

    @Test
    void warmthAddsDoubtAndNoCorrectionWhereTheMetalIsNotTold() {
        ReadingTaken cold = new ReadingTaken("skirt", "", 1, "", "38.97 mm", "micrometer", OptionalDouble.of(5), "");
        Figure figure = verdict(with(cold), "skirt").worst().orElseThrow();
        Component warmth = figure.components().stream()
                .filter(one -> one.role() == Role.WARMTH)
                .findFirst()
                .orElseThrow();
        assertThat(figure.value()).isEqualTo(38.97, within(1e-9));
        // 15 K at (12.5e-6 and 1e-6) / sqrt 3, and 1 K apart at 11.5e-6 / sqrt 3, of 38.97 mm
        assertThat(warmth.doubt().standardUncertainty()).isEqualTo(0.004240, within(1e-5));
    }

    @Test
    void scatterIsPooledOverThePlaces() {
        Build build = with(join(
                bore("bore gauge", "39.050", "39.060", "39.020", "39.030"),
                bore("bore gauge", "39.054", "39.056", "39.024", "39.026")));
        Figure figure = verdict(build, "bore").worst().orElseThrow();
        Component scatter = figure.components().stream()
                .filter(one -> one.role() == Role.SCATTER)
                .findFirst()
                .orElseThrow();
        // each pair 0.004 apart: squares 8e-6, four places, four degrees of freedom: s = 0.002828, mean of two 0.002
        assertThat(scatter.doubt().standardUncertainty()).isEqualTo(0.002, within(1e-9));
        assertThat(scatter.doubt().degreesOfFreedom()).isEqualTo(4);
        assertThat(figure.spread()).isEqualTo(0.004, within(1e-9));
    }

    /** The book has an upper limit only; 39.06 in 39.02 is 0.04 tight, many times its doubt. */
    @Test
    void aPistonLargerThanItsBoreIsNotInLimits() {
        Build tight = with(join(
                bore("bore gauge", "39.02", "39.02", "39.02", "39.02"), read("skirt", "", "39.060", "micrometer")));
        assertThat(verdict(tight, "clearance").outcome()).isEqualTo(Outcome.OUT_OF_LIMITS);
        Build free = with(join(
                bore("bore gauge", "39.02", "39.02", "39.02", "39.02"), read("skirt", "", "38.970", "micrometer")));
        assertThat(verdict(free, "clearance").outcome()).isEqualTo(Outcome.IN_LIMITS);
    }
}
