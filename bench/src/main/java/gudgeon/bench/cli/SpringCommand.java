package gudgeon.bench.cli;

import gudgeon.mechanics.spring.CoilSpring;
import gudgeon.rebuild.valvework.SpringAnswer;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A little answer for the bench: what wire, coils and heights say of a valve spring. */
@Command(
        name = "spring",
        mixinStandardHelpOptions = true,
        description =
                "Says solid height, rate, force and room at full lift of a valve spring with closed and ground ends.")
final class SpringCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--wire", required = true, paramLabel = "SIZE", description = "diameter of the wire")
    private String wire = "";

    @Option(names = "--outside", required = true, paramLabel = "SIZE", description = "outside diameter of the coils")
    private String outside = "";

    @Option(
            names = "--coils",
            required = true,
            paramLabel = "COUNT",
            description = "all coils, the closed ones at both ends included, such as 6.5")
    private double coils;

    @Option(names = "--free", paramLabel = "SIZE", description = "free length")
    private @Nullable String free;

    @Option(names = "--fitted", paramLabel = "SIZE", description = "fitted height, valve shut")
    private @Nullable String fitted;

    @Option(names = "--lift", paramLabel = "SIZE", description = "full lift of the valve")
    private @Nullable String lift;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        double wireMm = Typed.mm("--wire", wire);
        SpringAnswer answer = new SpringAnswer(
                spring(wireMm, Typed.mm("--outside", outside) - wireMm),
                size("--free", free),
                size("--fitted", fitted),
                size("--lift", lift));
        answer.sentences().forEach(out::println);
        return answer.marginMm().orElse(1) > 0 ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private CoilSpring spring(double wireMm, double meanMm) {
        try {
            return new CoilSpring(wireMm, meanMm, coils, CoilSpring.Ends.CLOSED_GROUND);
        } catch (IllegalArgumentException impossible) {
            throw new Unusable(
                    "There is no such spring: the wire is above 0, the coils are wider than two wires across, and"
                            + " there are more than 2 of them. Measure wire and outside diameter once more.");
        }
    }

    private static OptionalDouble size(String option, @Nullable String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(Typed.mm(option, text));
    }
}
