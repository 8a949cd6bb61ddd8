package gudgeon.bench.cli;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.fasten.CardLayout;
import gudgeon.bench.print.fasten.CardLayout.Asked;
import gudgeon.bench.print.fasten.CardPrint;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Card;
import gudgeon.rebuild.fasten.JointNow;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The card of a joint as a PDF file. */
@Command(
        name = "print-card",
        mixinStandardHelpOptions = true,
        description = "Writes the card of a joint as a PDF file, at true size, to push its fasteners through.")
final class PrintCardCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "[BUILD] JOINT FILE",
            arity = "2..3",
            description = "a build on the shelf, unless --book names one; a joint of it; the .pdf file to write")
    private List<String> words = new ArrayList<>();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Mixin
    private final PaperFile paper = new PaperFile();

    @Override
    public Integer call() {
        PrintedBuild printed = PrintedBuild.of(asked, words, 1, "a build, a joint and a file");
        JointNow joint = JointNow.of(printed.build(), printed.what().get(0))
                .orElseThrow(() -> noJoint(printed.build(), printed.what().get(0)));
        Asked layout = CardLayout.of(Card.of(joint), paper.paper());
        if (layout instanceof Asked.Refused refused) {
            throw new Unusable(refused.sentence());
        }
        CardLayout ready = ((Asked.Ready) layout).layout();
        PaperFile.write(printed.file(), new CardPrint(new Pdf()).of(printed.name(), ready));
        Objects.requireNonNull(spec)
                .commandLine()
                .getOut()
                .println(printed.file()
                        + " holds the card. Print it at 100 %, not fitted to the page, and measure its line of"
                        + " 100 mm before use.");
        return Gudgeon.CLEAR;
    }

    private static Unusable noJoint(Build build, String name) {
        List<String> known = build.structure().joints().stream().map(Joint::id).toList();
        return new Unusable("There is no joint '" + name + "'; "
                + (known.isEmpty() ? "the book has none." : "the book has " + String.join(", ", known) + "."));
    }
}
