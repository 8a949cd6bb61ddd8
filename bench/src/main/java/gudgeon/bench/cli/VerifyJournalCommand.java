package gudgeon.bench.cli;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.Verified;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proves that nothing of a journal was changed or lost. */
@Command(
        name = "verify-journal",
        mixinStandardHelpOptions = true,
        description = "Proves that no entry of a build's journal was changed, lost or put in.")
final class VerifyJournalCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Parameters(paramLabel = "BUILD", description = "the build's id, as gudgeon builds lists it")
    private String build = "";

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        try (Shelf shelf = data.open()) {
            if (shelf.journal(build).isEmpty()) {
                throw data.noBuild(build);
            }
            Verified verified = shelf.verify(build);
            if (verified instanceof Verified.Sound sound) {
                out.println(
                        "Sound: " + Amount.of(sound.entries(), "entry", "entries") + ", none changed, lost or put in.");
                out.println("The chain ends in " + sound.hash() + ".");
                out.println("Written down elsewhere, that line proves later that the journal up to here is the same.");
                return Gudgeon.CLEAR;
            }
            out.println("Not sound. The journal is not as it was written:");
            ((Verified.Broken) verified).sentences().forEach(sentence -> out.println("  " + sentence));
            out.println("gudgeon mend fills in from the backups what is damaged, and keeps aside what is there now.");
            return Gudgeon.NOT_CLEAR;
        }
    }
}
