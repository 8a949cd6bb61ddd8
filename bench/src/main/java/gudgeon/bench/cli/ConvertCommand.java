package gudgeon.bench.cli;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.fasten.DeskTorque;
import gudgeon.rebuild.fasten.WrittenTorque;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A torque in other units. */
@Command(name = "convert", mixinStandardHelpOptions = true, description = "Says what a torque is in another unit.")
final class ConvertCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "TORQUE", description = "such as '7 lbf.ft'")
    private String torque = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "UNIT",
            description = "N.m, kgf.m, kgf.cm, lbf.ft or lbf.in; all of them unless said")
    private String unit = "";

    @Option(names = "--json", description = "as JSON, described in docs/torque-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        WrittenTorque given = WrittenTorque.of(torque, TorqueUnit.NEWTON_METRE)
                .orElseThrow(() -> new Unusable(
                        "'" + torque + "' is not a torque; write a number from 0 and one of " + units() + "."));
        List<WrittenTorque> converted = unit.isBlank() ? DeskTorque.inAllUnits(given) : List.of(given.in(unit()));
        if (json) {
            Map<String, @Nullable Object> values = new LinkedHashMap<>();
            converted.forEach(one -> values.put(one.unit().symbol(), one.value()));
            out.println(Json.text(values));
        } else {
            converted.forEach(one -> out.println(given.words() + " = " + one.words()));
        }
        return Gudgeon.CLEAR;
    }

    private TorqueUnit unit() {
        return TorqueUnit.of(unit)
                .orElseThrow(() -> new Unusable("'" + unit + "' is not a unit of torque; known are " + units() + "."));
    }

    private static String units() {
        return Arrays.stream(TorqueUnit.values()).map(TorqueUnit::symbol).collect(Collectors.joining(", "));
    }
}
