package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.CheckFailed;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Fact.StepDone;
import gudgeon.rebuild.journal.Found;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Builds on the shelf. */
class ShelfTest {
    @TempDir
    Path folder;

    private Shelf open() {
        return Shelf.open(folder, Clock.fixed(Small.NOW, ZoneOffset.UTC));
    }

    private static String start(Shelf shelf) {
        return shelf.start("Tarn 98, nº 3", Small.book(), Found.IN_PIECES, "bench");
    }

    private static Outcome append(Shelf shelf, String id, String key, String device, long seen, Fact fact) {
        return shelf.append(id, List.of(Small.entry(key, device, seen, fact)));
    }

    private static List<String> refused(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        return ((Outcome.Refused) outcome).sentences();
    }

    @Test
    void aBuildIsThereAfterOpeningAgain() {
        String id;
        try (Shelf shelf = open()) {
            id = start(shelf);
            assertThat(id).matches("tarn-98-n-3-[a-z0-9]{6}");
            assertThat(append(shelf, id, "a", "bench", 1, new StepDone("fit-crank", "")))
                    .isEqualTo(new Outcome.Kept(2, List.of(2L)));
        }
        try (Shelf shelf = open()) {
            assertThat(shelf.builds()).containsExactly(new ShelvedBuild(id, "Tarn 98, nº 3", Small.NOW, Small.NOW, 2));
            Build build = shelf.build(id).orElseThrow();
            assertThat(build.started())
                    .contains(new Started("Tarn 98, nº 3", ContentHash.of(Small.book()), Found.IN_PIECES));
            assertThat(build.entry(2)).isEqualTo(Small.entry("a", "bench", 1, new StepDone("fit-crank", "")));
            assertThat(shelf.bookText(id)).isEqualTo(Small.book());
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
            assertThat(shelf.build("another")).isEmpty();
            assertThat(shelf.name(id)).contains("Tarn 98, nº 3");
            assertThat(shelf.name("another")).isEmpty();
        }
    }

    @Test
    void whatIsFoldedOnTheWayIsWhatIsFoldedFromTheDisk() {
        String id;
        Build onTheWay;
        try (Shelf shelf = open()) {
            id = start(shelf);
            append(shelf, id, "a", "bench", 1, new CheckPassed("crank-free", "", ""));
            append(
                    shelf,
                    id,
                    "b",
                    "bench",
                    2,
                    new Corrected("a", "", Optional.of(new CheckFailed("crank-free", "", ""))));
            onTheWay = shelf.build(id).orElseThrow();
        }
        try (Shelf shelf = open()) {
            Build again = shelf.build(id).orElseThrow();
            assertThat(again.entries()).isEqualTo(onTheWay.entries());
            assertThat(again.check("crank-free")).isEqualTo(onTheWay.check("crank-free"));
        }
    }

    @Test
    void sendingAgainDoesNoHarm() {
        try (Shelf shelf = open()) {
            String id = start(shelf);
            append(shelf, id, "a", "bench", 1, new Noted("", "one"));
            Outcome again = shelf.append(
                    id,
                    List.of(
                            Small.entry("a", "bench", 1, new Noted("", "one")),
                            Small.entry("b", "bench", 1, new Noted("", "two")),
                            Small.entry("b", "bench", 1, new Noted("", "two"))));
            assertThat(again).isEqualTo(new Outcome.Kept(3, List.of(2L, 3L, 3L)));
            assertThat(shelf.build(id).orElseThrow().size()).isEqualTo(3);
            assertThat(refused(append(shelf, id, "a", "bench", 3, new Noted("", "another"))))
                    .singleElement()
                    .asString()
                    .contains("carries the key of another entry, number 2");
        }
    }

    @Test
    void theSecondDeviceIsToldWhatChangedAndNothingOfItsBatchIsWritten() {
        try (Shelf shelf = open()) {
            String id = start(shelf);
            append(shelf, id, "a", "bench", 1, new CheckFailed("crank-free", "", "tight"));
            Outcome outcome = shelf.append(
                    id,
                    List.of(
                            Small.entry("b", "phone", 1, new Noted("", "on the way")),
                            Small.entry("c", "phone", 1, new CheckPassed("crank-free", "", ""))));
            assertThat(outcome)
                    .isInstanceOfSatisfying(
                            Outcome.Clashed.class,
                            clashed -> assertThat(clashed.with())
                                    .singleElement()
                                    .satisfies(clashing -> {
                                        assertThat(clashing.number()).isEqualTo(2);
                                        assertThat(clashing.sentence())
                                                .contains(
                                                        "on bench (entry 2)",
                                                        "Check failed: Crankshaft turns freely",
                                                        "Check passed");
                                    }));
            assertThat(shelf.build(id).orElseThrow().size()).isEqualTo(2);
            assertThat(append(shelf, id, "c", "phone", 2, new CheckPassed("crank-free", "", "")))
                    .isEqualTo(new Outcome.Kept(3, List.of(3L)));
        }
    }

    @Test
    void whatCanNotStandIsRefusedWhole() {
        try (Shelf shelf = open()) {
            String id = start(shelf);
            String first = shelf.build(id).orElseThrow().entry(1).key();
            Outcome outcome = shelf.append(
                    id,
                    List.of(
                            Small.entry("a", "bench", 1, new Noted("", "good")),
                            Small.entry("b", "bench", 9, new Noted("", "seen too much")),
                            Small.entry("c", "bench", 1, new Started("", "", Found.TOGETHER)),
                            Small.entry("d", "bench", 1, new BookChanged(ContentHash.of("none"), "")),
                            Small.entry("e", "bench", 1, new Corrected("nothing", "", Optional.empty())),
                            Small.entry("f", "bench", 1, new Corrected(first, "", Optional.empty())),
                            Small.entry("g", "bench", 1, new Noted("", "\0"))));
            assertThat(refused(outcome)).hasSize(6);
            assertThat(shelf.build(id).orElseThrow().size()).isEqualTo(1);
            assertThat(refused(append(shelf, "no-build", "a", "bench", 0, new Noted("", "t"))))
                    .containsExactly(
                            "There is no build 'no-build' on the shelf. gudgeon builds lists those there are.");
        }
    }

    @Test
    void aChangedBookCountsFromThenOn() {
        String other = Small.book().replace("Fit the piston", "Fit the piston to its rod");
        try (Shelf shelf = open()) {
            String id = start(shelf);
            append(shelf, id, "a", "bench", 1, new StepDone("fit-crank", ""));
            assertThat(shelf.changeBook(id, other, "said more plainly", "bench", 2))
                    .isEqualTo(new Outcome.Kept(3, List.of(3L)));
            assertThat(shelf.changeBook(id, other, "", "bench", 3)).isEqualTo(new Outcome.Kept(3, List.of()));
            assertThat(shelf.bookText(id)).isEqualTo(other);
            Build build = shelf.build(id).orElseThrow();
            assertThat(build.structure().step("fit-piston").orElseThrow().name())
                    .isEqualTo("Fit the piston to its rod");
            assertThat(build.size()).isEqualTo(3);
            assertThat(refused(shelf.changeBook(id, "book: 1\nengine: {name: x}\nstep: 1\n", "", "bench", 3)))
                    .isNotEmpty();
            assertThat(shelf.changeBook(id, Small.book(), "back", "phone", 2)).isInstanceOf(Outcome.Clashed.class);
        }
    }

    @Test
    void aBookThatCanNotBeUsedStartsNothing() {
        try (Shelf shelf = open()) {
            assertThatThrownBy(() -> shelf.start("x", "nothing", Found.TOGETHER, "bench"))
                    .isInstanceOf(ShelfFault.class);
            assertThatThrownBy(() -> shelf.start("x".repeat(5000), Small.book(), Found.TOGETHER, "bench"))
                    .isInstanceOf(ShelfFault.class);
            assertThat(shelf.builds()).isEmpty();
        }
    }

    @Test
    void aFolderIsHeldByOneAtATime() {
        try (Shelf shelf = open()) {
            assertThat(shelf.builds()).isEmpty();
            assertThatThrownBy(this::open)
                    .isInstanceOf(ShelfFault.class)
                    .hasMessageContaining("in use by another Gudgeon");
        }
        open().close();
    }

    @Test
    void oddFolderNamesAndForeignFilesAreBorne() throws Exception {
        folder = folder.resolve("a b/it's ö?x=1&y#z %41;");
        try (Shelf shelf = open()) {
            start(shelf);
        }
        assertThat(Files.exists(folder.resolve("shelf.db"))).isTrue();
        Files.writeString(folder.resolve("shelf.db"), "this is no database, " + "x".repeat(5000));
        assertThatThrownBy(this::open).isInstanceOf(ShelfFault.class).hasMessageContaining("gudgeon mend");
    }

    @Test
    void twoWritersLoseNothing() throws Exception {
        int writers = 4;
        int each = 50;
        try (Shelf shelf = open()) {
            List<String> ids = List.of(start(shelf), start(shelf));
            ExecutorService threads = Executors.newFixedThreadPool(writers);
            List<Callable<Long>> work = new ArrayList<>();
            for (int writer = 0; writer < writers; writer++) {
                String device = "device-" + writer;
                work.add(() -> {
                    long last = 0;
                    for (int n = 0; n < each; n++) {
                        Entry entry = Small.entry(device + "-" + n, device, 1, new Noted("", "note " + n));
                        last = shelf.append(ids.get(n % 2), List.of(entry)) instanceof Outcome.Kept kept
                                ? kept.lastNumber()
                                : -1;
                    }
                    return last;
                });
            }
            for (Future<Long> done : threads.invokeAll(work)) {
                assertThat(done.get()).isPositive();
            }
            threads.shutdown();
            for (String id : ids) {
                assertThat(shelf.build(id).orElseThrow().entries()).hasSize(1 + writers * each / 2);
                assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
            }
        }
    }

    @Test
    void aDatabaseOfANewerGudgeonIsLeftAlone() {
        open().close();
        try (Handle handle =
                Jdbi.create("jdbc:sqlite:" + folder.resolve("shelf.db")).open()) {
            handle.execute("PRAGMA user_version = 99");
        }
        assertThatThrownBy(this::open)
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining("written by a newer Gudgeon (tables of version 99, this one knows 1)");
    }

    @Test
    void aBatchThatTheDiskRefusesHalfwayLeavesNothing() {
        String id;
        try (Shelf shelf = open()) {
            id = start(shelf);
        }
        try (Handle handle =
                Jdbi.create("jdbc:sqlite:" + folder.resolve("shelf.db")).open()) {
            handle.execute("CREATE TRIGGER full BEFORE INSERT ON entry WHEN NEW.key = 'second'"
                    + " BEGIN SELECT RAISE(ABORT, 'the disk is full'); END");
        }
        Entry first = Small.entry("first", "bench", 1, new Noted("", "one"));
        Entry second = Small.entry("second", "bench", 1, new Noted("", "two"));
        try (Shelf shelf = open()) {
            assertThatThrownBy(() -> shelf.append(id, List.of(first, second)))
                    .isInstanceOf(ShelfFault.class)
                    .hasMessageContainingAll("the disk is full", "Nothing of this was kept");
            assertThat(shelf.build(id).orElseThrow().size()).isEqualTo(1);
            assertThat(shelf.append(id, List.of(first))).isEqualTo(new Outcome.Kept(2, List.of(2L)));
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
        }
    }
}
