package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever rebuilds an engine as a careful fitter would is never warned, never stuck, and comes to the end. */
class SoundRebuildTest {
    static Stream<Named<EngineBook>> books() throws IOException {
        EngineBook tarn = SmallBook.book(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
        return Stream.concat(
                Stream.of(Archetype.values()).map(archetype -> Named.of(archetype.id(), archetype.book())),
                Stream.of(Named.of("tarn-98", tarn)));
    }

    @ParameterizedTest
    @MethodSource("books")
    void takenDownAndPutTogetherAgain(EngineBook book) {
        Fitter fitter = new Fitter(book);
        fitter.tells(SmallBook.together());
        fitter.takesAllOff();
        fitter.cleansAll();
        fitter.getsParts();
        List<String> order = fitter.bestOrder();
        assertThat(order).contains("first-start", "retighten-head", "clearance-after-heat", "run-in");
        assertThat(book.structure().checks()).allMatch(check -> order.contains(check.id()));
        assertThat(book.structure().steps()).allMatch(step -> step.fits().isEmpty() || order.contains(step.id()));
        fitter.does(order);
        assertThat(fitter.left()).isEmpty();
        assertThat(fitter.raised()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("books")
    void boughtInPiecesAndPutTogether(EngineBook book) {
        Fitter fitter = new Fitter(book);
        fitter.tells(SmallBook.inPieces());
        fitter.cleansAll();
        fitter.getsParts();
        fitter.does(fitter.bestOrder());
        assertThat(fitter.left()).isEmpty();
        assertThat(fitter.raised()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("books")
    void aFaultFoundOnTheWayIsUndoneAndDoneAgain(EngineBook book) {
        Fitter fitter = new Fitter(book);
        fitter.tells(SmallBook.inPieces());
        fitter.getsParts();
        List<String> order = fitter.bestOrder();
        fitter.does(order.subList(0, order.size() * 2 / 3));
        fitter.tells(new Fact.FaultFound("gudgeon-pin", "It moves sideways."));
        fitter.undoes("gudgeon-pin", "The pin moves sideways.");
        assertThat(fitter.standing()).isEmpty();
        fitter.does(fitter.bestOrder());
        assertThat(fitter.left()).isEmpty();
        assertThat(fitter.raised()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("books")
    void onlyTheTopEndOffAndOnAgain(EngineBook book) {
        Fitter fitter = new Fitter(book);
        fitter.tells(SmallBook.together());
        assertThat(fitter.left()).isEmpty();
        fitter.undoes("barrel", "The barrel is to be bored.");
        fitter.uncoversWhatIsToBeProved();
        List<String> order = fitter.bestOrder();
        assertThat(order)
                .as("what was disturbed is proved, what was never touched is not asked for")
                .contains(
                        "fit-barrel",
                        "two-turns",
                        "compression-test",
                        "retighten-head",
                        "clearance-after-heat",
                        "run-in")
                .doesNotContain("crank-free", "oilways-proved", "close-case");
        fitter.does(order);
        assertThat(fitter.left()).isEmpty();
        assertThat(fitter.raised()).isEmpty();
    }
}
