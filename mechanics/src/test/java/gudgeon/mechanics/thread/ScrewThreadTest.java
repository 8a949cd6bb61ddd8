package gudgeon.mechanics.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScrewThreadTest {
    /** ISO 898-1:2013, tables 4 and 6 (from memory): stress areas in mm², given to three figures. */
    @ParameterizedTest
    @CsvSource({
        "M3, 5.03",
        "M4, 8.78",
        "M5, 14.2",
        "M6, 20.1",
        "M7, 28.9",
        "M8, 36.6",
        "M10, 58.0",
        "M12, 84.3",
        "M14, 115",
        "M16, 157",
        "M18, 192",
        "M20, 245",
        "M24, 353",
        "M8x1, 39.2",
        "M10x1.25, 61.2",
        "M10x1, 64.5",
        "M12x1.5, 88.1",
        "M12x1.25, 92.1",
        "M14x1.5, 125",
        "M16x1.5, 167"
    })
    void stressAreasAreThoseOfTheStandard(String thread, double area) {
        assertThat(ScrewThread.of(thread).stressAreaMm2()).isCloseTo(area, within(0.006 * area));
    }

    /** ISO 724:1993, table 1 (from memory): pitch and minor diameter in mm, given to a thousandth. */
    @ParameterizedTest
    @CsvSource({
        "M5, 4.480, 4.134",
        "M6, 5.350, 4.917",
        "M8, 7.188, 6.647",
        "M10, 9.026, 8.376",
        "M12, 10.863, 10.106",
        "M8x1, 7.350, 6.917",
        "M10x1.25, 9.188, 8.647",
        "M14x1.25, 13.188, 12.647"
    })
    void basicSizesAreThoseOfTheStandard(String thread, double pitchDiameter, double minor) {
        assertThat(ScrewThread.of(thread).pitchDiameterMm()).isCloseTo(pitchDiameter, within(0.0006));
        assertThat(ScrewThread.of(thread).minorMm()).isCloseTo(minor, within(0.0006));
    }

    /** Published charts of BS 84 threads: effective and core diameter in inches. */
    @ParameterizedTest
    @CsvSource({
        "1/4 BSW, 0.2180, 0.1860",
        "5/16 BSW, 0.2769, 0.2414",
        "3/8 BSW, 0.3350, 0.2950",
        "1/2 BSW, 0.4466, 0.3933",
        "3/16 BSW, 0.1608, 0.1341"
    })
    void whitworthSizesAreThoseOfTheChart(String thread, double effective, double core) {
        assertThat(ScrewThread.of(thread).pitchDiameterMm() / 25.4).isCloseTo(effective, within(0.0002));
        assertThat(ScrewThread.of(thread).coreMm() / 25.4).isCloseTo(core, within(0.0002));
    }

    /** A published chart of cycle threads: outside and core diameter in inches, the core given as the drill. */
    @ParameterizedTest
    @CsvSource({"1/4 CEI, 26, 0.209", "5/16 BSC, 26, 0.272", "7/16x20 CEI, 20, 0.384", "3/16 BSC, 32, 0.154"})
    void cycleThreadsAreThoseOfTheChart(String written, double perInch, double core) {
        ScrewThread thread = ScrewThread.of(written);
        assertThat(25.4 / thread.pitchMm()).isCloseTo(perInch, within(1e-9));
        assertThat(thread.minorMm() / 25.4).isCloseTo(core, within(0.001));
    }

    /** ASME B1.1 stress areas in square inches (from memory; the same in Shigley, table 8-2). */
    @ParameterizedTest
    @CsvSource({"1/4 UNC, 0.0318", "1/4-28 UNF, 0.0364", "3/8 UNC, 0.0775", "1/2-20 UNF, 0.1599", "10-32 UNF, 0.0200"})
    void unifiedStressAreas(String thread, double area) {
        assertThat(ScrewThread.of(thread).stressAreaMm2() / (25.4 * 25.4)).isCloseTo(area, within(0.00008));
    }

    @ParameterizedTest
    @CsvSource({
        "m6, M6",
        "M 8 x 1.25, M8",
        "M8×1, M8x1",
        "'M10x1,25', M10x1.25",
        "M6-LH, M6",
        "M12x1.25 left-hand, M12x1.25",
        "2BA, 2 BA",
        "0 BA, 0 BA",
        "1/4 BSF, 1/4-26 BSF",
        "No.10 UNF, 10-32 UNF",
        "5/16 cei, 5/16-26 CEI"
    })
    void manyWaysOfWritingAreRead(String written, String designation) {
        assertThat(ScrewThread.of(written).designation()).isEqualTo(designation);
    }

    @ParameterizedTest
    @CsvSource({
        "M6.5, known are M1.6",
        "M6x1.25, there is M6x1",
        "1/4-27 BSF, has 26 threads",
        "17 BA, known are BA 0",
        "2/3 BSW, known are BSW 1/8",
        "banana, Write it as in M6",
        "'', No thread is named"
    })
    void aThreadThatDoesNotExistGetsItsSentence(String written, String part) {
        assertThatThrownBy(() -> ScrewThread.of(written))
                .isInstanceOf(UnknownFastener.class)
                .hasMessageContaining(part);
    }

    /** ISO 965-2 (from memory): limits of 6g and 6H, in mm; its tables are the formulas rounded to steps of up to 0.01 mm. */
    @ParameterizedTest
    @CsvSource({"M6, 5.794, 5.212, 5.500, 5.153", "M10, 9.732, 8.862, 9.206, 8.676", "M8, 7.760, 7.042, 7.348, 6.912"})
    void looseEndsAreThoseOfTheStandard(
            String thread, double screwMajor, double screwPitch, double holePitch, double holeMinor) {
        ThreadLimits loose = ThreadLimits.of(ScrewThread.of(thread));
        assertThat(loose.screwMajorMm()).isCloseTo(screwMajor, within(0.01));
        assertThat(loose.screwPitchMm()).isCloseTo(screwPitch, within(0.01));
        assertThat(loose.holePitchMm()).isCloseTo(holePitch, within(0.01));
        assertThat(loose.holeMinorMm()).isCloseTo(holeMinor, within(0.01));
    }

    @Test
    void aSeriesHoldsNoThreadTwiceAndEveryOneIsAThread() {
        for (String size :
                new String[] {"1.6", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "14", "16", "36"}) {
            ScrewThread thread = ScrewThread.of("M" + size);
            assertThat(thread.coreMm()).isPositive().isLessThan(thread.pitchDiameterMm());
        }
        for (int number = 0; number <= 10; number++) {
            assertThat(ScrewThread.of(number + " BA").coreMm()).isPositive();
        }
    }
}
