package gudgeon.bench.cli;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.record.Progress;
import gudgeon.bench.print.record.RecordPage;
import gudgeon.bench.print.record.RecordPdf;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.rebuild.record.Wanted;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelvedJournal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The record of a build, to print, to send or to hand on with the engine. */
@Command(
        name = "print-record",
        mixinStandardHelpOptions = true,
        description = "Writes the record of a build, with its photos, as a PDF file or as one page that needs nothing"
                + " beside it. Names of people and devices are left out unless asked for.")
final class PrintRecordCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Mixin
    private final PaperFile paper = new PaperFile();

    @Parameters(index = "0", paramLabel = "BUILD", description = "the build's id, as gudgeon builds lists it")
    private String id = "";

    @Parameters(index = "1", paramLabel = "FILE", description = "the .pdf or .html file to write")
    private @Nullable Path file;

    @Option(names = "--without-prices", description = "leaves out all money")
    private boolean withoutPrices;

    @Option(names = "--with-people", description = "tells the names of sellers, machinists, signers and devices")
    private boolean withPeople;

    @Override
    public Integer call() {
        Path target = Objects.requireNonNull(file);
        String name = target.toString().toLowerCase(Locale.ROOT);
        boolean page = name.endsWith(".html");
        if (!page && !name.endsWith(".pdf")) {
            throw new Unusable(target + " ends neither in .pdf nor in .html; name it so that it does.");
        }
        BuildRecord told = told();
        PaperFile.write(target, new byte[0]);
        try {
            Photos photos = new Photos(data.path());
            if (page) {
                new RecordPage(photos).write(told, target, Progress.UNSEEN);
            } else {
                new RecordPdf(new Pdf(), photos).write(told, paper.paper(), target, Progress.UNSEEN);
            }
        } catch (IOException unwritable) {
            remove(target);
            throw new Unusable(
                    target + " can't be written: " + unwritable.getMessage() + ". See that the disk has room.");
        }
        Objects.requireNonNull(spec).commandLine().getOut().println(target + " holds the build record.");
        return Gudgeon.CLEAR;
    }

    private BuildRecord told() {
        try (Shelf shelf = data.open()) {
            ShelvedJournal journal = shelf.journal(id).orElseThrow(() -> data.noBuild(id));
            return BuildRecord.of(
                    shelf.build(id).orElseThrow(() -> data.noBuild(id)),
                    journal.name(),
                    journal.head(),
                    new Wanted(!withoutPrices, withPeople));
        }
    }

    private static void remove(Path half) {
        try {
            Files.deleteIfExists(half);
        } catch (IOException stays) {
            throw new Unusable(half + " is only half written and can't be removed; remove it.");
        }
    }
}
