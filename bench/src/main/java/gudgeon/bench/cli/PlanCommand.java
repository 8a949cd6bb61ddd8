package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.BestOrder;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.plan.Reason;
import gudgeon.rebuild.plan.Waiting;
import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What can be done now, what waits, and the order in which least is undone if something is wrong. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description =
                "Says what can be done now, what the rest waits for, and with --order the order in which a fault undoes least.")
final class PlanCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--order", description = "the whole order as well")
    private boolean order;

    @Option(
            names = "--seconds",
            paramLabel = "SECONDS",
            defaultValue = "5",
            description = "how long to search for the order at most; ${DEFAULT-VALUE} without this")
    private int seconds;

    @Option(names = "--json", description = "as JSON, described in docs/plan-json.md")
    private boolean json;

    @Override
    public Integer call() {
        if (seconds < 0) {
            throw new Unusable("--seconds " + seconds + " is less than no time; give 0 or more.");
        }
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        Plan plan = Plan.of(build, Instant.now());
        Optional<BestOrder> best =
                order ? Optional.of(BestOrder.of(build, Duration.ofSeconds(seconds))) : Optional.empty();
        if (json) {
            out.println(PlanJson.text(plan, best));
        } else {
            print(plan, out);
            best.ifPresent(found -> print(build, found, out));
        }
        return Gudgeon.CLEAR;
    }

    private static void print(Plan plan, PrintWriter out) {
        out.println(plan.progress().sentence());
        plan.nextHoldPoint().ifPresent(check -> out.println("Next hold point: " + check.name() + "."));
        out.println();
        out.println(plan.now().isEmpty() ? "Nothing can be done now." : "Now:");
        for (Doable doable : plan.now()) {
            String minutes = doable.minutes() == 0 ? "" : ", " + doable.minutes() + " min";
            out.println("  " + (doable.isCheck() ? "check  " : "step   ") + doable.name() + " (" + doable.id() + minutes
                    + ")");
            out.println("         " + doable.why());
        }
        if (!plan.waiting().isEmpty()) {
            out.println();
            out.println("Waiting:");
        }
        for (Waiting waiting : plan.waiting()) {
            out.println(
                    "  " + (waiting.isCheck() ? "check  " : "step   ") + waiting.name() + " (" + waiting.id() + ")");
            for (Reason reason : waiting.reasons()) {
                out.println("         " + reason.kind().words() + ": " + reason.sentence());
            }
        }
    }

    private static void print(Build build, BestOrder best, PrintWriter out) {
        out.println();
        out.println("Order in which a fault undoes least:");
        int number = 1;
        for (String node : best.order()) {
            boolean isCheck = build.structure().check(node).isPresent();
            out.printf(
                    Locale.ROOT,
                    "%5d. %s  %s (%s)%n",
                    number++,
                    isCheck ? "check" : "step ",
                    build.structure().name(node),
                    node);
        }
        out.println();
        out.println(best.sentence());
        best.gains().forEach(gain -> out.println("  " + gain));
        best.assumptions().forEach(out::println);
    }
}
