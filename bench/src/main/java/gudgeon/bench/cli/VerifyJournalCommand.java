package gudgeon.bench.cli;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.store.archive.NamedPhotos;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelvedJournal;
import gudgeon.store.shelf.Verified;
import java.io.PrintWriter;
import java.util.List;
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
        description =
                "Proves that no entry of a build's journal was changed, lost or put in, and that its photos are as they were kept.")
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
            ShelvedJournal journal = shelf.journal(build).orElseThrow(() -> data.noBuild(build));
            Verified verified = shelf.verify(build);
            if (verified instanceof Verified.Sound sound) {
                out.println(
                        "Sound: " + Amount.of(sound.entries(), "entry", "entries") + ", none changed, lost or put in.");
                out.println("The chain ends in " + sound.hash() + ".");
                out.println("Written down elsewhere, that line proves later that the journal up to here is the same.");
                return photos(out, journal);
            }
            out.println("Not sound. The journal is not as it was written:");
            ((Verified.Broken) verified).sentences().forEach(sentence -> out.println("  " + sentence));
            out.println("gudgeon mend fills in from the backups what is damaged, and keeps aside what is there now.");
            return Gudgeon.NOT_CLEAR;
        }
    }

    private int photos(PrintWriter out, ShelvedJournal journal) {
        NamedPhotos named = new NamedPhotos(new Photos(data.path()));
        List<String> amiss = named.amiss(journal);
        if (amiss.isEmpty()) {
            out.println(
                    "Photos: " + Amount.of(named.count(journal), "photo", "photos") + ", all there as they were kept.");
            return Gudgeon.CLEAR;
        }
        amiss.forEach(out::println);
        out.println(NamedPhotos.WAY_BACK);
        return Gudgeon.NOT_CLEAR;
    }
}
