package gudgeon.rebuild.archetype;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.limits.Fit;
import gudgeon.mechanics.limits.ToleranceClass;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.Where;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The example engine is the lying single with its figures filled in, and nothing else. */
class TarnTest {
    private static final Where ANYWHERE = new Where(1, 1);

    private final EngineBook tarn = read(Path.of("..", "examples", "tarn-98.yaml"));
    private final EngineBook archetype = Archetype.LYING_OVERHEAD_CAM_SINGLE.book();

    @Test
    void hasTheStructureOfItsArchetype() {
        Structure filled = tarn.structure();
        Structure open = archetype.structure();
        assertThat(filled.positions().stream().map(TarnTest::bare))
                .containsExactlyElementsOf(
                        open.positions().stream().map(TarnTest::bare).toList());
        assertThat(filled.joints().stream().map(TarnTest::bare))
                .containsExactlyElementsOf(
                        open.joints().stream().map(TarnTest::bare).toList());
        assertThat(filled.steps().stream().map(TarnTest::anywhere))
                .containsExactlyElementsOf(
                        open.steps().stream().map(TarnTest::anywhere).toList());
        assertThat(filled.checks().stream().map(TarnTest::bare))
                .containsExactlyElementsOf(
                        open.checks().stream().map(TarnTest::bare).toList());
        assertThat(filled.dimensions().stream().map(TarnTest::bare))
                .containsExactlyElementsOf(
                        open.dimensions().stream().map(TarnTest::bare).toList());
    }

    @Test
    void itsArchetypeLeavesEveryFigureOpen() {
        Structure open = archetype.structure();
        assertThat(archetype.geometry()).isEmpty();
        assertThat(open.positions()).allMatch(position -> position.pressed().isEmpty());
        assertThat(open.joints().stream().flatMap(joint -> joint.holes().stream()))
                .allMatch(hole -> hole.thread().isEmpty()
                        && hole.length().isEmpty()
                        && hole.depth().isEmpty());
        assertThat(open.checks()).allMatch(check -> check.expect().isEmpty());
        assertThat(open.dimensions()).allMatch(dimension -> dimension.expect().isEmpty());
    }

    @Test
    void hasALimitForWhateverIsMeasured() {
        assertThat(tarn.geometry()).isPresent();
        assertThat(tarn.structure().checks())
                .allMatch(check ->
                        check.how() != Check.How.MEASURED || check.expect().isPresent());
        assertThat(tarn.structure().dimensions())
                .allMatch(dimension -> dimension.expect().isPresent());
        assertThat(tarn.structure().joints().stream().flatMap(joint -> joint.holes().stream()))
                .noneMatch(hole -> hole.thread().isEmpty());
    }

    @Test
    void itsSeatsAreBoredAsTheStandardHasTheirFits() {
        Fit fit = Fit.of(tarn.structure()
                .position("main-bearing-left")
                .flatMap(Position::seatFit)
                .orElseThrow()
                .size());
        Expect seat = tarn.structure()
                .dimension("main-seat-left")
                .orElseThrow()
                .standard()
                .orElseThrow();
        assertThat(seat.atLeast().orElseThrow()).isCloseTo(fit.hole().leastMm(), within(1e-9));
        assertThat(seat.atMost().orElseThrow()).isCloseTo(fit.hole().mostMm(), within(1e-9));
        ToleranceClass shaft = ToleranceClass.of("20 k6");
        Expect journal = tarn.structure()
                .dimension("main-journal-left")
                .orElseThrow()
                .standard()
                .orElseThrow();
        assertThat(journal.atLeast().orElseThrow()).isCloseTo(shaft.leastMm(), within(1e-9));
        assertThat(journal.atMost().orElseThrow()).isCloseTo(shaft.mostMm(), within(1e-9));
    }

    private static EngineBook read(Path file) {
        try {
            return whole(new EngineBookReader().read(Files.readString(file)));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static EngineBook whole(BookReading reading) {
        assertThat(reading.faults()).isEmpty();
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        return ((BookReading.Read) reading).book();
    }

    private static Position bare(Position position) {
        return new Position(
                position.id(),
                position.name(),
                position.quantity(),
                position.spaces(),
                position.singleUse(),
                position.critical(),
                position.mark(),
                position.compare(),
                position.sizes(),
                Optional.empty(),
                Optional.empty(),
                "",
                List.of(),
                position.note(),
                ANYWHERE);
    }

    private static Joint bare(Joint joint) {
        return new Joint(
                joint.id(),
                joint.name(),
                joint.order(),
                List.of(),
                joint.shape(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                joint.passes(),
                joint.gasket(),
                joint.warps(),
                joint.again(),
                joint.note(),
                joint.holes().stream().map(TarnTest::bare).toList(),
                ANYWHERE);
    }

    private static Hole bare(Hole hole) {
        return new Hole(
                hole.id(),
                Optional.empty(),
                hole.kind(),
                "",
                "",
                hole.head(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                hole.through(),
                hole.dowel(),
                hole.behind(),
                Optional.empty(),
                hole.into(),
                hole.leftHand(),
                Optional.empty(),
                hole.note());
    }

    private static Step anywhere(Step step) {
        return new Step(
                step.id(),
                step.name(),
                step.instructions(),
                step.fits(),
                step.into(),
                step.needs(),
                step.covers(),
                step.tightens(),
                step.oil(),
                step.grease(),
                step.sealant(),
                step.tools(),
                step.minutes(),
                step.setMinutes(),
                step.cautions(),
                ANYWHERE);
    }

    private static Check bare(Check check) {
        return new Check(
                check.id(),
                check.name(),
                check.how(),
                check.instructions(),
                check.clears(),
                check.with(),
                check.needs(),
                check.after(),
                check.disturbedBy(),
                check.disturbedByBlasting(),
                check.holds(),
                Optional.empty(),
                check.late(),
                check.tools(),
                check.minutes(),
                check.cautions(),
                ANYWHERE);
    }

    private static Dimension bare(Dimension dimension) {
        return new Dimension(
                dimension.id(),
                dimension.name(),
                dimension.of(),
                dimension.key(),
                dimension.how(),
                dimension.with(),
                dimension.places(),
                dimension.pieces(),
                dimension.unit(),
                dimension.usual(),
                Optional.empty(),
                Optional.empty(),
                dimension.derived(),
                dimension.inspect(),
                dimension.note(),
                ANYWHERE);
    }
}
