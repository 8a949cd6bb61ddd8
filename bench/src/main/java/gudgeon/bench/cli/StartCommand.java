package gudgeon.bench.cli;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.caution.MakerFirst;
import gudgeon.rebuild.start.StartItem;
import gudgeon.rebuild.start.StartList;
import java.io.PrintWriter;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a build's journal leaves open before the first start. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        description =
                "Says what the journal leaves open before the first start, and whether it is signed. Starts and writes nothing.")
final class StartCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/start-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        StartList list = StartList.of(build, Alarms.of(build));
        if (json) {
            out.println(StartJson.text(list));
        } else {
            out.println(list.sentence());
            for (StartItem.Kind kind : StartItem.Kind.values()) {
                print(kind.words(), list.of(kind), out);
            }
            out.println();
            MakerFirst.sentences().forEach(out::println);
        }
        return list.holding().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private static void print(String heading, List<StartItem> items, PrintWriter out) {
        if (items.isEmpty()) {
            return;
        }
        out.println();
        out.println(heading + ":");
        for (StartItem item : items) {
            out.println("  " + item.standing().words() + ": " + item.name() + " (" + item.id() + ")");
            out.println("         " + item.sentence());
        }
    }
}
