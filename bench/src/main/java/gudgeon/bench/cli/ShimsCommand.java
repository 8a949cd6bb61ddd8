package gudgeon.bench.cli;

import gudgeon.rebuild.desk.ShimsDesk;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Chooses shims from a stock. */
@Command(
        name = "shims",
        mixinStandardHelpOptions = true,
        description = "Chooses the shims of a stock that leave an end float as wanted, or says what to buy.")
final class ShimsCommand implements Callable<Integer> {
    private static final String BETWEEN = "..";

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--float", paramLabel = "MM", required = true, description = "end float without any of these shims")
    private String endFloat = "";

    @Option(names = "--want", paramLabel = "LEAST..MOST", required = true, description = "float wanted, as 0.10..0.20")
    private String want = "";

    @Option(
            names = "--stock",
            paramLabel = "MM,MM,...",
            description = "thicknesses in stock, one for each piece; with decimal commas put semicolons between them")
    private String stock = "";

    @Option(names = "--json", description = "the answer as JSON, see docs/desk-json.md")
    private boolean json;

    @Override
    public Integer call() {
        int between = want.indexOf(BETWEEN);
        if (between < 0) {
            throw new Unusable(
                    "--want '" + want + "': write the least and the most with two points between, as 0.10..0.20.");
        }
        return DeskPrint.print(
                ShimsDesk.answer(
                        Typed.mm("--float", endFloat),
                        Typed.mm("--want", want.substring(0, between).strip()),
                        Typed.mm(
                                "--want",
                                want.substring(between + BETWEEN.length()).strip()),
                        Typed.listOfMm("--stock", stock)),
                json,
                Objects.requireNonNull(spec).commandLine().getOut());
    }
}
