package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Handing.LessonDecided;
import gudgeon.rebuild.lesson.Difference;
import gudgeon.rebuild.lesson.Improved;
import gudgeon.rebuild.lesson.Lesson;
import gudgeon.rebuild.lesson.Manuscript;
import gudgeon.rebuild.lesson.NextTime;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
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

/** What a build taught of its type, and its engine book with what is accepted of it. */
@Command(
        name = "lessons",
        mixinStandardHelpOptions = true,
        description =
                "Says what a build taught of its type of engine, line by line, and writes the engine book for the next one.")
final class LessonsCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(
            names = "--accept",
            paramLabel = "ID",
            arity = "1..*",
            description = "lessons to accept; kept in the journal of a build on the shelf")
    private List<String> accept = new ArrayList<>();

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description = "where to write the engine book with what is accepted; must not be there yet")
    private @Nullable Path target;

    @Option(names = "--json", description = "as JSON, described in docs/lessons-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (target != null) {
            PaperFile.refuseIfThere(target);
        }
        NextTime next = NextTime.of(accepted(asked.build()));
        String book = asked.bookText();
        if (json) {
            out.println(LessonsJson.text(next, Manuscript.of(book)));
        } else {
            print(next, Manuscript.of(book), out);
        }
        if (target != null) {
            write(
                    target,
                    Improved.of(book, next.accepted()),
                    json ? spec.commandLine().getErr() : out);
        }
        return next.open().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    /** The build with what was accepted just now. */
    private Build accepted(Build build) {
        List<String> known =
                NextTime.of(build).lessons().stream().map(Lesson::id).toList();
        List<String> unknown = accept.stream().filter(id -> !known.contains(id)).toList();
        if (!unknown.isEmpty()) {
            throw new Unusable("This build has no lesson " + String.join(", ", unknown)
                    + "; gudgeon lessons lists those there are.");
        }
        List<LessonDecided> facts =
                accept.stream().map(id -> new LessonDecided(id, true, "")).toList();
        asked.id().filter(id -> !facts.isEmpty()).ifPresent(id -> keep(id, build.size(), facts));
        return build.asIf(facts);
    }

    private void keep(String id, long seen, List<LessonDecided> facts) {
        List<Entry> entries = facts.stream()
                .map(fact -> new Entry(UUID.randomUUID().toString(), Instant.now(), "command line", seen, fact))
                .toList();
        try (Shelf shelf = asked.shelf()) {
            Outcome outcome = shelf.append(id, entries);
            if (!(outcome instanceof Outcome.Kept)) {
                throw new Unusable("Nothing was kept. " + String.join(" ", outcome.sentences()));
            }
        }
    }

    private static void print(NextTime next, Manuscript book, PrintWriter out) {
        out.println(next.sentence());
        next.lessons().forEach(lesson -> print(lesson, book, out));
        if (!next.withheld().isEmpty()) {
            out.println();
            out.println("Not offered:");
        }
        next.withheld().forEach(kept -> {
            out.println("  " + kept.what());
            out.println("    " + kept.why());
        });
    }

    private static void print(Lesson lesson, Manuscript book, PrintWriter out) {
        String stands = lesson.decided().isEmpty() ? "not decided" : lesson.isAccepted() ? "goes in" : "stays out";
        out.println();
        out.println(lesson.id() + " (" + stands + ")");
        out.println("  " + lesson.what());
        out.println("  " + lesson.why());
        lesson.amendments().stream().map(book::difference).forEach(difference -> print(difference, out));
    }

    private static void print(Difference difference, PrintWriter out) {
        difference.taken().forEach(line -> out.println("  - " + line));
        difference.put().forEach(line -> out.println("  + " + line));
    }

    private static void write(Path file, Improved improved, PrintWriter out) {
        if (!improved.usable()) {
            throw new Unusable("The book with these lessons can't be used:\n" + Books.sentences(improved.faults()));
        }
        PaperFile.write(file, improved.text().getBytes(StandardCharsets.UTF_8));
        out.println();
        out.println(file + " holds the engine book for the next one.");
        improved.faults().forEach(fault -> out.println(fault.sentence()));
    }
}
