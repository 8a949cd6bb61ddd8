package gudgeon.bench.cli;

import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Undo;
import java.io.PrintWriter;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What it takes to get at a part. */
@Command(
        name = "undo",
        mixinStandardHelpOptions = true,
        description =
                "Says what has to come off to get at a position, step or check, and what that costs. Writes nothing.")
final class UndoCommand implements Callable<Integer> {
    private static final int NEAR = 8;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "BUILD POSITION",
            arity = "1..2",
            hideParamSyntax = true,
            description = "a build on the shelf, left out with --book; and the id of a position, step or check")
    private List<String> named = List.of();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/plan-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (named.size() < 2 && !asked.isFromFiles()) {
            throw new Unusable("Name a build and a position, step or check of it, as in: gudgeon undo BUILD piston.");
        }
        Build build = asked.build(named.size() < 2 ? Optional.empty() : Optional.of(named.get(0)));
        String id = named.get(named.size() - 1);
        Structure structure = build.structure();
        if (!structure.has(id)) {
            throw new Unusable(unknown(structure, id));
        }
        Undo undo = Undo.of(build, id);
        if (json) {
            out.println(PlanJson.text(undo));
        } else {
            undo.sentences().forEach(out::println);
            if (!undo.back().isEmpty()) {
                out.println();
                out.println("Back together:");
                undo.back()
                        .forEach(node -> out.println("  "
                                + (structure.check(node).isPresent() ? "check  " : "step   ")
                                + structure.name(node) + " (" + node + ")"));
            }
        }
        return Gudgeon.CLEAR;
    }

    private static String unknown(Structure structure, String id) {
        List<String> like = Stream.of(
                        structure.positions().stream().map(position -> position.id()),
                        structure.steps().stream().map(step -> step.id()),
                        structure.checks().stream().map(check -> check.id()))
                .flatMap(ids -> ids)
                .filter(known -> known.contains(id) || id.contains(known))
                .limit(NEAR)
                .toList();
        return "The engine book has no position, step or check '" + id + "'. "
                + (like.isEmpty()
                        ? "Use an id as it stands in the book."
                        : "Like it are: " + String.join(", ", like) + ".");
    }
}
