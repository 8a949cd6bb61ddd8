package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.inPieces;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Method;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Arrived;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The alarms of what is bought and how it goes in. */
class SourcingRulesTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: case, name: crankcase}
              - {id: bearing, name: main bearing, fit: {size: 42 N7/h6, part: steel, into: aluminium, warmest: 120 degC}}
              - {id: loose, name: spacer, fit: {size: 42 H7/g6, part: steel, into: aluminium}}
              - {id: barrel, name: barrel}
              - {id: clips, name: circlips, quantity: 2}
            steps:
              - {id: fit-barrel, name: Fit the barrel, fits: [barrel]}
            family:
              - id: tarn-125
                name: Tarn 125
                parts: {barrel: {spigot: 60.95 mm}}
              - id: tarn-90
                name: Tarn 90
                parts: {barrel: {spigot: 54.95 mm}}
            dimensions:
              - {id: mouth, name: case mouth, of: case, with: calliper, new: {at-least: 55.0, at-most: 55.03}}
              - {id: spigot, name: barrel spigot, of: barrel, with: micrometer, new: {at-least: 54.94, at-most: 54.97}, at-least: 54.9, at-most: 54.97, inspect: true}
              - {id: spigot-play, name: play of the spigot, of: barrel, at-least: 0.03, at-most: 0.16, derived: {as: clearance, of: [mouth, spigot]}}
            """);

    private static List<Alarm> heat(Method method, double celsius) {
        OptionalDouble at = Double.isNaN(celsius) ? OptionalDouble.empty() : OptionalDouble.of(celsius);
        return Told.alarms(new HeatRule(), BOOK, inPieces(), new FittingSaid("bearing", method, at, ""));
    }

    @Test
    void coldIntoATightSeatStops() {
        assertThat(heat(Method.PRESSED_COLD, Double.NaN))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.severity()).isEqualTo(Severity.STOP))
                .satisfies(alarm -> assertThat(alarm.evidence()).containsExactly(2L))
                .satisfies(alarm -> assertThat(alarm.what()).contains("0.033 mm"));
        assertThat(heat(Method.DRAWN_IN, Double.NaN))
                .extracting(Alarm::severity)
                .containsExactly(Severity.LOOK);
        assertThat(Told.alarms(
                        new HeatRule(),
                        BOOK,
                        inPieces(),
                        new FittingSaid("loose", Method.PRESSED_COLD, OptionalDouble.empty(), "")))
                .isEmpty();
    }

    /** 20 + 0.033 / (42 * 21.5e-6) is 56.5 degrees. */
    @Test
    void warmthMustDoForTheTightestAndNotPassWhatItBears() {
        assertThat(heat(Method.WARMED, 56)).extracting(Alarm::severity).containsExactly(Severity.LOOK);
        assertThat(heat(Method.WARMED, 57)).isEmpty();
        assertThat(heat(Method.WARMED, 120)).isEmpty();
        assertThat(heat(Method.WARMED, 121)).extracting(Alarm::severity).containsExactly(Severity.STOP);
        assertThat(heat(Method.WARMED, Double.NaN)).isEmpty();
        // 20 - 0.033 / (42 * 11.7e-6) is -47.2 degrees
        assertThat(heat(Method.COOLED, -40)).hasSize(1);
        assertThat(heat(Method.COOLED, -50)).isEmpty();
    }

    private static Fact barrelOf(String family) {
        return new Fact.PartEntered("other", "barrel", Origin.USED, 1, family, "", "");
    }

    @Test
    void aBarrelThatDoesNotGoIntoTheCaseIsSeenWhenItIsEntered() {
        assertThat(Told.alarms(new FamilyRule(), BOOK, inPieces(), barrelOf("tarn-125")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.at()).isEqualTo("barrel"))
                .satisfies(alarm -> assertThat(alarm.evidence()).containsExactly(2L))
                .satisfies(alarm -> assertThat(alarm.what()).contains("from the Tarn 125"))
                .satisfies(alarm ->
                        assertThat(alarm.figures()).singleElement().asString().contains("Play of the spigot"));
        assertThat(Told.alarms(new FamilyRule(), BOOK, inPieces(), barrelOf("tarn-90")))
                .isEmpty();
        assertThat(Told.alarms(new FamilyRule(), BOOK, inPieces(), barrelOf("")))
                .isEmpty();
    }

    private static List<Alarm> shorts(Fact... facts) {
        return Told.alarms(new ShortRule(), BOOK, facts);
    }

    @Test
    void fewerOrMoreThanOrderedIsSeenWhenTheyCome() {
        Fact ordered = new Ordered("A", "clips", 2, "Low Quay Workshop", "");
        assertThat(shorts(inPieces(), ordered)).isEmpty();
        assertThat(shorts(inPieces(), ordered, new Arrived("A", "clips", 1, "")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("order A").contains("1 of 2 came"));
        assertThat(shorts(inPieces(), ordered, new Arrived("A", "clips", 1, ""), new Arrived("A", "clips", 1, "")))
                .isEmpty();
        assertThat(shorts(inPieces(), ordered, new Arrived("A", "clips", 3, "")))
                .hasSize(1);
        assertThat(shorts(inPieces(), ordered, new Arrived("A", "clips", 2, ""), new Arrived("A", "barrel", 1, "")))
                .extracting(Alarm::at)
                .containsExactly("barrel");
        assertThat(shorts(inPieces(), new Arrived("", "clips", 1, "")))
                .as("never ordered here")
                .isEmpty();
    }

    @Test
    void anotherSizeThanOrderedIsSeenWhenItIsMeasured() {
        Fact ordered = new Ordered(
                "A",
                "barrel",
                "new",
                Optional.empty(),
                1,
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Map.of("spigot", "54.95 mm"));
        Fact micrometer = new InstrumentKept(
                "micrometer", InstrumentKind.MICROMETER, "50 to 75 mm", "0.001 mm", "0.002 mm", Optional.empty(), "");
        assertThat(shorts(inPieces(), micrometer, ordered, reading("54.700 mm")))
                .hasSize(1);
        assertThat(shorts(inPieces(), micrometer, ordered, reading("54.950 mm")))
                .isEmpty();
    }

    private static Fact reading(String value) {
        return new ReadingTaken("spigot", "new", 1, "", value, "micrometer", OptionalDouble.empty(), "");
    }
}
