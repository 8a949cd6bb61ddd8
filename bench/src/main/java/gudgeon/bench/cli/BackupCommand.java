package gudgeon.bench.cli;

import gudgeon.store.shelf.Shelf;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Makes a backup now. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Makes a backup of all builds now, beside those made by themselves each day and week.",
        footer = {
            "",
            "Photos are files that are never changed or removed; copy the folder photos with any tool. A backup on",
            "the same disk does not outlive the disk: copy the folder backups elsewhere too."
        })
final class BackupCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Override
    public Integer call() {
        try (Shelf shelf = data.open()) {
            Objects.requireNonNull(spec)
                    .commandLine()
                    .getOut()
                    .println("All builds are backed up in " + shelf.backUp() + ".");
            return Gudgeon.CLEAR;
        }
    }
}
