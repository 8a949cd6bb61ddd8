package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.OrderLine;
import gudgeon.rebuild.source.OutWork;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.source.PartsFile;
import gudgeon.store.source.PartsTable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What must be bought and why, what came of each order, what it costs; and a spreadsheet of these, out and in. */
@Command(
        name = "parts",
        mixinStandardHelpOptions = true,
        description =
                "Says what must be bought and why, how orders stand, what is to be compared before it goes in, and the money.")
final class PartsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/parts-json.md")
    private boolean json;

    @Option(names = "--csv", description = "as a table for a spreadsheet, which --read reads back")
    private boolean csv;

    @Option(
            names = "--read",
            paramLabel = "FILE",
            description = "reads offers, orders and arrivals from a table, and says what it understood; keeps nothing")
    private @Nullable Path file;

    @Option(names = "--keep", description = "with --read: keeps what was read, if every line was understood")
    private boolean keep;

    @Option(names = "--without-faults", description = "with --keep: leaves out the lines that were not understood")
    private boolean without;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "the day by which something is late; today without this")
    private @Nullable LocalDate today;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        if (file != null) {
            return read(build, file, out);
        }
        if (keep || without) {
            throw new Unusable("--keep keeps what --read FILE has read; name the file.");
        }
        PartsList list = PartsList.of(build, today == null ? LocalDate.now(ZoneId.systemDefault()) : today);
        if (json) {
            out.println(PartsJson.text(list, Inspection.all(build)));
        } else if (csv) {
            out.print(PartsTable.text(list));
            out.flush();
        } else {
            print(build, list, out);
        }
        return Gudgeon.CLEAR;
    }

    private static void print(Build build, PartsList list, PrintWriter out) {
        out.println(list.sentence());
        Section.print(out, "To order:", list.toOrder().stream().map(PartsCommand::said));
        Section.print(out, "Orders:", list.arrivals().lines().stream().map(PartsCommand::said));
        Section.print(out, "At the machinist's:", list.work().stream().map(OutWork::sentence));
        Section.print(
                out,
                "To compare before it goes in:",
                Inspection.all(build).stream().map(Inspection::sentence));
        out.println();
        out.println(list.account().sentence());
        list.account().faults().forEach(out::println);
    }

    private static String said(PartsLine line) {
        return line.toOrder() + "  " + line.name() + " (" + line.position() + "): " + line.sentence();
    }

    private static String said(OrderLine line) {
        return (line.order().isEmpty() ? "" : line.order() + ", ")
                + (line.from().isEmpty() ? "" : line.from() + ", ")
                + line.state().words() + ": " + line.sentence();
    }

    private int read(Build build, Path from, PrintWriter out) {
        PartsFile read = PartsFile.of(build, bytes(from));
        out.println(read.sentence());
        read.facts().forEach(fact -> out.println("  " + Telling.of(fact, build.structure())));
        read.notes().forEach(out::println);
        read.faults()
                .forEach(fault ->
                        out.println((fault.line() > 0 ? "Line " + fault.line() + ": " : "") + fault.sentence()));
        boolean whole = read.faults().isEmpty();
        if (!keep) {
            out.println("Nothing was kept; --keep keeps it.");
        } else if (!whole && !without) {
            out.println("Nothing was kept. Put the lines right, or keep the others with --without-faults.");
        } else {
            kept(read, build, out);
        }
        return whole ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private void kept(PartsFile read, Build build, PrintWriter out) {
        String id = asked.id()
                .orElseThrow(() -> new Unusable(
                        "Only a build on the shelf can keep something; name one, as gudgeon builds lists them."));
        Instant now = Instant.now();
        List<Entry> entries = read.facts().stream()
                .map(fact -> new Entry(UUID.randomUUID().toString(), now, "command line", build.size(), fact))
                .toList();
        try (Shelf shelf = asked.shelf()) {
            Outcome outcome = shelf.append(id, entries);
            if (!(outcome instanceof Outcome.Kept)) {
                throw new Unusable("Nothing was kept. " + String.join(" ", outcome.sentences()));
            }
        }
        out.println(entries.size() + " kept.");
    }

    private static byte[] bytes(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new Unusable("There is no file " + file + "; check its name and folder.");
            }
            if (Files.size(file) > PartsFile.LARGEST) {
                throw new Unusable(file + " is larger than 1 MB. Take out what is not about parts.");
            }
            return Files.readAllBytes(file);
        } catch (IOException unreadable) {
            throw new Unusable(file + " can't be read: " + unreadable.getMessage() + ". Check that you may read it.");
        }
    }
}
