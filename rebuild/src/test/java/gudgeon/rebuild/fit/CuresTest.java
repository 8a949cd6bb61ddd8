package gudgeon.rebuild.fit;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.mechanics.clearance.Verdict;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A cure that is said to work is made, and must then clear; one that is said not to must say why. */
class CuresTest {
    private static final String DIAMETER = "pistons.original.pockets.exhaust.diameter";

    private static double to(CureLine cure) {
        assertThat(cure.works()).as("%s", cure).isTrue();
        return cure.toValue().orElseThrow();
    }

    @Test
    void nothingIsCuredThatClears() {
        assertThat(Tarn.fit("original", Map.of()).cures()).isEmpty();
    }

    @Test
    void aPocketCutAsDeepAsSaidClearsAndATenthLessDoesNot() {
        double depth = to(Tarn.cure(Tarn.fit("pattern", Map.of()), "The exhaust pocket cut deeper"));
        assertThat(Tarn.fit("pattern", Map.of(Tarn.PATTERN_DEPTH, depth)).allClear())
                .isTrue();
        assertThat(Tarn.fit("pattern", Map.of(Tarn.PATTERN_DEPTH, depth - 0.1)).allClear())
                .isFalse();
    }

    @Test
    void aGasketAsThickAsSaidClearsAndCostsCompressionAndDeckGap() {
        CureLine gasket = Tarn.cure(Tarn.fit("pattern", Map.of()), "A head gasket");
        assertThat(gasket.costs())
                .anySatisfy(cost -> assertThat(cost).contains("Compression ratio"))
                .anySatisfy(cost -> assertThat(cost).contains("Deck gap"));
        assertThat(Tarn.fit("pattern", Map.of("gaskets.standard.pressed", to(gasket)))
                        .allClear())
                .isTrue();
    }

    @Test
    void aPocketTooSmallAcrossIsCutWiderNotDeeper() {
        TrialFit small = Tarn.fit("original", Map.of(DIAMETER, 20.4));
        CureLine deeper = Tarn.cure(small, "The exhaust pocket cut deeper");
        assertThat(deeper.works()).isFalse();
        assertThat(deeper.whyNot()).contains("of the exhaust valve would be");
        double wide = to(Tarn.cure(small, "The exhaust pocket cut wider"));
        assertThat(Tarn.fit("original", Map.of(DIAMETER, wide)).allClear()).isTrue();
    }

    @Test
    void aPocketBothTooShallowAndTooSmallNeedsBoth() {
        Map<String, Double> both = Map.of(Tarn.PATTERN_DEPTH, 1.6, "pistons.pattern.pockets.exhaust.diameter", 21.6);
        TrialFit fit = Tarn.fit("pattern", both);
        assertThat(Tarn.cure(fit, "The exhaust pocket cut deeper").works()).isFalse();
        assertThat(Tarn.cure(fit, "The exhaust pocket cut wider").works()).isFalse();
        assertThat(Tarn.cure(fit, "The exhaust pocket cut to").works()).isTrue();
    }

    @Test
    void twoShallowPocketsAreCutTogether() {
        Map<String, Double> shallow = Map.of(Tarn.PATTERN_DEPTH, 1.2, "pistons.pattern.pockets.inlet.depth", 0.6);
        TrialFit fit = Tarn.fit("pattern", shallow);
        assertThat(Tarn.cure(fit, "The inlet pocket cut deeper").works()).isFalse();
        assertThat(Tarn.cure(fit, "The exhaust and inlet pockets all cut deeper")
                        .works())
                .isTrue();
    }

    @Test
    void aPocketIsNotCutThroughACrownThatIsTooThin() {
        TrialFit fit = Tarn.fit(
                Tarn.read(Tarn.text().replace("crown-thickness: 6.5 ± 0.1", "crown-thickness: 4.4 ± 0.1")),
                Tarn.piston("pattern", Map.of()));
        CureLine deeper = Tarn.cure(fit, "The exhaust pocket cut deeper");
        assertThat(deeper.works()).isFalse();
        assertThat(deeper.whyNot()).contains("underside");
    }

    @Test
    void valvesThatMeetEachOtherAreNotCuredAtThePiston() {
        TrialFit fit = Tarn.fit("original", Map.of("valves.exhaust.head", 24.5));
        assertThat(Tarn.finding(fit, GapKind.VALVE_TO_VALVE, "exhaust", "inlet").verdict())
                .isNotEqualTo(Verdict.CLEARS);
        assertThat(Tarn.cure(fit, "A thicker head gasket").works()).isFalse();
        assertThat(fit.cures())
                .filteredOn(cure -> cure.what().contains("pocket"))
                .noneMatch(CureLine::works);
    }

    @Test
    void aTurnedPistonIsTurnedBackAndNotCut() {
        TrialFit fit = Tarn.fit(
                Tarn.book(),
                new Choice(Optional.of("original"), Optional.empty(), 0, OptionalDouble.empty(), true, Map.of()));
        assertThat(Tarn.cure(fit, "Turn the piston").works()).isTrue();
        assertThat(fit.cures()).noneMatch(cure -> cure.what().contains("pocket"));
    }

    @Test
    void aCamOffItsMarksIsPutBack() {
        TrialFit fit = Tarn.fit(
                Tarn.book(),
                new Choice(Optional.of("original"), Optional.empty(), -1, OptionalDouble.empty(), false, Map.of()));
        assertThat(fit.allClear()).isFalse();
        assertThat(Tarn.cure(fit, "Put the cam back").works()).isTrue();
    }
}
