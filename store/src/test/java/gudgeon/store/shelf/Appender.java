package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Fact.Noted;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/** A process that writes entries and says the key of each once it is acknowledged. It is there to be killed. */
public final class Appender {
    private Appender() {}

    /** Takes the data folder, the build's id, what the keys begin with, and how many entries; without that, it writes without end. */
    public static void main(String[] arguments) {
        PrintStream out = System.out;
        int many = arguments.length > 3 ? Integer.parseInt(arguments[3]) : Integer.MAX_VALUE;
        try (Shelf shelf = Shelf.open(Path.of(arguments[0]))) {
            for (int n = 0; n < many; n++) {
                String key = arguments[2] + "-" + n;
                Outcome outcome =
                        shelf.append(arguments[1], List.of(Small.entry(key, "child", 1, new Noted("", "note " + n))));
                out.println(outcome instanceof Outcome.Kept ? key : "not kept: " + outcome);
                out.flush();
            }
        }
    }
}
