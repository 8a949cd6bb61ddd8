package gudgeon.bench.cli;

import gudgeon.fuzz.Promise;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

/** The commands that answer at the desk: one argument to a line. Whatever is typed ends as an answer or as a sentence. */
public final class CommandTarget {
    private static final Set<String> DESK =
            Set.of("fit-size", "bearing", "ring-gap", "shims", "spring", "bolt-length", "torque", "wrench", "convert");

    private CommandTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        List<String> arguments =
                new String(input, StandardCharsets.UTF_8).lines().toList();
        // an argument that begins with @ names a file with more arguments, and the fuzzer is to name no files
        boolean files = arguments.stream().anyMatch(argument -> argument.startsWith("@"));
        if (arguments.isEmpty() || files || !DESK.contains(arguments.get(0))) {
            return;
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Gudgeon.run(new PrintWriter(out), new PrintWriter(err), arguments.toArray(String[]::new));
        Promise.kept(code >= Gudgeon.CLEAR && code <= Gudgeon.UNUSABLE, "the exit code is " + code);
        if (code == Gudgeon.UNUSABLE) {
            Promise.sentence(err.toString());
            Promise.kept(!err.toString().contains("a fault of its own"), err.toString());
        } else {
            Promise.sentence(out.toString());
        }
    }
}
