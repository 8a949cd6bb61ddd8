package gudgeon.rebuild.valvework;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.bore.Worn;
import gudgeon.rebuild.build.Build;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeatSavingTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: head, name: cylinder head}
              - {id: valve-seats, name: valve seats}
              - {id: exhaust-valve, name: exhaust valve}
            steps:
              - {id: fit-valve, name: Fit the valve, fits: [exhaust-valve]}
            dimensions:
              - {id: exhaust-seat-width, name: width of the exhaust seat, of: valve-seats, at-least: 0.8, at-most: 1.8}
              - {id: exhaust-stem-height, name: stem height, of: valve-seats, at-most: 31.3}
            """;

    private static SeatSaving saving(double width, double stem) {
        Build build = Worn.build(
                BOOK,
                Worn.reading("exhaust-seat-width", "", "", width),
                Worn.reading("exhaust-stem-height", "", "", stem));
        return SeatSaving.of(build, "exhaust-valve").orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"1.20, 30.60, GRIND", "2.20, 30.60, CUT", "2.20, 31.25, NOT", "1.20, 31.30, NOT", "1.20, 31.60, NOT"})
    void widthAndRecessionDecide(double width, double stem, SeatSaving.Way way) {
        assertThat(saving(width, stem).way()).isEqualTo(way);
    }

    /** The wider the seat and the deeper the valve, the less can be saved: it never gets better with wear. */
    @Test
    void wearNeverMakesItBetter() {
        int worst = 0;
        for (int hundredths = 3040; hundredths < 3170; hundredths += 5) {
            int now = rank(saving(2.2, hundredths / 100.0).way());
            assertThat(now).isGreaterThanOrEqualTo(worst);
            worst = now;
        }
        assertThat(worst).isEqualTo(2);
    }

    private static int rank(SeatSaving.Way way) {
        return switch (way) {
            case GRIND -> 0;
            case CUT, UNPROVEN -> 1;
            case NOT -> 2;
        };
    }

    @Test
    void whatIsNotMeasuredIsUnproven() {
        Build nothing = Worn.build(BOOK);
        assertThat(SeatSaving.all(nothing)).singleElement().satisfies(saving -> {
            assertThat(saving.way()).isEqualTo(SeatSaving.Way.UNPROVEN);
            assertThat(saving.sentence()).contains("Measure the width");
        });
    }
}
