package gudgeon.bench.cli;

import gudgeon.rebuild.desk.FitDesk;
import gudgeon.rebuild.desk.FitQuestion;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells the limits of a fit, how hard it presses and how warm it wants to go in. */
@Command(
        name = "fit-size",
        mixinStandardHelpOptions = true,
        description =
                "Tells the limits of a fit such as \"20 H7/k6\" (ISO 286), how warm a case must be for the part to drop in, "
                        + "how hard it is held and whether it stays tight.")
final class FitSizeCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "FIT", arity = "1..*", description = "\"20 H7/k6\", or one class: \"47 N7\"")
    private List<String> fit = List.of();

    @Option(names = "--part", paramLabel = "MATERIAL", description = "what the part is made of; steel without this")
    private @Nullable String part;

    @Option(names = "--into", paramLabel = "MATERIAL", description = "what it sits in is made of, as aluminium")
    private @Nullable String into;

    @Option(names = "--outside", paramLabel = "MM", description = "least outside diameter of what it sits in")
    private @Nullable String outside;

    @Option(names = "--bore-of-part", paramLabel = "MM", description = "hole through the part; solid without this")
    private @Nullable String boreOfPart;

    @Option(names = "--length", paramLabel = "MM", description = "length over which they touch")
    private @Nullable String length;

    @Option(names = "--friction", paramLabel = "NUMBER", description = "coefficient of friction, for the force")
    private @Nullable String friction;

    @Option(names = "--at", paramLabel = "DEGC", description = "how warm the part is as it goes in; 20 without this")
    private @Nullable String at;

    @Option(names = "--warm-gap", paramLabel = "MM", description = "clearance as it goes in; 0.03 without this")
    private @Nullable String warmGap;

    @Option(names = "--warmest", paramLabel = "DEGC", description = "temperature that must not be passed")
    private @Nullable String warmest;

    @Option(names = "--running", paramLabel = "DEGC", description = "how warm both become in work")
    private @Nullable String running;

    @Option(names = "--json", description = "the answer as JSON, see docs/desk-json.md")
    private boolean json;

    @Override
    public Integer call() {
        FitQuestion limits = FitQuestion.of(String.join(" ", fit));
        FitQuestion question = new FitQuestion(
                limits.designation(),
                Optional.ofNullable(part),
                Optional.ofNullable(into),
                Typed.mmIfAny("--outside", outside),
                Typed.mmIfAny("--bore-of-part", boreOfPart).orElse(limits.boreOfPartMm()),
                Typed.mmIfAny("--length", length),
                Typed.numberIfAny("--friction", friction),
                Typed.celsiusIfAny("--at", at).orElse(limits.atCelsius()),
                Typed.mmIfAny("--warm-gap", warmGap).orElse(limits.warmGapMm()),
                Typed.celsiusIfAny("--warmest", warmest),
                Typed.celsiusIfAny("--running", running));
        return DeskPrint.print(
                FitDesk.answer(question),
                json,
                Objects.requireNonNull(spec).commandLine().getOut());
    }
}
