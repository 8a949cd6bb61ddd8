package gudgeon.bench.cli;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.label.BagAddress;
import gudgeon.bench.print.label.CommonSheet;
import gudgeon.bench.print.label.LabelPages;
import gudgeon.bench.print.label.LabelPrint;
import gudgeon.bench.print.label.LabelSheet;
import gudgeon.bench.print.label.SheetWish;
import gudgeon.rebuild.bag.BagLabel;
import gudgeon.rebuild.sentence.Amount;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Labels for a build's bags as a PDF file. */
@Command(
        name = "print-labels",
        mixinStandardHelpOptions = true,
        description = "Writes labels for the bags of a build as a PDF file, each with a code for the phone.")
final class PrintLabelsCommand implements Callable<Integer> {
    private static final int MOST_EMPTY = 500;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "[BUILD] FILE",
            arity = "1..2",
            description = "a build on the shelf, unless --book names one; the .pdf file to write")
    private List<String> words = new ArrayList<>();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Option(
            names = "--sheet",
            paramLabel = "SHEET",
            description = "a common label sheet: a4-24, a4-21, a4-14, letter-30 or letter-14; without this, a4-24")
    private String sheet = CommonSheet.A4_24.word();

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "another sheet: size of a label, such as '70 x 37' (mm) or '2.63 x 1 in'")
    private String size = "";

    @Option(
            names = "--labels",
            paramLabel = "GRID",
            description = "with --size: labels across and down, such as '3 x 8'")
    private String grid = "";

    @Option(names = "--paper", paramLabel = "PAPER", description = "with --size: A4, A5 or letter; without this, A4")
    private String paper = "A4";

    @Option(names = "--gap", paramLabel = "GAP", description = "with --size: between labels, such as '2.5 x 0'")
    private String gap = "";

    @Option(
            names = "--margin",
            paramLabel = "MARGIN",
            description =
                    "with --size: from the left and top edge to the first label; without this, labels stand in the"
                            + " middle of the sheet")
    private String margin = "";

    @Option(names = "--first", paramLabel = "N", description = "first free label of a sheet that was begun, from 1")
    private int first = 1;

    @Option(
            names = "--empty",
            paramLabel = "N",
            description = "instead of the bags there are: that many labels to write on, for the bags that come next")
    private int empty;

    @Option(
            names = "--address",
            paramLabel = "URL",
            description = "where a phone reaches the bench's pages, so that the codes open them; without this they hold"
                    + " the name of bag and build")
    private String address = "";

    @Option(names = "--trial", description = "with the labels' outlines and a line of 100 mm, for plain paper")
    private boolean trial;

    @Override
    public Integer call() {
        PrintedBuild printed = PrintedBuild.of(asked, words, 0, "a build and a file");
        if (empty < 0 || empty > MOST_EMPTY) {
            throw new Unusable("--empty must be from 1 to " + MOST_EMPTY + ", not " + empty + ".");
        }
        String id = asked.isFromFiles() ? "" : words.get(0);
        List<BagLabel> labels = empty > 0
                ? BagLabel.empty(printed.build(), empty)
                : BagLabel.all(printed.build(), ZoneId.systemDefault());
        LabelPages pages = pages(labels, new BagAddress(bench(), id, printed.name()));
        PaperFile.write(printed.file(), new LabelPrint(new Pdf()).of(pages));
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(printed.file() + " holds " + Amount.of(labels.size(), "label") + " on "
                + Amount.of(pages.pages().size(), "sheet") + ": "
                + pages.sheet().says() + ". Print it at 100 %, not fitted to the page.");
        pages.sentences().forEach(out::println);
        return Gudgeon.CLEAR;
    }

    private String bench() {
        BagAddress.Asked typed = BagAddress.typed(address);
        if (typed instanceof BagAddress.Asked.Refused refused) {
            throw new Unusable(refused.sentence());
        }
        return ((BagAddress.Asked.Usable) typed).bench();
    }

    private LabelPages pages(List<BagLabel> labels, BagAddress codes) {
        SheetWish.Read read = new SheetWish(sheet, paper, grid, size, gap, margin).read();
        if (read instanceof SheetWish.Read.Refused refused) {
            throw new Unusable(String.join(System.lineSeparator(), refused.sentences()));
        }
        LabelSheet on = ((SheetWish.Read.Sheet) read).sheet();
        LabelPages.Asked ready = LabelPages.of(labels, on, first, codes, trial);
        if (ready instanceof LabelPages.Asked.Refused refused) {
            throw new Unusable(String.join(System.lineSeparator(), refused.sentences()));
        }
        return ((LabelPages.Asked.Ready) ready).pages();
    }
}
