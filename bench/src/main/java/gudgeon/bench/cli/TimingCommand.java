package gudgeon.bench.cli;

import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.timing.CheckReading;
import gudgeon.rebuild.timing.Timing;
import gudgeon.rebuild.timing.ValveTiming;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The timing of a build as its readings tell it. */
@Command(
        name = "timing",
        mixinStandardHelpOptions = true,
        description =
                "Says where true top dead centre is, how late the cam is and where the points open, by what was read.")
final class TimingCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/timing-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Timing timing = Timing.of(asked.build());
        if (json) {
            out.println(Json.text(json(timing)));
        } else {
            print(timing, out);
        }
        boolean clear = timing.faults().isEmpty()
                && !timing.isEmpty()
                && timing.checks().stream().allMatch(check -> check.passes() && check.zone() == Zone.IN);
        return clear ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private static void print(Timing timing, PrintWriter out) {
        if (timing.isEmpty()) {
            out.println("Nothing of the timing was read yet.");
        }
        Timing.CAUTIONS.forEach(caution -> out.println("caution: " + caution));
        timing.faults().forEach(fault -> out.println("not used: " + fault));
        timing.top().ifPresent(top -> top.sentences().forEach(out::println));
        timing.cam().ifPresent(cam -> cam.sentences().forEach(out::println));
        for (ValveTiming valve : timing.valves()) {
            valve.sentences(timing.with()).forEach(out::println);
        }
        timing.spark().ifPresent(spark -> spark.sentences().forEach(out::println));
        timing.points().sentences().forEach(out::println);
        for (CheckReading check : timing.checks()) {
            out.println(check.check().name() + " (" + check.check().id() + "): " + check.reading() + ", "
                    + (check.passes() ? "passes" : "fails") + ". " + check.remark());
        }
        timing.grounds().forEach(out::println);
    }

    private static Map<String, @Nullable Object> json(Timing timing) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("topOffDeg", timing.top().map(top -> top.offDeg().value()).orElse(null));
        json.put("camLateDeg", timing.cam().map(cam -> cam.lateDeg().value()).orElse(null));
        json.put("camTeethLate", timing.cam().map(cam -> cam.teethLate()).orElse(null));
        json.put(
                "sparkBeforeDeg",
                timing.spark().map(spark -> spark.beforeDeg().value()).orElse(null));
        json.put("checks", timing.checks().stream().map(TimingCommand::json).toList());
        json.put("sentences", sentences(timing));
        json.put("faults", timing.faults());
        return json;
    }

    private static List<String> sentences(Timing timing) {
        List<String> all = new ArrayList<>();
        timing.top().ifPresent(top -> all.addAll(top.sentences()));
        timing.cam().ifPresent(cam -> all.addAll(cam.sentences()));
        timing.valves().forEach(valve -> all.addAll(valve.sentences(timing.with())));
        timing.spark().ifPresent(spark -> all.addAll(spark.sentences()));
        all.addAll(timing.points().sentences());
        all.addAll(timing.grounds());
        return all;
    }

    private static Map<String, Object> json(CheckReading check) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("check", check.check().id());
        json.put("reading", check.reading());
        json.put("passes", check.passes());
        json.put("proved", check.zone().name().toLowerCase(Locale.ROOT));
        json.put("remark", check.remark());
        return json;
    }
}
