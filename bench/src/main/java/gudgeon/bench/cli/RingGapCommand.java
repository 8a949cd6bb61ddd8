package gudgeon.bench.cli;

import gudgeon.rebuild.desk.RingGapDesk;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells the gap of a piston ring in a bore. */
@Command(
        name = "ring-gap",
        mixinStandardHelpOptions = true,
        description = "Tells the gap usual for a bore, and the gap that a ring measured in one bore has in another.")
final class RingGapCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--bore", paramLabel = "MM", required = true, description = "the bore asked for")
    private String bore = "";

    @Option(names = "--from-gap", paramLabel = "MM", description = "a gap that was measured")
    private @Nullable String fromGap;

    @Option(names = "--from-bore", paramLabel = "MM", description = "the bore in which it was measured")
    private @Nullable String fromBore;

    @Option(names = "--json", description = "the answer as JSON, see docs/desk-json.md")
    private boolean json;

    @Override
    public Integer call() {
        return DeskPrint.print(
                RingGapDesk.answer(
                        Typed.mm("--bore", bore),
                        Typed.mmIfAny("--from-gap", fromGap),
                        Typed.mmIfAny("--from-bore", fromBore)),
                json,
                Objects.requireNonNull(spec).commandLine().getOut());
    }
}
