package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.schedule.Decider;
import gudgeon.rebuild.schedule.Expected;
import gudgeon.rebuild.schedule.Schedule;
import gudgeon.rebuild.schedule.ToPlace;
import gudgeon.store.source.CalendarFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** When it will be done, what that hangs on, and what to do this evening. */
@Command(
        name = "schedule",
        mixinStandardHelpOptions = true,
        description =
                "Says when the rebuild will be done, from when to when, what that hangs on, and which order to place first.")
final class ScheduleCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final NamedBuild asked = new NamedBuild();

    @Option(names = "--json", description = "as JSON, described in docs/schedule-json.md")
    private boolean json;

    @Option(
            names = "--calendar",
            paramLabel = "FILE",
            description = "writes arrivals and hold points to a new .ics file")
    private @Nullable Path calendar;

    @Option(names = "--today", paramLabel = "DATE", description = "the day to count from; today without this")
    private @Nullable LocalDate today;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Build build = asked.build();
        LocalDate day = today == null ? LocalDate.now(ZoneId.systemDefault()) : today;
        Instant now = today == null ? Instant.now() : day.atStartOfDay().toInstant(ZoneOffset.UTC);
        Schedule schedule = Schedule.of(build, Plan.of(build, now), day);
        if (calendar != null) {
            write(calendar, CalendarFile.text(schedule, asked.id().orElse("book"), now));
        }
        if (json) {
            out.println(ScheduleJson.text(schedule));
        } else {
            print(schedule, out);
        }
        return Gudgeon.CLEAR;
    }

    private static void print(Schedule schedule, PrintWriter out) {
        out.println(schedule.sentence());
        Section.print(
                out,
                "This evening:",
                schedule.thisEvening().stream().map(one -> one.name() + " (" + one.id() + "). " + one.why()));
        Section.print(out, "The end hangs on:", schedule.deciders().stream().map(Decider::sentence));
        Section.print(
                out,
                "To order, first what costs most if it waits:",
                schedule.toPlace().stream().map(ToPlace::sentence));
        Section.print(out, "To arrive:", schedule.arrivals().stream().map(ScheduleCommand::said));
        Section.print(out, "Hold points:", schedule.holdPoints().stream().map(ScheduleCommand::said));
        Section.print(out, "Assumed:", schedule.assumptions().stream());
    }

    private static String said(Expected expected) {
        return expected.day().words() + ": " + expected.what();
    }

    private static void write(Path file, String text) {
        if (Files.exists(file)) {
            throw new Unusable(file + " is there already; name a file that is not.");
        }
        try {
            Files.writeString(file, text);
        } catch (IOException refused) {
            throw new Unusable(file + " can't be written: " + refused.getMessage() + ". Check the folder.");
        }
    }
}
