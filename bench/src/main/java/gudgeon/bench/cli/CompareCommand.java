package gudgeon.bench.cli;

import gudgeon.rebuild.compare.Compared;
import gudgeon.rebuild.compare.Comparison;
import gudgeon.rebuild.compare.Effect;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts two pistons side by side. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Puts two pistons of an engine book side by side, size by size, with what each difference does.")
final class CompareCommand implements Callable<Integer> {
    private static final String ROW = "%-34s %16s %16s %12s  %s%n";

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "BOOK", description = "the engine book, a .yaml file")
    private @Nullable Path book;

    @Option(
            names = "--piston",
            paramLabel = "ID",
            arity = "1",
            required = true,
            description = "a piston; give this option twice")
    private List<String> pistons = List.of();

    @Option(names = "--inch", description = "sentences and table in inches")
    private boolean inch;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        LengthUnit unit = inch ? LengthUnit.INCH : LengthUnit.MM;
        if (pistons.size() != 2) {
            throw new Unusable("Name two pistons to compare, as in --piston original --piston pattern; "
                    + pistons.size() + " given.");
        }
        try {
            print(
                    Comparison.of(
                            Books.geometry(Objects.requireNonNull(book)),
                            pistons.get(0),
                            pistons.get(1),
                            Choice.asBooked(),
                            unit),
                    unit,
                    out);
        } catch (UnknownChoice unknown) {
            throw new Unusable(String.join("\n", unknown.sentences()));
        }
        return Gudgeon.CLEAR;
    }

    private static void print(Comparison comparison, LengthUnit unit, PrintWriter out) {
        out.println(comparison.engine() + ". " + comparison.sentence());
        out.println();
        out.printf(Locale.ROOT, ROW, "size", comparison.a(), comparison.b(), "difference", "can be told");
        for (Compared line : comparison.lines()) {
            out.printf(
                    Locale.ROOT,
                    ROW,
                    line.label(),
                    value(line.a(), line.unit(), unit),
                    value(line.b(), line.unit(), unit),
                    value(line.difference(), line.unit(), unit),
                    line.likeness().words());
            line.effects().forEach(effect -> out.println("      " + effect.sentence()));
        }
        out.println();
        out.println("All differences together:");
        for (Effect effect : comparison.together()) {
            out.println("  " + effect.sentence());
        }
    }

    private static String value(OptionalDouble value, String of, LengthUnit unit) {
        if (value.isEmpty()) {
            return "not stated";
        }
        return of.equals("mm")
                ? unit.format(value.getAsDouble())
                : String.format(Locale.ROOT, "%.2f%s", value.getAsDouble(), of);
    }
}
