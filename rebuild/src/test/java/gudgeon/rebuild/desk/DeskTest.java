package gudgeon.rebuild.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeskTest {
    private static final FitQuestion SEAT = asked("42 N7/h6", Optional.of("aluminium"), 20, OptionalDouble.empty());

    private static FitQuestion asked(String fit, Optional<String> into, double at, OptionalDouble warmest) {
        return new FitQuestion(
                fit,
                Optional.of("steel"),
                into,
                OptionalDouble.of(60),
                30,
                OptionalDouble.of(12),
                OptionalDouble.of(0.12),
                at,
                0.03,
                warmest,
                OptionalDouble.of(100));
    }

    private static DeskAnswer.Told told(DeskAnswer answer) {
        assertThat(answer).isInstanceOf(DeskAnswer.Told.class);
        return (DeskAnswer.Told) answer;
    }

    private static List<String> refused(DeskAnswer answer) {
        assertThat(answer).isInstanceOf(DeskAnswer.Refused.class);
        return ((DeskAnswer.Refused) answer).sentences();
    }

    private static double figure(DeskAnswer.Told told, String key) {
        return told.figures().stream()
                .filter(figure -> figure.key().equals(key))
                .mapToDouble(DeskFigure::value)
                .findFirst()
                .orElse(Double.NaN);
    }

    @Test
    void aFitIsToldInWordsAndInInches() {
        DeskAnswer.Told fit = told(FitDesk.answer(FitQuestion.of("20 H7/k6")));
        assertThat(fit.heading())
                .isEqualTo(
                        "20 H7/k6: a transition fit, from 0.015 mm (0.0006 in) tight to 0.019 mm (0.0007 in) loose, as the two "
                                + "parts happen to be. Measure both to know.");
        assertThat(figure(fit, "shaftMost")).isEqualTo(20.015);
        assertThat(told(FitDesk.answer(FitQuestion.of("20 H7/p6"))).heading())
                .contains("an interference fit, 0.001 mm");
        assertThat(told(FitDesk.answer(FitQuestion.of("20 H7/g6"))).heading()).contains("a clearance fit, 0.007 mm");
        assertThat(told(FitDesk.answer(FitQuestion.of("47 N7"))).heading())
                .isEqualTo("47 N7: a hole of 46.967 mm (1.8491 in) to 46.992 mm (1.8501 in).");
    }

    /** By hand: 0.033 mm tight and 0.030 mm of gap over 42 mm x 21.5e-6 per degree are 69.8 degrees above 20. */
    @Test
    void aCaseIsWarmedForTheTightest() {
        DeskAnswer.Told seat = told(FitDesk.answer(SEAT));
        assertThat(figure(seat, "warmTo")).isCloseTo(20 + 0.063 / (42 * 21.5e-6), within(1e-3));
        assertThat(figure(seat, "mostTightRunning")).isCloseTo(0.033 - 42 * 9.8e-6 * 80, within(1e-6));
        assertThat(String.join(" ", seat.sentences())).contains("may be loose and turn in its seat");
        assertThat(String.join(" ", seat.cautions())).contains("never with a flame", "The temperature not to pass");
    }

    @Test
    void whatMustNotBePassedIsNotPassed() {
        DeskAnswer.Told seat = warmedTo(70);
        assertThat(figure(seat, "warmTo")).isEqualTo(70);
        assertThat(figure(seat, "coolTo"))
                .isCloseTo(20 - (0.033 + 0.03 - 42 * 21.5e-6 * 50) / (42 * 11.7e-6), within(1e-3));
        assertThat(String.join(" ", seat.sentences()))
                .contains("Don't warm it further")
                .doesNotContain("freezer");
        assertThat(String.join(" ", seat.cautions())).contains("Cold metal burns");
        assertThat(String.join(" ", warmedTo(60).sentences())).contains("colder than a household freezer");
    }

    private static DeskAnswer.Told warmedTo(double warmest) {
        return told(FitDesk.answer(asked("42 N7/h6", Optional.of("aluminium"), 20, OptionalDouble.of(warmest))));
    }

    @Test
    void magnesiumIsCautionedAndLooseFitsAreNotWarmed() {
        assertThat(told(FitDesk.answer(asked("42 N7/h6", Optional.of("magnesium"), 20, OptionalDouble.empty())))
                        .cautions())
                .anyMatch(caution -> caution.contains("Magnesium burns"));
        DeskAnswer.Told loose =
                told(FitDesk.answer(asked("42 H7/g6", Optional.of("aluminium"), 20, OptionalDouble.empty())));
        assertThat(loose.sentences()).anyMatch(sentence -> sentence.contains("without warmth"));
        assertThat(figure(loose, "warmTo")).isNaN();
        assertThat(loose.cautions()).noneMatch(caution -> caution.contains("flame"));
    }

    @Test
    void allFaultsOfAQuestionAreSaidAtOnce() {
        FitQuestion bad = new FitQuestion(
                "20 H77/w6",
                Optional.of("glass"),
                Optional.of("wood"),
                OptionalDouble.of(10),
                0,
                OptionalDouble.of(12),
                OptionalDouble.empty(),
                900,
                5,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertThat(refused(FitDesk.answer(bad))).hasSize(7).anyMatch(fault -> fault.contains("'wood'"));
        assertThat(refused(FitDesk.answer(asked("70 N7/h6", Optional.of("aluminium"), 20, OptionalDouble.empty()))))
                .anyMatch(fault -> fault.contains("not larger than the part"));
        assertThat(refused(FitDesk.answer(asked("47 N7", Optional.of("aluminium"), 20, OptionalDouble.empty()))))
                .anyMatch(fault -> fault.contains("one tolerance class"));
    }

    /** An interference beyond what the theory holds for is a sentence, not a crash. */
    @ParameterizedTest
    @ValueSource(strings = {"0.2 H7/zc7", "0.3 H7/zc7"})
    void aFitBeyondTheTheoryIsRefused(String fit) {
        FitQuestion tiny = new FitQuestion(
                fit,
                Optional.empty(),
                Optional.of("steel"),
                OptionalDouble.of(10),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                20,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertThat(refused(FitDesk.answer(tiny))).anyMatch(fault -> fault.contains("a tenth of the size"));
    }

    @Test
    void aBearingIsToldWithItsLetters() {
        DeskAnswer.Told bearing = told(BearingDesk.answer("6203-2RS C3 TN9"));
        assertThat(bearing.heading()).startsWith("6203: a single-row deep groove ball bearing");
        assertThat(figure(bearing, "outside")).isEqualTo(40);
        assertThat(bearing.sentences())
                .containsExactly(
                        "2RS: rubbing seals on both sides.",
                        "C3: more radial clearance than normal.",
                        "TN9: the bearing maker's own letters; ask him what they mean.");
        assertThat(told(BearingDesk.answer("NU 204")).sentences())
                .containsExactly("No clearance group is written, so its radial clearance is normal.");
        assertThat(refused(BearingDesk.answer("flywheel"))).hasSize(1);
    }

    /** By hand: half a millimetre more of bore is pi halves more of gap. */
    @Test
    void aRingGapFollowsTheBore() {
        DeskAnswer.Told ring = told(RingGapDesk.answer(47.5, OptionalDouble.of(0.2), OptionalDouble.of(47)));
        assertThat(figure(ring, "gap")).isCloseTo(0.2 + Math.PI / 2, within(1e-6));
        assertThat(ring.sentences().get(0)).contains("a ring made for this bore is wanted");
        assertThat(verdict(0.2, 47.0)).contains("as is usual");
        assertThat(verdict(0.1, 47.0)).contains("filed back");
        assertThat(verdict(0.2, 47.1)).contains("seize");
        assertThat(refused(RingGapDesk.answer(-1, OptionalDouble.of(0.2), OptionalDouble.empty())))
                .hasSize(2);
    }

    private static String verdict(double gap, double in) {
        return told(RingGapDesk.answer(47, OptionalDouble.of(gap), OptionalDouble.of(in)))
                .sentences()
                .get(0);
    }

    @Test
    void shimsAreChosenOrBought() {
        DeskAnswer.Told shims = told(ShimsDesk.answer(0.62, 0.1, 0.2, List.of(0.1, 0.1, 0.15, 0.2, 0.3)));
        assertThat(shims.heading()).startsWith("Put in 0.300 mm (0.0118 in) and 0.150 mm");
        assertThat(figure(shims, "shim1")).isEqualTo(0.3);
        assertThat(figure(shims, "float")).isEqualTo(0.17);
        DeskAnswer.Told buy = told(ShimsDesk.answer(0.62, 0.1, 0.2, List.of(0.1)));
        assertThat(buy.heading()).contains("Buy one of 0.320 mm", "0.420 mm", "beside 0.100 mm");
        assertThat(figure(buy, "buyMost")).isEqualTo(0.42);
        assertThat(told(ShimsDesk.answer(0.15, 0.1, 0.2, List.of(0.1))).heading())
                .startsWith("No shim: ");
        assertThat(told(ShimsDesk.answer(0.05, 0.1, 0.2, List.of(0.1))).heading())
                .startsWith("No shim helps");
        assertThat(refused(ShimsDesk.answer(-1, 0.1, 0.2, List.of()))).hasSize(1);
    }
}
