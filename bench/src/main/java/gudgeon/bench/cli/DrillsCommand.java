package gudgeon.bench.cli;

import gudgeon.store.drill.Drill;
import gudgeon.store.drill.DrillReader;
import gudgeon.store.drill.DrillReading;
import gudgeon.store.drill.Round;
import gudgeon.store.drill.Variant;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plays all drills of a folder, and says what became of each mistake. */
@Command(
        name = "drills",
        mixinStandardHelpOptions = true,
        description =
                "Plays every drill at or below a folder, as it is written and in variants, and says of each mistake whether it is"
                        + " caught, late or missed, and whether its twin raises a false alarm. docs/drills.md says how to add one.",
        footer = {"", "Exit codes: 0 all caught, no false alarm; 1 some late, missed or false; 2 unusable input."})
final class DrillsCommand implements Callable<Integer> {
    private static final int MOST_VARIANTS = 10_000;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            defaultValue = "examples/drill",
            description = "the folder of the drills; ${DEFAULT-VALUE} where none is named")
    private Path folder = Path.of("");

    @Option(
            names = "--variants",
            paramLabel = "N",
            defaultValue = "60",
            description = "variants of each mistake beside the drills as written; ${DEFAULT-VALUE} where none is named")
    private int variants;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "7",
            description = "which row of variants; ${DEFAULT-VALUE} where none is named")
    private long seed;

    @Option(names = "--table", paramLabel = "FILE", description = "writes the table there, over what is there")
    private @Nullable Path table;

    @Option(
            names = "--keep",
            paramLabel = "DIR",
            description =
                    "writes both journals of whatever is not caught or raises a false alarm there, to be replayed")
    private @Nullable Path keep;

    @Override
    public Integer call() {
        if (variants < 0 || variants > MOST_VARIANTS) {
            throw new Unusable("--variants is " + variants + ". Ask for 0 to " + MOST_VARIANTS + ".");
        }
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Round round = Round.of(drills(folder), variants, seed);
        String text = DrillsTable.text(round, variants);
        Path target = table;
        if (target == null) {
            out.print(text);
        } else {
            write(target, text);
            out.println(target + " holds the table.");
        }
        round.bad().forEach(bad -> tell(bad, out));
        return round.bad().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    /** All drills at or below a folder, or every fault of them as sentences. */
    static List<Drill> drills(Path folder) {
        List<String> sentences = new ArrayList<>();
        List<Drill> drills = new ArrayList<>();
        DrillReader reader = new DrillReader();
        for (Path one : folders(folder)) {
            DrillReading reading = reader.read(folder, one);
            if (reading instanceof DrillReading.Read read) {
                drills.add(read.drill());
            } else {
                sentences.addAll(((DrillReading.Refused) reading).sentences());
            }
        }
        if (!sentences.isEmpty()) {
            throw new Unusable(String.join("\n", sentences));
        }
        if (drills.isEmpty()) {
            throw new Unusable(
                    "No folder at or below " + folder + " holds a drill.yaml. Name the folder of the drills.");
        }
        return drills;
    }

    private static List<Path> folders(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new Unusable("There is no folder " + folder + "; check its name.");
        }
        try {
            return DrillReader.folders(folder);
        } catch (IOException unreadable) {
            throw new Unusable(folder + " can't be read: " + unreadable.getMessage() + ". Check that you may read it.");
        }
    }

    private void tell(Round.Played bad, PrintWriter out) {
        out.println(
                bad.variant() + ": " + bad.outcome().word() + (bad.falseAlarms().isEmpty() ? "" : "; false alarms"));
        bad.falseAlarms().forEach(alarm -> out.println("  " + alarm));
        Path target = keep;
        if (target != null) {
            Variant variant = bad.variant();
            Path kept = target.resolve(variant.drill().name().replace('/', '-') + "-variant-" + variant.number());
            write(kept.resolve("fault.jsonl"), variant.fault());
            write(kept.resolve("sound.jsonl"), variant.sound());
            out.println("  " + kept + " holds its journals.");
        }
    }

    private static void write(Path file, String text) {
        try {
            Path parent = file.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException unwritable) {
            throw new Unusable(
                    file + " can't be written: " + unwritable.getMessage() + ". Name a place you may write.");
        }
    }
}
