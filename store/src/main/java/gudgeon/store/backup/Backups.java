package gudgeon.store.backup;

import gudgeon.store.backup.Backup.Kind;
import gudgeon.store.disk.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The folder of backups.
 *
 * @param folder where they lie
 * @param clock tells the time, and by its zone where a day begins
 */
public record Backups(Path folder, Clock clock) {
    private static final int DAYS_KEPT = 7;
    private static final int WEEKS_KEPT = 4;

    /** The backups, the newest first. */
    public List<Backup> all() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.flatMap(file -> Backup.of(file).stream())
                    .sorted(Comparator.comparing(Backup::taken).reversed().thenComparing(Backup::kind))
                    .toList();
        }
    }

    /** The file of a backup. */
    public Path file(Backup backup) {
        return folder.resolve(backup.name());
    }

    /**
     * The backup with that file name, or the newest where none is named. One dated in the future was made while the clock was wrong,
     * so it is the newest only if there is no other.
     */
    public Optional<Backup> named(Optional<String> name) throws IOException {
        List<Backup> all = all();
        return name.isPresent()
                ? all.stream()
                        .filter(backup -> backup.name().equals(name.get()))
                        .findFirst()
                : all.stream()
                        .filter(this::isPast)
                        .findFirst()
                        .or(() -> all.stream().findFirst());
    }

    private boolean isPast(Backup backup) {
        return !backup.taken().isAfter(clock.instant());
    }

    /**
     * Makes what is due, today's and this week's, and removes what is too old.
     *
     * @param copying copies the database into a new file
     */
    public void due(Consumer<Path> copying) throws IOException {
        LocalDate today = day(clock.instant());
        boolean todays = all().stream()
                .anyMatch(backup ->
                        backup.kind() == Kind.DAILY && day(backup.taken()).equals(today));
        if (!todays) {
            make(Kind.DAILY, copying);
        }
        boolean thisWeeks = all().stream()
                .anyMatch(backup -> backup.kind() == Kind.WEEKLY
                        && week(day(backup.taken())).equals(week(today)));
        if (!thisWeeks) {
            make(Kind.WEEKLY, copying);
        }
        keep(Kind.DAILY, DAYS_KEPT);
        keep(Kind.WEEKLY, WEEKS_KEPT);
    }

    /** Makes a backup now. Either it is whole and on disk, or it is not there. */
    public Backup make(Kind kind, Consumer<Path> copying) throws IOException {
        Backup backup = new Backup(kind, clock.instant().truncatedTo(ChronoUnit.SECONDS));
        WholeFile.write(file(backup), copying::accept);
        return backup;
    }

    /** Those dated in the future are left alone: after the clock was set back, they would push out each new one. */
    private void keep(Kind kind, int many) throws IOException {
        List<Backup> old = all().stream()
                .filter(backup -> backup.kind() == kind)
                .filter(this::isPast)
                .skip(many)
                .toList();
        for (Backup backup : old) {
            Files.delete(file(backup));
        }
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, clock.getZone());
    }

    private static String week(LocalDate day) {
        return day.get(IsoFields.WEEK_BASED_YEAR) + "-" + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }
}
