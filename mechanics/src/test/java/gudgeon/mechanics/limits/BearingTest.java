package gudgeon.mechanics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BearingTest {
    private static final int[] BORES = {
        3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 17, 20, 22, 25, 28, 30, 32, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95,
        100
    };

    /** Series 60 and 62 of 10 to 100 mm bore, read from a distributor's "Bearing size chart" (scribd.com/document/413351629). */
    @ParameterizedTest
    @CsvSource({
        "6000, 10, 26, 8", "6001, 12, 28, 8", "6002, 15, 32, 9", "6003, 17, 35, 10", "6004, 20, 42, 12",
        "6005, 25, 47, 12", "6006, 30, 55, 13", "6007, 35, 62, 14", "6008, 40, 68, 15", "6009, 45, 75, 16",
        "6010, 50, 80, 16", "6011, 55, 90, 18", "6012, 60, 95, 18", "6013, 65, 100, 18", "6014, 70, 110, 20",
        "6015, 75, 115, 20", "6016, 80, 125, 22", "6017, 85, 130, 22", "6018, 90, 140, 24", "6019, 95, 145, 24",
        "6020, 100, 150, 24", "6200, 10, 30, 9", "6201, 12, 32, 10", "6202, 15, 35, 11", "6203, 17, 40, 12",
        "6204, 20, 47, 14", "6205, 25, 52, 15", "6206, 30, 62, 16", "6207, 35, 72, 17", "6208, 40, 80, 18",
        "6209, 45, 85, 19", "6210, 50, 90, 20", "6211, 55, 100, 21", "6212, 60, 110, 22", "6213, 65, 120, 23",
        "6214, 70, 125, 24", "6215, 75, 130, 25", "6216, 80, 140, 26", "6217, 85, 150, 28", "6218, 90, 160, 30",
        "6219, 95, 170, 32", "6220, 100, 180, 34"
    })
    void sizesAreThoseOfAPublishedChart(String number, int bore, int outside, int width) {
        assertThat(Bearing.of(number))
                .returns(bore, Bearing::boreMm)
                .returns(outside, Bearing::outsideMm)
                .returns(width, Bearing::widthMm)
                .returns(Bearing.Kind.BALL, Bearing::kind);
    }

    /** From bearing makers' catalogues: 6800, 6900 and 160 rows of a catalogue page on series 67 to 64; the rest from memory. */
    @ParameterizedTest
    @CsvSource({
        "61800, 10, 19, 5",
        "61900, 10, 22, 6",
        "6300, 10, 35, 11",
        "61801, 12, 21, 5",
        "61901, 12, 24, 6",
        "16001, 12, 28, 7",
        "607, 7, 19, 6",
        "608, 8, 22, 7",
        "609, 9, 24, 7",
        "623, 3, 10, 4",
        "624, 4, 13, 5",
        "625, 5, 16, 5",
        "626, 6, 19, 6",
        "627, 7, 22, 7",
        "629, 9, 26, 8",
        "6301, 12, 37, 12",
        "6303, 17, 47, 14",
        "6304, 20, 52, 15",
        "6305, 25, 62, 17",
        "62/22, 22, 50, 14",
        "63/28, 28, 68, 18",
        "6404, 20, 72, 19",
        "16004, 20, 42, 8",
        "61904, 20, 37, 9"
    })
    void furtherSizes(String number, int bore, int outside, int width) {
        assertThat(Bearing.of(number))
                .returns(bore, Bearing::boreMm)
                .returns(outside, Bearing::outsideMm)
                .returns(width, Bearing::widthMm);
    }

    @ParameterizedTest
    @CsvSource({"NU 204, 6204", "NJ305E, 6305", "N 406, 6406", "nup 1008, 6008"})
    void aRollerBearingSharesItsSizesWithABallBearing(String roller, String ball) {
        Bearing it = Bearing.of(roller);
        assertThat(it.kind()).isEqualTo(Bearing.Kind.ROLLER);
        assertThat(List.of(it.boreMm(), it.outsideMm(), it.widthMm()))
                .isEqualTo(List.of(
                        Bearing.of(ball).boreMm(),
                        Bearing.of(ball).outsideMm(),
                        Bearing.of(ball).widthMm()));
    }

    /** What the standard's dimension series are: at one bore each is larger than the one before; within one, all grow with the bore. */
    @Test
    void seriesGrowAcrossAndDown() {
        for (int at = 0; at < BORES.length; at++) {
            int before = BORES[at];
            for (String series : BearingSizes.series()) {
                var here = BearingSizes.envelope(series, BORES[at]);
                if (here.isEmpty()) {
                    continue;
                }
                assertThat(here.get().outsideMm())
                        .as(series + " of " + BORES[at])
                        .isGreaterThanOrEqualTo(before);
                before = here.get().outsideMm();
                if (at + 1 < BORES.length) {
                    BearingSizes.envelope(series, BORES[at + 1])
                            .ifPresent(next -> assertThat(next.outsideMm())
                                    .isGreaterThan(here.get().outsideMm()));
                }
            }
        }
    }

    @Test
    void lettersBehindAreUnderstoodTogetherOrApart() {
        assertThat(Bearing.of("6203 C3").suffixes()).containsExactly(BearingSuffix.CLEARANCE_3);
        assertThat(Bearing.of("6203-2RS-C3").suffixes())
                .containsExactly(BearingSuffix.SEALS, BearingSuffix.CLEARANCE_3);
        assertThat(Bearing.of("6203ZZC3").suffixes()).containsExactly(BearingSuffix.SHIELDS, BearingSuffix.CLEARANCE_3);
        assertThat(Bearing.of("6305NR").suffixes()).containsExactly(BearingSuffix.SNAP_RING);
        assertThat(Bearing.of("6305 N").suffixes()).containsExactly(BearingSuffix.GROOVE);
        assertThat(Bearing.of("6305 TN9/C4"))
                .returns(List.of(BearingSuffix.CLEARANCE_4), Bearing::suffixes)
                .returns(List.of("TN9"), Bearing::others);
    }

    @ParameterizedTest
    @CsvSource({
        "7203, of no series",
        "NU 2204, of no series",
        "6421, no bearing 6421",
        "60/23, no bearing",
        "ball, is not a bearing",
        "'', is not a bearing",
        "62033, of no series",
        "16000, no bearing"
    })
    void whatIsNoneIsSaid(String number, String part) {
        assertThatThrownBy(() -> Bearing.of(number))
                .isInstanceOf(UnknownDesignation.class)
                .hasMessageContaining(part);
    }
}
