package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.LongRun;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A database of older tables whose migration is cut short, by a fault, a kill or the power: it has the tables of one version whole, no
 * entry is lost, and the next start goes on to the last. One of newer tables is left as it is.
 */
class MigrationTest {
    private static final Clock CLOCK = Clock.fixed(Small.NOW, ZoneOffset.UTC);
    private static final int ENTRIES = 200;
    private static final int KILLS = LongRun.of(3, 300);
    /** About as long as it takes. */
    private static final int LATEST_KILL_MICROS = 80_000;

    private static final int CUTS = LongRun.of(12, 2_000);
    private static final int FIRST = Migrations.ofProgram().version();
    private static final int LAST = Migrator.all().version();

    @TempDir
    Path folder;

    private String id = "";
    private Moment old = new Moment(new byte[0], new byte[0], new byte[0]);
    /** What tables of each version are, the first at the beginning. */
    private final List<List<String>> tables = new ArrayList<>();

    @BeforeEach
    void aDatabaseOfOldTables() throws IOException {
        Path first = folder.resolve("first");
        try (Shelf shelf = Shelf.open(first, CLOCK)) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
            List<Entry> entries = new ArrayList<>();
            for (int n = 2; n <= ENTRIES; n++) {
                entries.add(Small.entry("k" + n, "bench", 1, new Noted("", n + " " + "x".repeat(1_000))));
            }
            assertThat(shelf.append(id, entries)).isInstanceOf(Outcome.Kept.class);
        }
        old = Moment.of(first);
        layOld();
        for (int version = FIRST; version <= LAST; version++) {
            Database.open(file(), Migrator.ofVersion(version)).close();
            tables.add(tables(file()));
        }
    }

    private Path file() {
        return folder.resolve("data").resolve("shelf.db");
    }

    private void layOld() throws IOException {
        old.layInto(folder.resolve("data"), new Random(1));
    }

    private static List<String> tables(Path file) {
        try (Handle handle = Jdbi.create("jdbc:sqlite:" + file).open()) {
            return handle.createQuery("SELECT coalesce(sql, name) FROM sqlite_schema ORDER BY name")
                    .mapTo(String.class)
                    .list();
        }
    }

    private static int version(Path file) {
        try (Handle handle = Jdbi.create("jdbc:sqlite:" + file).open()) {
            return handle.createQuery("PRAGMA user_version")
                    .mapTo(Integer.class)
                    .one();
        }
    }

    /** The tables are those of their version, and the next start brings all to the last; gives the version that was found. */
    private int proved(String how) {
        int version = version(file());
        assertThat(version).as(how).isBetween(FIRST, LAST);
        assertThat(tables(file())).as(how).isEqualTo(tables.get(version - FIRST));
        holdsAll(how, Migrator.ofVersion(version));
        holdsAll(how, Migrator.all());
        assertThat(tables(file())).as(how).isEqualTo(tables.get(LAST - FIRST));
        return version;
    }

    /** Opened by a program of some version; of the tables with nothing in the entries' place, what they were moved to is counted. */
    private void holdsAll(String how, Migrations migrations) {
        try (Database database = Database.open(file(), migrations)) {
            assertThat(database.integrity()).as(how).isEqualTo("ok");
            if (database.version() == FIRST + 1) {
                return;
            }
            Journals.Shelved row = database.read(journals -> journals.build(id)).orElseThrow();
            assertThat(row.entries()).as(how).isEqualTo(ENTRIES);
            List<Line> lines = database.read(journals -> journals.lines(id));
            assertThat(Chain.verify(id, lines, row.entries(), row.head()))
                    .as(how)
                    .isInstanceOf(Verified.Sound.class);
        }
    }

    @Test
    void aFaultInTheMidstLeavesTheTablesOfTheVersionBefore() throws IOException {
        for (int version = FIRST + 1; version <= LAST; version++) {
            layOld();
            List<String> scripts = new ArrayList<>(Migrator.ofVersion(version).scripts());
            scripts.set(version - 1, scripts.get(version - 1) + "\nINSERT INTO no_such_table VALUES (1);");
            assertThatThrownBy(() -> Database.open(file(), new Migrations(scripts)))
                    .isInstanceOf(ShelfFault.class)
                    .hasMessageContaining("can't be brought up to date")
                    .hasMessageContaining("It is as it was.");
            assertThat(proved("fault on the way to " + version)).isEqualTo(version - 1);
        }
    }

    @Test
    void aKillInTheMidstLeavesTheTablesOfOneVersion() throws Exception {
        Random random = new Random(7);
        for (int kill = 0; kill < KILLS; kill++) {
            layOld();
            Process child = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xmx64m",
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                            Migrator.class.getName(),
                            file().toString())
                    .redirectError(folder.resolve("errors.txt").toFile())
                    .start();
            try (BufferedReader said =
                    new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
                assertThat(said.readLine()).isEqualTo("begins");
                TimeUnit.MICROSECONDS.sleep(random.nextInt(LATEST_KILL_MICROS));
                child.toHandle().destroyForcibly();
            }
            child.waitFor();
            proved("kill " + kill);
        }
    }

    @Test
    void aLossOfPowerInTheMidstLeavesTheTablesOfOneVersion() throws IOException {
        layOld();
        Moment migrated;
        try (Database open = Database.open(file(), Migrator.all())) {
            assertThat(open.version()).isEqualTo(LAST);
            migrated = Moment.of(folder.resolve("data"));
        }
        Moment closed = Moment.of(folder.resolve("data"));
        Set<Integer> found = new TreeSet<>();
        for (int seed = 0; seed < CUTS; seed++) {
            Random chance = new Random(seed);
            old.cutInLog(migrated, chance).layInto(folder.resolve("data"), chance);
            found.add(proved("log, seed " + seed));
            migrated.cutInCheckpoint(closed, chance).layInto(folder.resolve("data"), chance);
            assertThat(proved("checkpoint, seed " + seed)).isEqualTo(LAST);
        }
        assertThat(found).as("versions that the power left").contains(FIRST).hasSizeGreaterThan(1);
    }

    @Test
    void newerTablesAreLeftAsTheyAreByAllThatOpensThem() throws IOException {
        layOld();
        Database.open(file(), Migrator.all()).close();
        byte[] newer = Files.readAllBytes(file());
        Path data = folder.resolve("data");
        for (Runnable opening :
                List.<Runnable>of(() -> Shelf.open(data, CLOCK).close(), () -> new Mending(data, CLOCK).mend())) {
            assertThatThrownBy(opening::run)
                    .isInstanceOf(ShelfFault.class)
                    .hasMessageContaining("was written by a newer Gudgeon (tables of version " + LAST)
                    .hasMessageContaining("Update this one.");
            assertThat(Files.readAllBytes(file())).isEqualTo(newer);
        }
        assertThat(version(file())).isEqualTo(LAST);
    }
}
