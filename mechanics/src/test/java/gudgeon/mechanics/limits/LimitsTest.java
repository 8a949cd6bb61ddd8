package gudgeon.mechanics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsTest {
    private static final List<String> SHAFTS = List.of(
            "a", "b", "c", "d", "e", "f", "g", "h", "js", "k", "m", "n", "p", "r", "s", "u", "x", "z", "za", "zb",
            "zc");

    /**
     * Limit deviations in micrometres as ISO 286-2 tabulates them, read from table 6, "Tolerances for inside dimensions (holes)", of
     * a mould-base maker's catalogue, p. 281 (online.flippingbook.com/view/962121).
     */
    @ParameterizedTest
    @CsvSource({
        "2 J6, 2, -4",
        "2 J7, 4, -6",
        "2 J8, 6, -8",
        "2 K6, 0, -6",
        "2 K8, 0, -14",
        "2 M7, -2, -12",
        "2 N6, -4, -10",
        "5 J6, 5, -3",
        "5 J7, 6, -6",
        "5 J8, 10, -8",
        "5 K6, 2, -6",
        "5 K7, 3, -9",
        "5 N6, -5, -13",
        "8 J7, 8, -7",
        "8 J8, 12, -10",
        "8 N7, -4, -19",
        "16 K8, 8, -19",
        "16 N6, -9, -20",
        "16 N7, -5, -23",
        "16 N8, -3, -30",
        "25 K6, 2, -11",
        "25 K7, 6, -15",
        "25 K8, 10, -23",
        "25 M6, -4, -17",
        "25 M7, 0, -21",
        "25 M8, 4, -29",
        "25 N6, -11, -24",
        "25 N7, -7, -28",
        "25 N8, -3, -36",
        "25 R7, -20, -41",
        "47 K7, 7, -18",
        "47 M6, -4, -20",
        "47 M8, 5, -34",
        "47 N6, -12, -28",
        "47 N7, -8, -33",
        "47 N8, -3, -42",
        "47 R7, -25, -50",
        "60 R7, -30, -60",
        "75 R7, -32, -62",
        "52 N7, -9, -39",
        "52 J6, 13, -6",
        "100 R7, -38, -73",
        "110 R7, -41, -76",
        "130 R7, -48, -88",
        "150 R7, -50, -90",
        "170 R7, -53, -93",
        "190 R7, -60, -106",
        "210 R7, -63, -109",
        "240 R7, -67, -113",
        "190 N8, -5, -77",
        "270 R7, -74, -126",
        "190 JS6, 14.5, -14.5",
        "110 JS7, 17.5, -17.5",
        "30 H11, 130, 0",
        "47 H13, 390, 0"
    })
    void holesAreThoseOfThePublishedTable(String designation, double upper, double lower) {
        ToleranceClass limits = ToleranceClass.of(designation);
        assertThat(limits.upperMicrometres()).isEqualTo(upper);
        assertThat(limits.lowerMicrometres()).isEqualTo(lower);
    }

    /**
     * Limit deviations that bearing makers and handbooks print from ISO 286-2 (from memory), and those which ISO 286-2:1988/Cor.1:2006
     * puts right: A13 of 315 to 355 mm, E8 of 80 to 120 mm, R10 of 18 to 30 mm, f9 of 250 to 315 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "330 A13, 2090, 1200",
        "100 E8, 126, 72",
        "25 R10, -28, -112",
        "300 f9, -56, -186",
        "20 H7, 21, 0",
        "20 k6, 15, 2",
        "20 g6, -7, -20",
        "20 f7, -20, -41",
        "20 h6, 0, -13",
        "20 n6, 28, 15",
        "20 p6, 35, 22",
        "20 s6, 48, 35",
        "20 js6, 6.5, -6.5",
        "25 j5, 5, -4",
        "25 j6, 9, -4",
        "35 k5, 13, 2",
        "20 P7, -14, -35",
        "20 D9, 117, 65",
        "280 M6, -9, -41",
        "3 K9, 0, -25",
        "40 N9, 0, -62",
        "3 k8, 14, 0",
        "40 k8, 39, 0",
        "40 a11, -310, -470",
        "41 a11, -320, -480",
        "2 j8, 8, -6",
        "50 t6, 70, 54",
        "10 zc8, 119, 97",
        "0.8 c11, -60, -120",
        "500 zc7, 2663, 2600"
    })
    void limitsAreThoseOfTheStandard(String designation, double upper, double lower) {
        ToleranceClass limits = ToleranceClass.of(designation);
        assertThat(limits.upperMicrometres()).isEqualTo(upper);
        assertThat(limits.lowerMicrometres()).isEqualTo(lower);
    }

    /** Delta of grades 3 to 8 by steps of size: ISO 286-1:2010, table 3, read in Narayana and others, Machine Drawing, table 15.3. */
    @ParameterizedTest
    @CsvSource({
        "210, 3, 4, 6, 9, 17, 26",
        "300, 4, 4, 7, 9, 20, 29",
        "390, 4, 5, 7, 11, 21, 32",
        "480, 5, 5, 7, 13, 23, 34"
    })
    void deltaIsThatOfThePublishedTable(double size, int d3, int d4, int d5, int d6, int d7, int d8) {
        int[] published = {d3, d4, d5, d6, d7, d8};
        for (int i = 0; i < published.length; i++) {
            assertThat(HoleDeviations.delta(i + 3, size)).isEqualTo(published[i]);
        }
    }

    /** The grades' formulas of ISO 286-1:2010, annex A: i = 0.45 cube root D + 0.001 D, IT6 = 10 i and so on in the fifth-root-of-ten row. */
    @ParameterizedTest
    @CsvSource({
        "6, 10",
        "7, 16",
        "8, 25",
        "9, 40",
        "10, 64",
        "11, 100",
        "12, 160",
        "13, 250",
        "14, 400",
        "15, 640",
        "16, 1000",
        "17, 1600",
        "18, 2500"
    })
    void everyGradeIsNearItsFormula(int grade, double times) {
        double[] steps = {3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500};
        for (int i = 1; i < steps.length; i++) {
            double mean = Math.sqrt(steps[i - 1] * steps[i]);
            double unit = 0.45 * Math.cbrt(mean) + 0.001 * mean;
            assertThat(StandardTolerance.micrometres(grade, steps[i]))
                    .isCloseTo(times * unit, within(Math.max(0.75, 0.06 * times * unit)));
        }
    }

    @Property
    void tolerancesGrowWithGradeAndSize(
            @ForAll @IntRange(min = 1, max = 17) int grade, @ForAll @DoubleRange(min = 1.01, max = 499) double size) {
        double here = StandardTolerance.micrometres(grade, size);
        assertThat(StandardTolerance.micrometres(grade + 1, size)).isGreaterThan(here);
        assertThat(StandardTolerance.micrometres(grade, Math.min(500, size * 1.5)))
                .isGreaterThanOrEqualTo(here);
    }

    /** From a to zc each letter stands above the one before it, and the width is always the grade's. */
    @Property
    void shaftsRiseFromLetterToLetter(
            @ForAll @IntRange(min = 4, max = 7) int grade, @ForAll @DoubleRange(min = 1.01, max = 500) double size) {
        double before = Double.NEGATIVE_INFINITY;
        for (String letters : SHAFTS) {
            ToleranceClass limits = ToleranceClass.of(size, letters, grade);
            assertThat(limits.upperMicrometres() - limits.lowerMicrometres())
                    .isCloseTo(StandardTolerance.micrometres(grade, size), within(1e-9));
            if (!letters.equals("js")) {
                assertThat(limits.lowerMicrometres()).as(letters).isGreaterThanOrEqualTo(before);
                before = limits.lowerMicrometres();
            }
        }
    }

    /**
     * The rule by which ISO 286-1 draws holes from shafts: a fit on the basic hole and its twin on the basic shaft, with the shaft one
     * grade finer, have the same clearances.
     */
    @Property
    void twinFitsAreAlike(
            @ForAll @DoubleRange(min = 3.01, max = 500) double size, @ForAll @IntRange(min = 0, max = 20) int at) {
        String letters = SHAFTS.get(at);
        Assume.that(!letters.equals("js"));
        int grade = "kmn".contains(letters) ? 6 : 7;
        Assume.that(!(letters.equals("m") && size > 250 && size <= 315));
        Fit onHole = new Fit(ToleranceClass.of(size, "H", grade), ToleranceClass.of(size, letters, grade - 1));
        Fit onShaft = new Fit(
                ToleranceClass.of(size, letters.toUpperCase(Locale.ROOT), grade),
                ToleranceClass.of(size, "h", grade - 1));
        assertThat(onShaft.leastClearanceMicrometres()).isCloseTo(onHole.leastClearanceMicrometres(), within(1e-9));
        assertThat(onShaft.mostClearanceMicrometres()).isCloseTo(onHole.mostClearanceMicrometres(), within(1e-9));
    }

    @Property
    void basicHoleAndShaftTouchTheLineAndJsStraddlesIt(
            @ForAll @IntRange(min = 1, max = 13) int grade, @ForAll @DoubleRange(min = 0.1, max = 500) double size) {
        assertThat(ToleranceClass.of(size, "H", grade).lowerMicrometres()).isZero();
        assertThat(ToleranceClass.of(size, "h", grade).upperMicrometres()).isZero();
        ToleranceClass js = ToleranceClass.of(size, "js", grade);
        assertThat(js.upperMicrometres()).isEqualTo(-js.lowerMicrometres());
    }

    @Property
    void whatIsWrittenIsReadBack(
            @ForAll @IntRange(min = 1, max = 5000) int tenths,
            @ForAll @IntRange(min = 5, max = 7) int grade,
            @ForAll @IntRange(min = 3, max = 20) int at) {
        ToleranceClass limits = ToleranceClass.of(tenths / 10.0, SHAFTS.get(at), grade);
        assertThat(ToleranceClass.of(limits.designation())).isEqualTo(limits);
    }

    /** Least and most clearance of common fits of 20 mm, by subtraction of the tables' values. */
    @ParameterizedTest
    @CsvSource({
        "20 H7/k6, -15, 19, TRANSITION", "20H7/g6, 7, 41, CLEARANCE", "20 H7/h6, 0, 34, CLEARANCE",
        "20 H7/p6, -35, -1, INTERFERENCE", "k6/H7, 0, 0, NONE", "42 N7/h6, -33, 8, TRANSITION",
        "Ø 20 k6/H7, -15, 19, TRANSITION", "'20,0 H7/s6', -48, -14, INTERFERENCE"
    })
    void fitsAreHoleLessShaft(String designation, double least, double most, String kind) {
        if (kind.equals("NONE")) {
            assertThatThrownBy(() -> Fit.of(designation)).hasMessageContaining("does not begin with a size");
            return;
        }
        Fit fit = Fit.of(designation);
        assertThat(fit.leastClearanceMicrometres()).isEqualTo(least);
        assertThat(fit.mostClearanceMicrometres()).isEqualTo(most);
        assertThat(fit.kind()).isEqualTo(Fit.Kind.valueOf(kind));
    }

    @ParameterizedTest
    @CsvSource({
        "20 H7/w6, is not a letter",
        "20 Jz7/k6, is not a letter",
        "20 H/k6, lacks its tolerance grade",
        "20 H19/k6, grades are 1 to 18",
        "600 H7/k6, outside the tables",
        "20 H7/N6, two holes",
        "20 h7/n6, two shafts",
        "20 H7, a fit has two",
        "20 H7/k6/g6, more than two",
        "20 H7/, is missing",
        "20 J11/h6, not in the tables",
        "0.5 H14/h6, not for sizes up to 1 mm",
        "0 H7/k6, outside the tables",
        "14 cd8/H7, not in the tables",
        "20 K9/h6, not in the tables"
    })
    void aFaultIsSaid(String designation, String part) {
        assertThatThrownBy(() -> Fit.of(designation))
                .isInstanceOf(UnknownDesignation.class)
                .hasMessageContaining(part);
    }

    @Test
    void allFaultsAreSaidAtOnceAndNoneTwice() {
        assertThatThrownBy(() -> Fit.of("20 I7/k99"))
                .isInstanceOfSatisfying(
                        UnknownDesignation.class,
                        fault -> assertThat(fault.sentences()).hasSize(2));
        assertThatThrownBy(() -> Fit.of("700 H7/k6"))
                .isInstanceOfSatisfying(
                        UnknownDesignation.class,
                        fault -> assertThat(fault.sentences()).hasSize(1));
    }
}
