package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Engine;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds of every undoing, whatever the engine and however far its rebuild. */
class UndoLawsTest {
    /** A rebuild that went some way through the order that follows, every check passed on the way. */
    private static Build someWay(long seed) {
        Structure structure = AnyStructure.of(seed, 12, 8);
        EngineBook book = new EngineBook(new Engine("Tarn 98", "Merrow & Tull", ""), Optional.empty(), structure);
        List<String> order = structure.precedence().order();
        List<Fact> facts = new ArrayList<>(List.of(SmallBook.inPieces()));
        for (String node : order.subList(0, new Random(seed).nextInt(order.size() + 1))) {
            structure.step(node).map(Step::fits).orElse(List.of()).forEach(p -> facts.add(SmallBook.fitted(p, "", 1)));
            facts.add(structure.step(node).isPresent() ? SmallBook.done(node) : SmallBook.passed(node));
        }
        return SmallBook.told(book, facts.toArray(Fact[]::new));
    }

    private static List<String> covering(Structure structure, String position) {
        return structure.stepsCovering(position).stream()
                .filter(step -> !step.fits().contains(position))
                .map(Step::id)
                .toList();
    }

    @Property(tries = 200)
    void eachIsOffBeforeWhatItCoversAndOnlyWhatStandsComesOff(@ForAll long seed) {
        Build build = someWay(seed);
        for (Position position : build.structure().positions()) {
            List<String> off =
                    Undo.of(build, position.id()).off().stream().map(Step::id).toList();
            for (int i = 0; i < off.size(); i++) {
                assertThat(build.step(off.get(i)).stands()).isTrue();
                for (String under : build.structure().positionsOf(off.get(i))) {
                    covering(build.structure(), under).stream()
                            .filter(over -> build.step(over).stands())
                            .forEach(over -> assertThat(off)
                                    .containsSubsequence(
                                            over,
                                            build.structure()
                                                    .stepFitting(under)
                                                    .orElseThrow()
                                                    .id()));
                }
            }
        }
    }

    @Property(tries = 200)
    void noneOfTheStepsCanBeLeftOut(@ForAll long seed) {
        Build build = someWay(seed);
        Structure structure = build.structure();
        for (Position position : structure.positions()) {
            List<Step> off = Undo.of(build, position.id()).off();
            for (Step spared : off) {
                boolean own = spared.fits().contains(position.id());
                boolean inTheWay = covering(structure, position.id()).contains(spared.id())
                        || off.stream()
                                .flatMap(step -> step.fits().stream())
                                .anyMatch(under -> covering(structure, under).contains(spared.id()));
                assertThat(own || inTheWay).isTrue();
            }
        }
    }

    @Property(tries = 200)
    void writingItLeavesThePositionFreeAndTheForetoldChecksVoid(@ForAll long seed) {
        Build build = someWay(seed);
        for (Position position : build.structure().positions()) {
            Undo undo = Undo.of(build, position.id());
            Build after = SmallBook.told(build, undo.facts("").toArray(Fact[]::new));
            assertThat(build.structure().checks().stream()
                            .map(check -> check.id())
                            .filter(id -> build.check(id).status() == CheckState.Status.PASSED)
                            .filter(id -> !after.check(id).lets()))
                    .containsExactlyInAnyOrderElementsOf(undo.voidChecks());
            assertThat(after.place(position.id()).isOut()).isTrue();
            assertThat(InPlace.over(after, position.id())).isEmpty();
            undo.back()
                    .forEach(id -> assertThat(
                                    after.step(id).stands() || after.check(id).lets())
                            .isFalse());
        }
    }
}
