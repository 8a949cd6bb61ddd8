package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.LongRun;
import gudgeon.store.photo.Photos;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process in which two devices write while a backup runs is killed again and again, each time somewhere else. No entry that it
 * acknowledged may be lost, every photo that the journal names is there, and every backup under its name is whole.
 */
class KillTest {
    private static final int FOLDERS = LongRun.of(4, 5);
    private static final int KILLS_EACH = LongRun.of(3, 200);
    private static final int AT_ONCE = 2;
    private static final int LONGEST_LIFE_MICROS = 60_000;

    @TempDir
    Path folders;

    @Test
    void noAcknowledgedEntryIsLost() throws Exception {
        Child children = Child.packedIn(folders);
        ExecutorService hands = Executors.newFixedThreadPool(AT_ONCE);
        List<Callable<Integer>> work = new ArrayList<>();
        for (int folder = 0; folder < FOLDERS; folder++) {
            Path here = folders.resolve("shelf-" + folder);
            Random random = new Random(folder);
            work.add(() -> killAgainAndAgain(children, here, random));
        }
        int acknowledged = 0;
        for (Future<Integer> done : hands.invokeAll(work)) {
            acknowledged += done.get();
        }
        hands.shutdown();
        assertThat(acknowledged).isGreaterThan(FOLDERS * KILLS_EACH);
    }

    private static int killAgainAndAgain(Child children, Path folder, Random random)
            throws IOException, InterruptedException {
        String id;
        try (Shelf shelf = Shelf.open(folder)) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
        }
        Set<String> acknowledged = new HashSet<>();
        for (int kill = 0; kill < KILLS_EACH; kill++) {
            acknowledged.addAll(
                    writeUntilKilled(children, folder, id, "k" + kill, random.nextInt(LONGEST_LIFE_MICROS)));
            prove(folder, id, acknowledged);
        }
        try (Shelf shelf = Shelf.open(folder)) {
            assertThat(shelf.build(id).orElseThrow().size()).isGreaterThan(acknowledged.size());
        }
        return acknowledged.size();
    }

    /** Kills the writing process some time after its first acknowledgement; gives every key that it acknowledged. */
    private static List<String> writeUntilKilled(Child children, Path folder, String id, String keys, int micros)
            throws IOException, InterruptedException {
        Process child = children.start(folder, id, keys);
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            String first = lines.readLine();
            assertThat(first).isIn(keys + "-tablet-0", keys + "-phone-0");
            acknowledged.add(first);
            TimeUnit.MICROSECONDS.sleep(micros);
            assertThat(child.isAlive()).isTrue();
            child.toHandle().destroyForcibly();
            // what stands in the pipe was said before the end; a number that breaks off is one that was said earlier
            lines.lines()
                    .filter(line -> line.matches(keys + "-(tablet|phone)-[0-9]+"))
                    .forEach(acknowledged::add);
        }
        child.waitFor();
        return acknowledged;
    }

    private static void prove(Path folder, String id, Set<String> acknowledged) throws IOException {
        try (Database database = Database.open(folder.resolve("shelf.db"))) {
            assertThat(database.integrity()).isEqualTo("ok");
            Journals.Shelved row = database.read(journals -> journals.build(id)).orElseThrow();
            List<Line> lines = database.read(journals -> journals.lines(id));
            assertThat(Chain.verify(id, lines, row.entries(), row.head())).isInstanceOf(Verified.Sound.class);
            assertThat(lines.stream().map(Line::key).collect(Collectors.toSet()))
                    .containsAll(acknowledged);
            for (Line line : lines) {
                provePhoto(folder, line.entry().orElseThrow());
            }
        }
        provedBackups(folder);
    }

    private static void provePhoto(Path folder, Entry entry) throws IOException {
        if (entry.fact() instanceof Photographed photo) {
            Path file = new Photos(folder).file(photo.photo(), Photos.Copy.FULL).orElseThrow();
            assertThat(ContentHash.of(Files.readAllBytes(file))).isEqualTo(photo.photo());
        }
    }

    /** Copies, so that looking at a backup does not change it. */
    private static void provedBackups(Path folder) throws IOException {
        List<Path> backups;
        try (Stream<Path> files = Files.list(folder.resolve("backups"))) {
            backups = files.filter(file -> file.toString().endsWith(".db"))
                    .sorted()
                    .toList();
        }
        for (Path backup : backups.subList(Math.max(0, backups.size() - 2), backups.size())) {
            Path copy = folder.resolve("looked-at.db");
            Files.copy(backup, copy);
            try (Database database = Database.open(copy)) {
                assertThat(database.integrity()).isEqualTo("ok");
            }
            DatabaseFiles.removeAll(copy);
        }
    }
}
