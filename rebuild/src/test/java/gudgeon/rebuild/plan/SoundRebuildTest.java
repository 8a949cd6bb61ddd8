package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.LongRun;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.start.StartList;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whoever rebuilds an engine as a careful fitter would is never warned, never stuck, and comes to the end: every engine there is a book
 * of, from taking down to running in, in many sound ways.
 */
class SoundRebuildTest {
    private static final Path EXAMPLES = Path.of("..", "examples");
    /** Seven engines, the first of them again in another way; at full size each in all 32 ways, with two seeds. */
    private static final int REBUILDS = LongRun.of(10, 7 * 64);
    /** Seeds so far apart differ in how the engine was found, its parts bought, its order chosen. */
    private static final int APART = 13;

    private static Map<String, EngineBook> all() {
        Map<String, EngineBook> books = new TreeMap<>();
        for (Archetype archetype : Archetype.values()) {
            books.put(archetype.id(), archetype.book());
        }
        for (String name :
                List.of("tarn-98", "drill/books/tarn-125", "drill/books/upright-248", "drill/books/pumping-set")) {
            try {
                books.put(name, SmallBook.book(Files.readString(EXAMPLES.resolve(name + ".yaml"))));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return books;
    }

    static Stream<Named<EngineBook>> books() {
        return all().entrySet().stream().map(book -> Named.of(book.getKey(), book.getValue()));
    }

    static Stream<Arguments> rebuilds() {
        List<Named<EngineBook>> books = books().toList();
        return IntStream.range(0, REBUILDS)
                .mapToObj(n -> Arguments.of(books.get(n % books.size()), APART * n, Manner.of(APART * n)));
    }

    @ParameterizedTest(name = "{0}, seed {1}: {2}")
    @MethodSource("rebuilds")
    void fromTakingDownToRunningIn(EngineBook book, int seed, Manner manner) {
        Fitter fitter = new Fitter(book, manner);
        fitter.tells(new Fact.Started("98-1", "", manner.found()));
        if (manner.found() == Found.TOGETHER) {
            fitter.takesAllOff();
        }
        fitter.cleansAll();
        if (!manner.oneByOne()) {
            fitter.getsParts();
        }
        assertThat(fitter.left()).contains("first-start", "retighten-head", "clearance-after-heat", "run-in");
        assertThat(book.structure().checks()).allMatch(check -> fitter.left().contains(check.id()));
        assertThat(book.structure().steps())
                .allMatch(step -> step.fits().isEmpty() || fitter.left().contains(step.id()));
        if (manner.undoes()) {
            putsTogether(fitter, manner, fitter.left().size() / 3);
            undoes(fitter);
        }
        putsTogether(fitter, manner, 0);
        assertThat(fitter.raised()).isEmpty();
        assertThat(book.structure().positions())
                .allMatch(position -> fitter.build().place(position.id()).isFilled());
        assertThat(StartList.of(fitter.build(), fitter.standing()).holding()).isEmpty();
        assertThat(RunIn.of(fitter.build()).isDone()).isTrue();
    }

    /** Goes on until no more than so many steps and checks are left. */
    private static void putsTogether(Fitter fitter, Manner manner, int left) {
        List<String> order = manner.anyOrder() ? List.of() : fitter.bestOrder();
        for (String next : order.subList(0, Math.max(0, order.size() - left))) {
            missing(fitter, List.of(next)).forEach(fitter::gets);
            fitter.does(List.of(next));
        }
        while (fitter.left().size() > left) {
            List<String> now = fitter.canBeDone();
            List<Position> missing = missing(fitter, fitter.left());
            if (!missing.isEmpty() && (now.isEmpty() || fitter.chance().nextInt(3) == 0)) {
                fitter.gets(missing.get(fitter.chance().nextInt(missing.size())));
            } else {
                assertThat(now).as("stuck: %s", fitter.plan().waiting()).isNotEmpty();
                fitter.does(List.of(now.get(fitter.chance().nextInt(now.size()))));
            }
        }
    }

    /** The positions for whose part some of these steps and checks wait. */
    private static List<Position> missing(Fitter fitter, List<String> these) {
        return fitter.plan().waiting().stream()
                .filter(waiting -> these.contains(waiting.id()))
                .flatMap(waiting -> waiting.reasons().stream())
                .filter(reason -> reason.kind() == Reason.Kind.PART)
                .flatMap(reason -> fitter.build().structure().position(reason.id()).stream())
                .distinct()
                .toList();
    }

    /** A fault shows in a part that is in already, and it is got at. */
    private static void undoes(Fitter fitter) {
        List<Position> in = fitter.build().structure().positions().stream()
                .filter(position -> fitter.build().place(position.id()).status() == Place.Status.IN)
                .toList();
        Position at = in.get(fitter.chance().nextInt(in.size()));
        fitter.tells(new Fact.FaultFound(at.id(), "It is loose."));
        fitter.undoes(at.id(), "The " + at.name() + " is loose.");
        fitter.uncoversWhatIsToBeProved();
        assertThat(fitter.standing()).isEmpty();
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
