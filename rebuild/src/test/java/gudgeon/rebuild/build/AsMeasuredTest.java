package gudgeon.rebuild.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Protrusion;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Fitted;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import gudgeon.rebuild.journal.Way;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AsMeasuredTest {
    private static EngineBook book() throws IOException {
        EngineBook tarn = read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
        Structure structure = read("""
                        book: 1
                        engine: {name: Tarn 98}
                        positions:
                          - {id: piston, name: piston, sizes: pistons, mark: arrow down}
                          - {id: head-gasket, name: head gasket, sizes: gaskets}
                          - {id: base-gasket, name: base gasket, sizes: base-gasket, pressed: 0.40 ± 0.03}
                          - {id: inlet-valve, name: inlet valve, sizes: valves.inlet}
                        steps:
                          - {id: fit, name: Fit them all, fits: [piston, head-gasket, base-gasket, inlet-valve]}
                        dimensions:
                          - {id: inlet-head, name: head of the inlet valve, of: inlet-valve, key: head, axes: [one way, square to it]}
                        """).structure();
        return new EngineBook(tarn.engine(), tarn.geometry(), structure);
    }

    private static EngineBook read(String text) {
        return ((BookReading.Read) new EngineBookReader().read(text)).book();
    }

    private static AsMeasured after(Fact... facts) throws IOException {
        Build build = Build.of(book());
        for (Fact fact : facts) {
            build = build.after(new Entry("e" + build.size(), Instant.EPOCH, "bench", build.size(), fact));
        }
        return AsMeasured.of(build).orElseThrow();
    }

    private static double crown(Geometry geometry, String piston) {
        Protrusion protrusion = geometry.protrusion(geometry.piston(piston).orElseThrow());
        return protrusion.mm(Size::value);
    }

    @Test
    void isTheBookWhileNothingIsMeasured() throws IOException {
        AsMeasured asMeasured = after();
        assertThat(asMeasured.differs()).isFalse();
        assertThat(asMeasured.geometry()).isEqualTo(book().geometry().orElseThrow());
    }

    @Test
    void laysANewPistonOverTheBooksFirst() throws IOException {
        AsMeasured asMeasured = after(
                new PartEntered("from stock", "piston", Origin.PATTERN, 1, ""),
                new Measured(
                        "piston",
                        "from stock",
                        Map.of("pockets.exhaust.depth", "0.2 ± 0.05", "compression-height", "26.5 mm")));
        assertThat(asMeasured.choice().pistonId()).contains("from stock");
        Size depth = asMeasured
                .geometry()
                .size("pistons.from stock.pockets.exhaust.depth")
                .orElseThrow();
        assertThat(depth.value()).isEqualTo(0.2);
        assertThat(asMeasured
                        .geometry()
                        .size("pistons.from stock.land")
                        .orElseThrow()
                        .value())
                .isEqualTo(49.60);
        assertThat(asMeasured.geometry().pistons().get(0))
                .isEqualTo(book().geometry().orElseThrow().pistons().get(0));
        assertThat(crown(asMeasured.geometry(), "from stock"))
                .isCloseTo(crown(asMeasured.geometry(), "original") - 0.5, within(1e-9));
        assertThat(asMeasured.notes())
                .containsExactly(
                        "On the piston 'from stock' 2 of 17 sizes were measured; the others are taken from the book.");
    }

    @Test
    void takesAPartThatTheBookKnowsByNameFromTheBook() throws IOException {
        AsMeasured asMeasured = after(new PartEntered("thin", "head-gasket", Origin.PATTERN, 1, ""));
        assertThat(asMeasured.choice().gasketId()).contains("thin");
        assertThat(asMeasured.geometry()).isEqualTo(book().geometry().orElseThrow());
        assertThat(asMeasured.differs()).isTrue();
    }

    @Test
    void aThinnerBaseGasketLetsTheCrownStandHigher() throws IOException {
        AsMeasured asMeasured = after(
                new PartEntered("paper", "base-gasket", Origin.MADE, 1, ""),
                new Measured("base-gasket", "paper", Map.of("pressed", "0.15")));
        Geometry booked = book().geometry().orElseThrow();
        assertThat(crown(asMeasured.geometry(), "original")).isCloseTo(crown(booked, "original") + 0.25, within(1e-9));
        assertThat(asMeasured
                        .geometry()
                        .size("crank.protrusion")
                        .orElseThrow()
                        .quantity()
                        .standardUncertainty())
                .isGreaterThan(
                        booked.size("crank.protrusion").orElseThrow().quantity().standardUncertainty());
    }

    @Test
    void laysWhatWasMeasuredOnTheValveThatCameOff() throws IOException {
        AsMeasured asMeasured = after(new Measured("inlet-valve", "", Map.of("head", "0.93 in")));
        assertThat(asMeasured.geometry().valve("inlet").orElseThrow().head().value())
                .isCloseTo(23.622, within(1e-9));
    }

    @Test
    void readingsOfASizeThatTheFiguresKnowFlowIntoIt() throws IOException {
        Fact micrometer = new InstrumentKept(
                "micrometer", InstrumentKind.MICROMETER, "0 to 25 mm", "0.01 mm", "0.004 mm", Optional.empty(), "");
        AsMeasured asMeasured = after(micrometer, head("one way", "23.60 mm"), head("square to it", "23.64 mm"));
        Size head = asMeasured.geometry().valve("inlet").orElseThrow().head();
        assertThat(head.value()).isCloseTo(23.62, within(1e-9));
        // the micrometer's 0.004 / sqrt 3 and 0.01 / sqrt 12, and half of what the two places differ by, 0.02 / sqrt 3
        assertThat(head.quantity().standardUncertainty()).isCloseTo(0.012124, within(1e-5));
        assertThat(head.howMeasured()).contains("mean of 2 readings");
        assertThat(asMeasured.differs()).isTrue();
        AsMeasured later =
                after(micrometer, head("one way", "23.60 mm"), new Measured("inlet-valve", "", Map.of("head", "23.5")));
        assertThat(later.geometry().valve("inlet").orElseThrow().head().value()).isEqualTo(23.5);
        AsMeasured worked = after(micrometer, head("one way", "23.60 mm"), new WorkBack("inlet-valve", "", "faced"));
        assertThat(worked.geometry()).isEqualTo(book().geometry().orElseThrow());
    }

    private static Fact head(String at, String value) {
        return new ReadingTaken("inlet-head", "", 1, at, value, "micrometer", OptionalDouble.empty(), "");
    }

    @Test
    void saysWhatCannotBeUsed() throws IOException {
        AsMeasured asMeasured =
                after(new Measured("piston", "", Map.of("land", "1.953", "bumps", "3", "compression-height", "tall")));
        assertThat(asMeasured.geometry()).isEqualTo(book().geometry().orElseThrow());
        assertThat(asMeasured.unread())
                .extracting(Unread::sentence)
                .satisfiesExactlyInAnyOrder(
                        sentence -> assertThat(sentence).contains("land").contains("looks like inches"),
                        sentence -> assertThat(sentence).contains("bumps").contains("no such size"),
                        sentence -> assertThat(sentence)
                                .startsWith("The compression height measured on the piston does not count:")
                                .endsWith(". Correct the entry."));
    }

    @Test
    void knowsThatThePistonWentInTurned() throws IOException {
        assertThat(after(new Fitted("piston", "", 1, Way.TURNED, "")).choice().turned())
                .isTrue();
    }
}
