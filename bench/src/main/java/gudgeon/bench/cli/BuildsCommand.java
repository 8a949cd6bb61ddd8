package gudgeon.bench.cli;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelvedBuild;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the builds on the shelf. */
@Command(
        name = "builds",
        mixinStandardHelpOptions = true,
        description = "Lists the builds on the shelf with their ids, the one last worked on first.")
final class BuildsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        try (Shelf shelf = data.open()) {
            List<ShelvedBuild> builds = shelf.builds();
            if (builds.isEmpty()) {
                out.println("No build is kept in " + data.path() + " yet.");
            }
            builds.forEach(build -> out.println(line(build)));
            shelf.backupFault().ifPresent(out::println);
            return shelf.backupFault().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
        }
    }

    private static String line(ShelvedBuild build) {
        return build.id() + "  " + build.name() + ", begun "
                + build.begun().atZone(ZoneId.systemDefault()).toLocalDate() + ", last worked on "
                + build.lastEntry().atZone(ZoneId.systemDefault()).toLocalDate() + ", "
                + Amount.of(build.entries(), "entry", "entries");
    }
}
