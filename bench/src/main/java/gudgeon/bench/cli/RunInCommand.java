package gudgeon.bench.cli;

import gudgeon.rebuild.runin.RunIn;
import gudgeon.rebuild.runin.StageNow;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How far an engine is run in, and what is due. */
@Command(
        name = "run-in",
        mixinStandardHelpOptions = true,
        description =
                "Says the stages of running in with their limits, how far each is, and what is due. Writes nothing.")
final class RunInCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/start-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        RunIn runIn = RunIn.of(asked.build());
        if (json) {
            out.println(StartJson.text(runIn));
        } else {
            out.println(runIn.sentence());
            out.println(runIn.scheme().source());
            runIn.stages().forEach(stage -> print(stage, out));
        }
        return Gudgeon.CLEAR;
    }

    private static void print(StageNow stage, PrintWriter out) {
        out.println();
        out.println(stage.stage().name() + " (" + stage.stage().id() + "): " + stage.sentence());
        out.println("  " + stage.limits());
        stage.stage().instructions().forEach(line -> out.println("  " + line));
        stage.works()
                .forEach(work -> out.println("  After it, "
                        + (work.isDone() ? "done" : stage.isOver() ? "due" : "later") + ": " + work.words() + "."));
    }
}
