package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.find.Hunt;
import gudgeon.rebuild.find.NextTest;
import gudgeon.rebuild.find.Ranked;
import gudgeon.rebuild.find.Ranking;
import gudgeon.rebuild.sentence.Sentence;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
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

/** The suspects of a fault that is looked for, and the test to make next. */
@Command(
        name = "find",
        mixinStandardHelpOptions = true,
        description =
                "Ranks the suspects of a fault that is looked for, and names the test to make next. Writes nothing.")
final class FindCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "BUILD [SEARCH]",
            arity = "0..2",
            hideParamSyntax = true,
            description =
                    "a build on the shelf, left out with --book; and the name of a search, the last begun without it")
    private List<String> named = List.of();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/find-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (named.isEmpty() && !asked.isFromFiles()) {
            throw new Unusable("Name a build, as in: gudgeon find BUILD.");
        }
        Build build = asked.build(asked.isFromFiles() ? Optional.empty() : Optional.of(named.get(0)));
        List<String> rest = asked.isFromFiles() ? named : named.subList(1, named.size());
        Hunt hunt = hunt(build, rest.stream().findFirst());
        Ranking ranking = Ranking.of(build, hunt);
        if (json) {
            out.println(FindJson.text(hunt, ranking));
        } else {
            print(hunt, ranking, out);
        }
        return Gudgeon.CLEAR;
    }

    private static Hunt hunt(Build build, Optional<String> id) {
        List<Hunt> all = Hunt.all(build);
        String known = all.isEmpty()
                ? "None was begun in this build."
                : "This build has "
                        + Sentence.list(
                                all.stream().map(hunt -> "'" + hunt.id() + "'").toList()) + ".";
        return id.map(name -> Hunt.of(build, name))
                .orElseGet(() -> all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1)))
                .orElseThrow(() -> new Unusable("There is no such search. " + known));
    }

    private static void print(Hunt hunt, Ranking ranking, PrintWriter out) {
        out.println(hunt.id() + ": " + hunt.trouble().words() + ".");
        out.println(ranking.sentence());
        out.println();
        for (Ranked one : ranking.ranked()) {
            out.println(percent(one.chance()) + "  "
                    + Sentence.capital(one.suspect().name()) + " ("
                    + one.suspect().id() + "), before "
                    + percent(one.before()).strip());
            out.println("        " + one.suspect().shows());
            one.explains().forEach(sentence -> out.println("        " + sentence));
        }
        ranking.alike().forEach(out::println);
        out.println();
        out.println("Tests, what tells most for its work first:");
        for (NextTest next : ranking.next()) {
            out.println("  " + Sentence.capital(next.test().name()) + " ("
                    + next.test().id() + "). " + next.working());
            next.test().cautions().forEach(caution -> out.println("      caution: " + caution));
        }
        out.println();
        ranking.assumptions().forEach(out::println);
    }

    private static String percent(double chance) {
        return String.format(Locale.ROOT, "%5.1f %%", 100 * chance);
    }
}
