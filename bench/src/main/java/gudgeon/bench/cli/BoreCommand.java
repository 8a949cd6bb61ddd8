package gudgeon.bench.cli;

import gudgeon.rebuild.bore.BorePlan;
import gudgeon.rebuild.bore.Oversize;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.valvework.SpringRoom;
import gudgeon.rebuild.valvework.ValveSeat;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What to have done to a bore, and how springs and seats stand. */
@Command(
        name = "bore",
        mixinStandardHelpOptions = true,
        description =
                "Says which oversize cleans the bore up and what to ask the machinist for, and with --valves how springs and seats stand.")
final class BoreCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--valves", description = "springs and seats as well")
    private boolean valves;

    @Option(names = "--json", description = "as JSON, described in docs/bore-json.md; always with springs and seats")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        Optional<BorePlan> plan = BorePlan.of(build);
        if (json) {
            out.println(BoreJson.text(build, plan));
            return Gudgeon.CLEAR;
        }
        plan.ifPresentOrElse(
                found -> print(found, out),
                () -> out.println(
                        "The book has no clearance of a piston in its bore, so there is nothing to plan a bore by."));
        if (valves) {
            valves(build, out);
        }
        return Gudgeon.CLEAR;
    }

    private static void print(BorePlan plan, PrintWriter out) {
        out.println(plan.sentence());
        plan.ask().ifPresent(ask -> out.println(ask.bored()));
        Section.print(out, "Found:", plan.found().stream());
        Section.print(out, "Pistons to be had:", plan.oversizes().stream().map(BoreCommand::row));
        Section.print(out, "Afterwards:", plan.after().stream());
        Section.print(out, "Not proved or not known:", plan.unproven().stream());
        Section.print(out, "Mind:", plan.cautions().stream());
    }

    private static String row(Oversize oversize) {
        return oversize.name() + ": " + oversize.sentence();
    }

    private static void valves(Build build, PrintWriter out) {
        Section.print(
                out,
                "Springs:",
                SpringRoom.all(build).stream()
                        .map(room -> room.room().name() + ": " + room.sentence() + " " + room.shims()));
        Section.print(out, "Seats:", ValveSeat.all(build).stream().flatMap(seat -> seat.sentences().stream()));
    }
}
