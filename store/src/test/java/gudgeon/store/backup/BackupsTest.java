package gudgeon.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.store.backup.Backup.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups by day and week. */
class BackupsTest {
    private static final Instant MONDAY = Instant.parse("2026-03-02T10:00:00Z");

    @TempDir
    Path folder;

    private Backups at(Instant now, String zone) {
        return new Backups(folder, Clock.fixed(now, ZoneId.of(zone)));
    }

    private static void copy(Path target) {
        try {
            Files.writeString(target, "copy", StandardOpenOption.CREATE_NEW);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private List<Instant> kept(Kind kind) throws IOException {
        return at(MONDAY, "UTC").all().stream()
                .filter(backup -> backup.kind() == kind)
                .map(Backup::taken)
                .toList();
    }

    @Test
    void sevenDaysAndFourWeeksAreKept() throws IOException {
        for (int hour = 0; hour < 24 * 60; hour += 5) {
            at(MONDAY.plus(Duration.ofHours(hour)), "UTC").due(BackupsTest::copy);
        }
        assertThat(kept(Kind.DAILY))
                .hasSize(7)
                .allSatisfy(taken -> assertThat(taken).isAfter(MONDAY.plus(Duration.ofDays(52))));
        assertThat(kept(Kind.WEEKLY)).hasSize(4).isSortedAccordingTo((one, other) -> other.compareTo(one));
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(11);
        }
    }

    @Test
    void aDayBeginsWhereTheClockIs() throws IOException {
        Instant lateInLisbon = Instant.parse("2026-03-02T23:30:00Z");
        at(lateInLisbon, "UTC").due(BackupsTest::copy);
        at(lateInLisbon.plus(Duration.ofHours(1)), "-05:00").due(BackupsTest::copy);
        assertThat(kept(Kind.DAILY)).hasSize(1);
        at(lateInLisbon.plus(Duration.ofHours(1)), "UTC").due(BackupsTest::copy);
        assertThat(kept(Kind.DAILY)).hasSize(2);
    }

    @Test
    void whatWasAskedForIsNeverRemovedAndOtherFilesAreLeftAlone() throws IOException {
        Backup asked = at(MONDAY.minus(Duration.ofDays(900)), "UTC").make(Kind.ASKED, BackupsTest::copy);
        Files.writeString(folder.resolve("daily-notes.db"), "mine");
        for (int day = 0; day < 20; day++) {
            at(MONDAY.plus(Duration.ofDays(day)), "UTC").due(BackupsTest::copy);
        }
        assertThat(at(MONDAY, "UTC").file(asked)).exists();
        assertThat(folder.resolve("daily-notes.db")).exists();
    }

    @Test
    void aCopyThatBreaksOffIsNoBackup() throws IOException {
        assertThatThrownBy(() -> at(MONDAY, "UTC").due(target -> {
                    copy(target);
                    throw new IllegalStateException("the disk is full");
                }))
                .hasMessage("the disk is full");
        assertThat(at(MONDAY, "UTC").all()).isEmpty();
        at(MONDAY, "UTC").due(BackupsTest::copy);
        assertThat(kept(Kind.DAILY)).hasSize(1);
    }
}
