package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Dispositions;
import gudgeon.rebuild.decide.Mate;
import gudgeon.rebuild.decide.Option.State;
import gudgeon.rebuild.decide.OptionFigure;
import gudgeon.rebuild.decide.OptionPart;
import gudgeon.rebuild.decide.Options;
import gudgeon.rebuild.decide.Outcome;
import gudgeon.rebuild.decide.Proposal;
import gudgeon.rebuild.decide.Trials;
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

/** The ways to go on that were drawn, one after the other, and what is proposed for each part. */
@Command(
        name = "options",
        mixinStandardHelpOptions = true,
        description = "Holds the ways to go on that were drawn side by side, and says what is proposed for each part.")
final class OptionsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(
            names = "--rpm",
            paramLabel = "RPM",
            defaultValue = "5000",
            description =
                    "the speed at which mean piston speeds are given; ${DEFAULT-VALUE} turns a minute without this")
    private int rpm;

    @Option(names = "--json", description = "as JSON, described in docs/options-json.md")
    private boolean json;

    @Override
    public Integer call() {
        if (!Options.isSpeed(rpm)) {
            throw new Unusable("--rpm " + rpm + " is no speed of a crank; give 1 to 30000 turns a minute.");
        }
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        Options options = Options.of(build, rpm, new Trials());
        List<Proposal> proposals = Dispositions.of(build);
        if (json) {
            out.println(OptionsJson.text(options, proposals));
        } else {
            print(options, out);
            print(proposals, out);
        }
        return Gudgeon.CLEAR;
    }

    private static void print(Options options, PrintWriter out) {
        if (options.options().isEmpty()) {
            out.println("No option is drawn yet.");
            return;
        }
        for (Outcome outcome : options.all()) {
            outcome.option()
                    .ifPresentOrElse(
                            option -> out.println(
                                    outcome.name() + " (" + option.id() + "), " + words(option.state(), option.said())),
                            () -> out.println("The engine as it is"));
            outcome.cautions().forEach(caution -> out.println("  caution: " + caution));
            if (outcome.option().isPresent()) {
                print(outcome, out);
            }
            for (OptionFigure figure : outcome.figures()) {
                String verdict = figure.verdictWords();
                out.println(
                        "    " + figure.label() + ": " + figure.words() + (verdict.isEmpty() ? "" : ", " + verdict));
            }
            outcome.notes().forEach(note -> out.println("  note: " + note));
            out.println();
        }
        Options.assumptions().forEach(out::println);
    }

    private static String words(State state, String said) {
        return state.words() + (said.isEmpty() ? "" : ": " + said);
    }

    private static void print(Outcome outcome, PrintWriter out) {
        for (OptionPart part : outcome.parts()) {
            out.println("  " + part.words() + " (" + part.standing() + ")");
        }
        out.println("  Money: " + outcome.bill().sentence());
        out.println("  Days: " + outcome.leadTime().sentence());
        out.println("  In hand: " + outcome.inHand());
        for (Mate mate : outcome.mates()) {
            out.println("  " + mate.goes().words() + ": " + mate.sentence());
        }
    }

    private static void print(List<Proposal> proposals, PrintWriter out) {
        if (!proposals.isEmpty()) {
            out.println();
            out.println("What becomes of each part, proposed:");
        }
        for (Proposal proposal : proposals) {
            String part = proposal.part().isEmpty() ? "" : " '" + proposal.part() + "'";
            out.println("  " + proposal.position().name() + part + " ("
                    + proposal.position().id() + "): " + proposal.words() + ". " + proposal.what());
            proposal.reasons().forEach(reason -> out.println("      " + reason));
            if (proposal.decided().isPresent()) {
                out.println("      " + proposal.decision());
            }
        }
    }
}
