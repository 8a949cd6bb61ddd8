package gudgeon.bench.cli;

import gudgeon.rebuild.desk.BearingDesk;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells a bearing's sizes by its number. */
@Command(
        name = "bearing",
        mixinStandardHelpOptions = true,
        description =
                "Tells bore, outside diameter and width of a rolling bearing by its number (ISO 15), and what its letters mean.")
final class BearingCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "NUMBER", arity = "1..*", description = "\"6203 C3\", \"608-2RS\", \"NU 204\"")
    private List<String> number = List.of();

    @Option(names = "--json", description = "the answer as JSON, see docs/desk-json.md")
    private boolean json;

    @Override
    public Integer call() {
        return DeskPrint.print(
                BearingDesk.answer(String.join(" ", number)),
                json,
                Objects.requireNonNull(spec).commandLine().getOut());
    }
}
