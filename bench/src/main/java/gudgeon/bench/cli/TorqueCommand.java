package gudgeon.bench.cli;

import gudgeon.mechanics.bolt.Tightening;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.fasten.DeskTorque;
import gudgeon.rebuild.fasten.Unanswerable;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How tight a fastener may be, without a build. */
@Command(
        name = "torque",
        mixinStandardHelpOptions = true,
        description = "Says how tight a fastener may be, and what a given torque does to bolt, thread and seat.")
final class TorqueCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "THREAD", description = "such as M6, M8x1, '1/4 BSF' or '2 BA'")
    private String thread = "";

    @Parameters(paramLabel = "TORQUE", arity = "0..1", index = "1", description = "one to be checked, such as '10 N.m'")
    private String torque = "";

    @Option(names = "--class", paramLabel = "CLASS", description = "strength class, ${DEFAULT-VALUE} unless said")
    private String strength = "8.8";

    @ArgGroup
    private @Nullable OnThread onThread;

    @Option(names = "--into", paramLabel = "METAL", description = "what the thread is cut in, such as alloy or iron")
    private String into = "";

    @Option(names = "--depth", paramLabel = "LENGTH", description = "how far the threads engage, in mm or with a unit")
    private String depth = "";

    @Option(names = "--washer", description = "a washer lies under the head")
    private boolean washer;

    @Option(names = "--json", description = "as JSON, described in docs/torque-json.md")
    private boolean json;

    /** What is on the thread. */
    static final class OnThread {
        @Option(names = "--dry", description = "clean and dry")
        private boolean dry;

        @Option(names = "--oiled", description = "oiled; reckoned with unless said")
        private boolean oiled;

        @Option(names = "--greased", description = "greased")
        private boolean greased;

        @Option(names = "--locked", description = "with locking compound")
        private boolean locked;

        Lubrication lubrication() {
            return Map.of(
                            Lubrication.DRY, dry,
                            Lubrication.OILED, oiled,
                            Lubrication.GREASED, greased,
                            Lubrication.LOCKED, locked)
                    .entrySet()
                    .stream()
                    .filter(Map.Entry::getValue)
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse(Lubrication.OILED);
        }
    }

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        DeskTorque answer = answer();
        if (json) {
            out.println(Json.text(json(answer)));
        } else {
            answer.sentences().forEach(out::println);
        }
        return answer.check().holds() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private DeskTorque answer() {
        Lubrication lubricated = onThread == null ? Lubrication.OILED : onThread.lubrication();
        try {
            return DeskTorque.of(new DeskTorque.Asked(thread, strength, lubricated, into, depth, washer, torque));
        } catch (Unanswerable fault) {
            throw new Unusable(String.join("\n", fault.sentences()));
        }
    }

    private static Map<String, @Nullable Object> json(DeskTorque answer) {
        Tightening tightening = answer.check().tightening();
        double nm = answer.check().torqueNm();
        Map<String, @Nullable Object> bears = new LinkedHashMap<>();
        tightening.bearsN().forEach((limit, newtons) -> bears.put(limit.name().toLowerCase(Locale.ROOT), newtons));
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        json.put("fastener", answer.designation());
        json.put("mostNm", tightening.mostNm());
        json.put("weakest", tightening.weakest().name().toLowerCase(Locale.ROOT));
        json.put("bearsN", bears);
        json.put("torqueNm", nm);
        json.put("given", answer.given());
        json.put(
                "outcome",
                answer.check().outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.put("inHandNm", answer.check().inHandNm());
        tightening.pressedInAtNm().ifPresent(from -> json.put("pressedInFromNm", from));
        json.put("leastPreloadN", tightening.leastPreloadN(nm));
        json.put("usualPreloadN", tightening.usualPreloadN(nm));
        json.put("mostPreloadN", tightening.mostPreloadN(nm));
        json.put("sentences", answer.sentences());
        return json;
    }
}
