package gudgeon.bench.cli;

import gudgeon.bench.about.Edition;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists what Gudgeon is built on. */
@Command(
        name = "libraries",
        mixinStandardHelpOptions = true,
        description = "Lists the libraries that ship with Gudgeon, each with its licence.")
final class LibrariesCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Override
    public Integer call() {
        Edition.libraries().forEach(Objects.requireNonNull(spec).commandLine().getOut()::println);
        return Gudgeon.CLEAR;
    }
}
