package gudgeon.store.shelf;

import gudgeon.store.backup.Backups;
import gudgeon.store.disk.Reason;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;

/** Makes the backup of the day, and of the week, once the first thing of the day is done with a shelf. */
final class DailyBackup {
    private final Backups backups;
    private final Database database;
    private LocalDate tried = LocalDate.MIN;
    private Optional<String> fault = Optional.empty();

    DailyBackup(Backups backups, Database database) {
        this.backups = backups;
        this.database = database;
    }

    /** A backup that fails must not keep anyone from the work; it is told instead. An empty shelf needs none. */
    void ifDue() {
        LocalDate today = LocalDate.now(backups.clock());
        if (tried.equals(today) || database.read(Journals::builds).isEmpty()) {
            return;
        }
        tried = today;
        try {
            backups.due(database::copyTo);
            fault = Optional.empty();
        } catch (IOException broken) {
            fault = Optional.of("No backup could be made in " + backups.folder() + ": " + Reason.of(broken)
                    + ". See that the disk has room and can be written.");
        } catch (ShelfFault broken) {
            fault = Optional.of("No backup could be made. " + broken.getMessage());
        }
    }

    Optional<String> fault() {
        return fault;
    }
}
