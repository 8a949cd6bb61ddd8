package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Again;
import gudgeon.rebuild.fasten.Allocation;
import gudgeon.rebuild.fasten.Danger;
import gudgeon.rebuild.fasten.HoleChoice;
import gudgeon.rebuild.fasten.HoleTorque;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Order;
import gudgeon.rebuild.fasten.PileKind;
import gudgeon.rebuild.fasten.Purchase;
import gudgeon.rebuild.fasten.StandProud;
import gudgeon.rebuild.fasten.Tightness;
import java.io.PrintWriter;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which fastener goes where, how tight, and in what order. */
@Command(
        name = "fasteners",
        mixinStandardHelpOptions = true,
        description =
                "Says which fastener of the heap goes into which hole, in what order and passes each joint is tightened, and what is left to do.")
final class FastenersCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "BUILD", arity = "0..1", description = "a build on the shelf")
    private @Nullable String id;

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Option(names = "--joint", paramLabel = "JOINT", description = "one joint alone, by its id in the book")
    private @Nullable String joint;

    @Option(names = "--json", description = "as JSON, described in docs/fasteners-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build(Optional.ofNullable(id));
        List<JointNow> joints = joint == null ? JointNow.all(build) : List.of(named(build, joint));
        List<PileKind> heap = PileKind.of(build);
        Allocation allocation = Allocation.of(joints, heap);
        if (json) {
            out.println(FastenersJson.text(build, joints, allocation));
            return Gudgeon.CLEAR;
        }
        joints.forEach(one -> print(build, one, out));
        if (heap.isEmpty()) {
            out.println();
            out.println("Nothing of the heap is counted yet; once it is, this says which fastener goes where.");
        } else {
            print(joints, allocation, out);
        }
        return Gudgeon.CLEAR;
    }

    private static void print(List<JointNow> joints, Allocation allocation, PrintWriter out) {
        for (JointNow joint : joints) {
            section(
                    "Which goes where, " + joint.book().name() + ":",
                    joint.holes().stream()
                            .flatMap(hole -> allocation.choice(joint.id(), hole.id()).stream())
                            .map(HoleChoice::sentence)
                            .toList(),
                    out);
        }
        section("Buy:", allocation.purchases().stream().map(Purchase::sentence).toList(), out);
        section(
                "Left over:",
                allocation.leftOver().entrySet().stream()
                        .map(left -> left.getKey() + ": " + left.getValue())
                        .toList(),
                out);
        section("Mind:", allocation.dangers().stream().map(Danger::sentence).toList(), out);
    }

    private static JointNow named(Build build, String joint) {
        return JointNow.of(build, joint)
                .orElseThrow(() -> new Unusable("The book has no joint '" + joint + "'; it has "
                        + String.join(
                                ", ",
                                build.structure().joints().stream()
                                        .map(known -> known.id())
                                        .toList())
                        + "."));
    }

    private static void print(Build build, JointNow joint, PrintWriter out) {
        Order order = Order.of(joint);
        out.println(joint.book().name() + " (" + joint.id() + ")");
        out.println("  " + Tightness.of(joint).sentence());
        if (!joint.holes().isEmpty()) {
            out.println("  " + order.why() + " " + String.join(", ", order.holes()) + ".");
            if (joint.book().warps()) {
                out.println("  Loosen it the other way round: " + String.join(", ", order.loosening()) + ".");
            }
            out.println("  " + StandProud.of(joint).sentence());
        }
        Again.of(build, joint).filter(Again::due).ifPresent(again -> out.println("  " + again.sentence()));
        HoleTorque.all(joint).stream()
                .flatMap(torque -> torque.sentences().stream())
                .distinct()
                .forEach(sentence -> out.println("  " + sentence));
    }

    private static void section(String title, List<String> lines, PrintWriter out) {
        if (!lines.isEmpty()) {
            out.println();
            out.println(title);
            lines.forEach(line -> out.println("  " + line));
        }
    }
}
