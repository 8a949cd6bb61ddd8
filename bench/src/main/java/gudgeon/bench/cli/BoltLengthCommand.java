package gudgeon.bench.cli;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.mechanics.thread.UnknownFastener;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.fasten.HoleSizes;
import gudgeon.rebuild.fasten.LengthSpan;
import gudgeon.rebuild.fasten.Metal;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which length of screw is right for a hole. */
@Command(
        name = "bolt-length",
        mixinStandardHelpOptions = true,
        description =
                "Says which lengths of screw are right for a hole: enough thread, and not so long that it bottoms.")
final class BoltLengthCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--thread", required = true, paramLabel = "THREAD", description = "such as M6, M8x1 or 1/4 BSF")
    private String thread = "";

    @Option(
            names = "--stack",
            required = true,
            paramLabel = "SIZE",
            description = "what it clamps, washers and gasket with it, such as 28 or \"28 mm ± 0.2\"")
    private String stack = "";

    @Option(names = "--depth", paramLabel = "SIZE", description = "usable depth of the thread in the hole")
    private @Nullable String depth;

    @Option(names = "--into", paramLabel = "METAL", description = "what the thread is cut in, such as alloy or iron")
    private @Nullable String into;

    @Option(names = "--through", description = "the hole goes right through")
    private boolean through;

    @Option(names = "--room", paramLabel = "SIZE", description = "with --through: how far it may stand through")
    private @Nullable String room;

    @Option(names = "--length", paramLabel = "SIZE", description = "a length to judge, measured under the head")
    private @Nullable String length;

    @Option(names = "--json", description = "as JSON, described in docs/fasteners-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        LengthSpan span = LengthSpan.of(sizes());
        Optional<Quantity> judged = Optional.ofNullable(length).map(text -> size("--length", text));
        if (json) {
            out.println(Json.text(json(span, judged)));
        } else {
            span.reasons().forEach(out::println);
            out.println(span.sentence());
            judged.ifPresent(asked -> out.println(span.sentence(asked)));
        }
        return judged.map(span::verdict).filter(one -> one.isDangerous()).isPresent()
                ? Gudgeon.NOT_CLEAR
                : Gudgeon.CLEAR;
    }

    private HoleSizes sizes() {
        String metal = Optional.ofNullable(into).orElse("");
        if (!metal.isEmpty() && Metal.named(metal).isEmpty()) {
            throw new Unusable("--into '" + metal + "' is not a metal known here; known are " + Metal.known() + ".");
        }
        if (room != null && !through) {
            throw new Unusable("--room is how far a screw may stand through; say --through with it.");
        }
        try {
            return new HoleSizes(
                    ScrewThread.of(thread),
                    Optional.of(size("--stack", stack)),
                    Optional.ofNullable(depth).map(text -> size("--depth", text)),
                    metal,
                    through,
                    through && room != null,
                    Optional.ofNullable(room).map(text -> size("--room", text)));
        } catch (UnknownFastener unknown) {
            throw new Unusable(unknown.sentence());
        }
    }

    private static Quantity size(String option, String text) {
        Quantity size = TypedSize.quantity(Unit.MM, text)
                .orElseThrow(() -> new Unusable(option + " '" + text
                        + "' is not a length. Type a number of millimetres, or one with its unit."));
        if (size.value() < 0 || (size.value() == 0 && !option.equals("--room"))) {
            throw new Unusable(option + " is " + text + "; type a length above 0.");
        }
        return size;
    }

    private static Map<String, @Nullable Object> json(LengthSpan span, Optional<Quantity> judged) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>(FastenersJson.span(span));
        json.put("thread", span.sizes().thread().designation());
        json.put(
                "verdict",
                judged.map(one -> FastenersJson.key(span.verdict(one))).orElse(null));
        return json;
    }
}
