package gudgeon.rebuild.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Geometry;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TrialFitTest {
    private static final Geometry BOOK = Tarn.book();

    private static double bore(double depth) {
        return QuickFit.of(BOOK, Tarn.piston("pattern", Map.of(Tarn.PATTERN_DEPTH, depth))).gaps().stream()
                .filter(gap -> gap.label().equals("exhaust bore gap"))
                .findFirst()
                .orElseThrow()
                .leastMm();
    }

    @Property(tries = 40)
    void aDeeperPocketNeverLessensABoreGap(
            @ForAll @DoubleRange(min = 0, max = 4) double depth, @ForAll @DoubleRange(min = 0, max = 1) double more) {
        assertThat(bore(depth + more)).isGreaterThanOrEqualTo(bore(depth) - 0.002);
    }

    @Test
    void theSharesOfEveryDoubtAddUpToOne() {
        assertThat(Tarn.fit("pattern", Map.of()).findings()).allSatisfy(finding -> {
            assertThat(finding.standardUncertaintyMm()).isGreaterThan(0);
            assertThat(finding.budget().stream().mapToDouble(Share::share).sum())
                    .as(finding.sentence())
                    .isCloseTo(1, within(1e-9));
        });
    }

    @Test
    void theDeckGapsDoubtIsThatOfItsSizes() {
        // gasket ± 0.05 rectangular, and the protrusion's own doubt: JCGM 100:2008, 5.1.2, for a difference
        TrialFit fit = Tarn.fit("original", Map.of());
        double protrusion = fit.inputs().stream()
                .filter(input -> input.path().equals("crank.protrusion"))
                .findFirst()
                .orElseThrow()
                .quantity()
                .standardUncertainty();
        Finding deck = Tarn.finding(fit, GapKind.DECK);
        assertThat(deck.gap().leastMm()).isCloseTo(1.05, within(1e-9));
        assertThat(deck.standardUncertaintyMm()).isCloseTo(Math.hypot(0.05 / Math.sqrt(3), protrusion), within(1e-6));
    }

    @Test
    void moreClearanceLiftsTheValveLess() {
        Choice wide = new Choice(Optional.of("pattern"), Optional.empty(), 0, OptionalDouble.of(0.35), false, Map.of());
        double booked = Tarn.finding(Tarn.fit("pattern", Map.of()), GapKind.VALVE, "exhaust")
                .gap()
                .leastMm();
        assertThat(Tarn.finding(Tarn.fit(BOOK, wide), GapKind.VALVE, "exhaust")
                        .gap()
                        .leastMm())
                .isCloseTo(booked + 0.30, within(0.02));
    }

    @Test
    void sentencesFollowTheUnit() {
        Choice pattern = Tarn.piston("pattern", Map.of());
        assertThat(TrialFit.of(BOOK, pattern, LengthUnit.INCH).sentence())
                .contains(" in ")
                .doesNotContain(" mm");
        assertThat(TrialFit.of(BOOK, pattern, LengthUnit.MM).sentence()).contains(" mm");
        assertThat(LengthUnit.INCH.format(25.4)).isEqualTo("1.0000 in");
        assertThat(LengthUnit.MM.format(-0.001)).isEqualTo("0.00 mm");
    }

    @Test
    void everyUnknownPartAndSizeIsToldAtOnce() {
        Choice unknown = new Choice(
                Optional.of("none"),
                Optional.of("paper"),
                0,
                OptionalDouble.empty(),
                false,
                Map.of("valves.exhaust.hat", 1.0));
        assertThatThrownBy(() -> Tarn.fit(BOOK, unknown))
                .isInstanceOfSatisfying(
                        UnknownChoice.class,
                        refused -> assertThat(refused.sentences())
                                .hasSize(3)
                                .anySatisfy(sentence -> assertThat(sentence).contains("'original', 'pattern'")));
    }

    @Test
    void inchesTypedForMillimetresAreAskedAbout() {
        assertThatExceptionOfType(UnknownChoice.class)
                .isThrownBy(() -> Tarn.fit("original", Map.of("cylinder.bore", 1.97)))
                .satisfies(fault ->
                        assertThat(fault.sentences()).first().asString().contains("looks like inches"));
        assertThat(Tarn.fit("original", Map.of("cylinder.bore", 50.5)).findings())
                .isNotEmpty();
    }

    @Test
    void aWildSizeIsNamed() {
        Map<String, Double> wild = Map.of("pistons.original.crown.dome", 40.0, "valves.exhaust.head", 20.1);
        assertThatThrownBy(() -> Tarn.fit("original", wild))
                .isInstanceOfSatisfying(
                        UnknownChoice.class,
                        refused -> assertThat(refused.sentences())
                                .singleElement()
                                .asString()
                                .contains("dome height can't be 40.0 mm"));
    }

    @Test
    void drawingAgreesWithTheBudget() {
        TrialFit fit = Tarn.fit("pattern", Map.of());
        Finding bore = Tarn.finding(fit, GapKind.BORE, "exhaust");
        Simulation drawn = TrialFit.simulate(
                BOOK, Tarn.piston("pattern", Map.of()), LengthUnit.MM, GapKind.BORE, "exhaust", 7, 40_000);
        // where the least jumps between places the budget gives the mean square departure from the best estimate
        double bias = drawn.meanMm() - bore.gap().leastMm();
        assertThat(bias).isBetween(-bore.standardUncertaintyMm(), 0.005);
        assertThat(Math.hypot(drawn.standardUncertaintyMm(), bias))
                .isCloseTo(bore.standardUncertaintyMm(), within(0.01));
        assertThat(drawn.chanceTouches()).isGreaterThan(0.99);
        assertThat(drawn.chanceShort()).isGreaterThanOrEqualTo(drawn.chanceTouches());
    }

    @Test
    void everyFigureSaysHowItWasWorkedOut() {
        assertThat(Tarn.fit("original", Map.of()).figures()).isNotEmpty().allSatisfy(figure -> {
            assertThat(figure.working().formula()).isNotBlank();
            assertThat(figure.working().source()).isNotBlank();
        });
    }

    @Test
    void aFitThatTouchesSaysWhereItGoesTight() {
        TrialFit fit = Tarn.fit("pattern", Map.of());
        assertThat(fit.worst().orElseThrow().verdict()).isEqualTo(Verdict.TOUCHES);
        assertThat(fit.sentence()).contains("exhaust valve").contains("go tight at");
    }
}
