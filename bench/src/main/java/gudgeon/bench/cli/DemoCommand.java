package gudgeon.bench.cli;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Serves the demo's engine. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Serves an invented engine to a browser on this machine, to try Gudgeon with.")
final class DemoCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "7373",
            description = "the port, 0 for any free one; ${DEFAULT-VALUE} without this")
    private int port;

    @Override
    public Integer call() {
        try (Demo demo = Demo.open()) {
            Serving.run(
                    Objects.requireNonNull(spec).commandLine(),
                    demo.shelf(),
                    demo.photos(),
                    List.of(Serving.demo()),
                    port,
                    Optional.empty());
        }
        return Gudgeon.CLEAR;
    }
}
