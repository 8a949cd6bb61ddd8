package gudgeon.bench.cli;

import gudgeon.store.shelf.Restoring;
import gudgeon.store.shelf.Restoring.Restored;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings a backup back. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Brings back a backup of all builds, after proving it; what is there now is kept aside.")
final class RestoreCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Parameters(
            paramLabel = "BACKUP",
            arity = "0..1",
            description = "file name of one in the folder backups; the newest without this")
    private @Nullable String backup;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Restored restored =
                new Restoring(data.path(), Clock.system(ZoneId.systemDefault())).restore(Optional.ofNullable(backup));
        out.println("The builds are again as they were at "
                + restored.backup()
                        .taken()
                        .atZone(ZoneId.systemDefault())
                        .toLocalDateTime()
                        .toString()
                        .replace("T", " ")
                + " ("
                + restored.backup().name() + ").");
        restored.aside().ifPresent(aside -> out.println("What was there before is kept in " + aside + "."));
        return Gudgeon.CLEAR;
    }
}
