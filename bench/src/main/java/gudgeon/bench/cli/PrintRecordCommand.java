package gudgeon.bench.cli;

import gudgeon.bench.language.Localization;
import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.record.Pictures;
import gudgeon.bench.print.record.Progress;
import gudgeon.bench.print.record.RecordPage;
import gudgeon.bench.print.record.RecordPrint;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.rebuild.record.Wish;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The record of a build as a file. */
@Command(
        name = "print-record",
        mixinStandardHelpOptions = true,
        description = "Writes the record of a build, to print, to send or to hand on: a PDF file, or one web page.")
final class PrintRecordCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "[BUILD] FILE",
            arity = "1..2",
            description = "a build on the shelf, unless --book names one; the .pdf or .html file to write")
    private List<String> words = List.of();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Mixin
    private final PaperFile paper = new PaperFile();

    @Option(names = "--without-prices", description = "leaves prices out")
    private boolean withoutPrices;

    @Option(names = "--with-people", description = "with the names of people, sellers and devices")
    private boolean withPeople;

    @Override
    public Integer call() {
        PrintedBuild printed = PrintedBuild.of(asked, words, 0, "a build and a file");
        String file = printed.file().toString().toLowerCase(Locale.ROOT);
        boolean page = file.endsWith(".html");
        if (!page && !file.endsWith(".pdf")) {
            throw new Unusable(printed.file() + " ends neither in .pdf nor in .html; name a file of one of these.");
        }
        PaperFile.refuseIfThere(printed.file());
        BuildRecord record =
                BuildRecord.of(printed.build(), printed.name(), lastHash(), new Wish(!withoutPrices, withPeople));
        try {
            if (page) {
                new RecordPage().write(record, pictures(), Localization.ENGLISH, printed.file(), Progress.NONE);
            } else {
                new RecordPrint(new Pdf()).write(record, pictures(), paper.paper(), printed.file(), Progress.NONE);
            }
        } catch (IOException unwritable) {
            throw new Unusable(printed.file() + " can't be written: " + unwritable.getMessage()
                    + ". Check that its folder is there.");
        }
        Objects.requireNonNull(spec).commandLine().getOut().println(printed.file() + " holds the build record.");
        return Gudgeon.CLEAR;
    }

    private String lastHash() {
        if (asked.isFromFiles()) {
            return "";
        }
        try (Shelf shelf = asked.shelf()) {
            return shelf.lastHash(words.get(0)).orElse("");
        }
    }

    private Pictures pictures() {
        if (asked.isFromFiles()) {
            return hash -> Optional.empty();
        }
        Photos photos = new Photos(asked.folder());
        return hash -> photos.noLongerThan(hash, Pictures.LONGEST);
    }
}
