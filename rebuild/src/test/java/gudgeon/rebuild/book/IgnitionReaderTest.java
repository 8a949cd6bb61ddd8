package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.book.Ignition.PointsCam;
import gudgeon.rebuild.book.Ignition.Turns;
import org.junit.jupiter.api.Test;

class IgnitionReaderTest {
    private static final String AROUND = """
            book: 1
            engine: {name: Tarn 98}
            positions: [{id: a, name: a}]
            steps: [{id: fit-a, name: Fit it, fits: [a]}]
            """;

    private static BookReading read(String ignition) {
        return new EngineBookReader().read(AROUND + ignition + "\n");
    }

    private static Ignition ignition(String block) {
        assertThat(read(block)).isInstanceOf(BookReading.Read.class);
        return ((BookReading.Read) read(block)).book().ignition().orElseThrow();
    }

    @Test
    void readsDegreesWithWhatTheyMayBeOff() {
        Ignition read = ignition(
                "ignition: {opens: 25 btdc ± 2, gap: 14 thou ± 2, dwell: 210, turns: clockwise, points: camshaft}");
        Size opens = read.opens().orElseThrow();
        assertThat(opens.unit()).isEqualTo(Unit.DEGREES);
        assertThat(opens.value()).isEqualTo(25);
        assertThat(Ignition.mayBeOff(opens)).isCloseTo(2, within(1e-12));
        assertThat(read.gap().orElseThrow().value()).isCloseTo(0.3556, within(1e-9));
        assertThat(Ignition.mayBeOff(read.dwell().orElseThrow())).isZero();
        assertThat(read.turns()).contains(Turns.CLOCKWISE);
        assertThat(read.points()).contains(PointsCam.CAMSHAFT);
        assertThat(read.flywheel()).isEmpty();
    }

    @Test
    void readsMillimetresOfThePiston() {
        Size opens = ignition("ignition: {opens: 2.5 mm btdc ± 0.2}").opens().orElseThrow();
        assertThat(opens.unit()).isEqualTo(Unit.MM);
        assertThat(opens.value()).isEqualTo(2.5);
        assertThat(ignition("ignition: {opens: 1/8 in btdc}")
                        .opens()
                        .orElseThrow()
                        .value())
                .isCloseTo(3.175, within(1e-12));
    }

    @Test
    void aBookMaySayNothingOfTheSpark() {
        assertThat(((BookReading.Read) read("")).book().ignition()).isEmpty();
        assertThat(ignition("ignition: {points: flywheel}").opens()).isEmpty();
    }

    @Test
    void refusesWhatNoEngineHasAndAllOfItAtOnce() {
        BookReading reading = read("ignition: {opens: 95 btdc, gap: 20 deg, turns: leftwards}");
        assertThat(reading).isInstanceOf(BookReading.Refused.class);
        assertThat(((BookReading.Refused) reading).faults().toString())
                .contains("ignition.opens", "ignition.gap", "ignition.turns");
    }
}
