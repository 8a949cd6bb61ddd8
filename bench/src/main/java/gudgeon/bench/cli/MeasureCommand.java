package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Proofs;
import gudgeon.rebuild.measure.Suited;
import gudgeon.rebuild.measure.Tally;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.reading.OwnInstruments;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The verdict on all that is measured on a build, and what would prove what is unproven. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        description = "Says which sizes are in limits, out of limits or unproven, and what would prove them.")
final class MeasureCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--budget", description = "what the doubt of each size is made of as well")
    private boolean budget;

    @Option(names = "--all", description = "what was not measured yet as well")
    private boolean all;

    @Option(names = "--json", description = "as JSON, described in docs/measure-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        Tally tally = new Tally(Verdict.all(build));
        if (json) {
            out.println(MeasureJson.text(build, tally, today));
        } else {
            out.println(tally.sentence());
            tally.verdicts().stream()
                    .filter(verdict -> all || verdict.outcome() != Outcome.NOT_MEASURED)
                    .forEach(verdict -> print(build, verdict, out));
            instruments(build, today, out);
        }
        return tally.isClear() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private void print(Build build, Verdict verdict, PrintWriter out) {
        out.println();
        out.println(verdict.outcome().words().toUpperCase(Locale.ROOT) + "  "
                + verdict.dimension().name() + " (" + verdict.dimension().id()
                + (verdict.part().isEmpty() ? "" : ", of '" + verdict.part() + "'") + ")");
        out.println("  " + verdict.sentence());
        Proofs.of(build, verdict).forEach(proof -> out.println("  " + proof.sentence()));
        if (verdict.outcome() == Outcome.NOT_MEASURED && verdict.dimension().isRead()) {
            Suited.of(build, verdict.dimension()).stream()
                    .flatMap(suited -> suited.hopeless().stream())
                    .forEach(warning -> out.println("  " + warning));
        }
        verdict.evaluated().unread().forEach(sentence -> out.println("  " + sentence));
        if (budget) {
            verdict.worst()
                    .ifPresent(worst ->
                            worst.lines(verdict.dimension().unit()).forEach(line -> out.println("    " + line)));
        }
    }

    private static void instruments(Build build, LocalDate today, PrintWriter out) {
        OwnInstruments own = OwnInstruments.of(build.instruments());
        if (own.all().isEmpty() && own.faults().isEmpty()) {
            return;
        }
        out.println();
        own.faults().forEach(out::println);
        own.all().stream().flatMap(one -> one.unchecked(today).stream()).forEach(out::println);
    }
}
