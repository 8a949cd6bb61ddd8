package gudgeon.bench.cli;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.store.shelf.Mending;
import gudgeon.store.shelf.Mending.Mended;
import gudgeon.store.shelf.Mending.MendedBuild;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Mends a damaged database. */
@Command(
        name = "mend",
        mixinStandardHelpOptions = true,
        description = "Mends a damaged database: saves every entry that can be read and fills in the rest from the"
                + " backups; what is there now is kept aside.",
        footer = {
            "",
            "Each entry proves itself by its hash, so nothing wrong comes in. Where the disk is failing, copy the data",
            "folder to another disk first and mend it there."
        })
final class MendCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Mended mended = new Mending(data.path(), Clock.system(ZoneId.systemDefault())).mend();
        if (mended.builds().isEmpty()) {
            out.println("No build could be found in " + data.path() + ", nor in its backups.");
        }
        mended.builds().forEach(build -> say(out, build));
        mended.aside().ifPresent(aside -> out.println("What was there before is kept in " + aside + "."));
        return mended.builds().stream().allMatch(build -> build.lost() == 0) ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private static void say(PrintWriter out, MendedBuild build) {
        out.println(
                build.id() + "  " + build.name() + ": " + Amount.of(build.entries(), "entry", "entries") + ", proved"
                        + (build.fromBackups() == 0 ? "" : ", " + build.fromBackups() + " of them from backups") + ".");
        if (build.lost() > 0) {
            long first = build.entries() + 1;
            long last = build.entries() + build.lost();
            out.println("  " + (first == last ? "Entry " + first + " is" : "Entries " + first + " to " + last + " are")
                    + " lost to its journal: entry " + first
                    + " can't be read, and no backup has it. Enter anew what you"
                    + " remember.");
            build.kept()
                    .ifPresent(text ->
                            out.println("  Those behind it that can be read are kept as text in " + text + "."));
        }
    }
}
