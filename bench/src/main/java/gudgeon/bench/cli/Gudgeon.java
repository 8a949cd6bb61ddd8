package gudgeon.bench.cli;

import gudgeon.bench.about.Edition;
import gudgeon.store.shelf.ShelfFault;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line's entry: every fault ends as a sentence and an exit code, never as a stack trace. */
@Command(
        name = "gudgeon",
        mixinStandardHelpOptions = true,
        versionProvider = Gudgeon.Version.class,
        description = "For the person who rebuilds small old engines: sees trouble before the cover closes.",
        footer = {
            "",
            "Exit codes: 0 all clear; 1 something touches, is close or unproven; 2 unusable input.",
            "The maker's manual, local rules and licensed practice come before Gudgeon."
        },
        subcommands = {
            FitCommand.class,
            CompareCommand.class,
            CheckCommand.class,
            BookCommand.class,
            MeasureCommand.class,
            FitSizeCommand.class,
            BearingCommand.class,
            RingGapCommand.class,
            ShimsCommand.class,
            PlanCommand.class,
            StartCommand.class,
            RunInCommand.class,
            LessonsCommand.class,
            OptionsCommand.class,
            UndoCommand.class,
            FindCommand.class,
            TimingCommand.class,
            PartsCommand.class,
            ScheduleCommand.class,
            BoreCommand.class,
            BoltLengthCommand.class,
            FastenersCommand.class,
            TorqueCommand.class,
            WrenchCommand.class,
            ConvertCommand.class,
            SpringCommand.class,
            PrintCardCommand.class,
            PrintTorqueCommand.class,
            PrintListCommand.class,
            PrintRecordCommand.class,
            PrintLabelsCommand.class,
            DemoCommand.class,
            ReplayCommand.class,
            DrillCommand.class,
            DrillsCommand.class,
            ServeCommand.class,
            BuildsCommand.class,
            VerifyJournalCommand.class,
            ExportCommand.class,
            ImportCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            MendCommand.class,
            LibrariesCommand.class
        })
public final class Gudgeon implements Runnable {
    /** The version, as the build wrote it down. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Gudgeon " + Edition.version()};
        }
    }

    /** All clear. */
    static final int CLEAR = 0;
    /** Something touches, is close or unproven. */
    static final int NOT_CLEAR = 1;
    /** Input that can't be used. */
    static final int UNUSABLE = 2;

    @Spec
    private @org.jspecify.annotations.Nullable CommandSpec spec;

    /** Runs a command and ends the process with its exit code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs a command and gives its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new Gudgeon())
                .setOut(out)
                .setErr(err)
                .registerConverter(int.class, Gudgeon::wholeNumber)
                .registerConverter(LocalDate.class, Gudgeon::day)
                .setParameterExceptionHandler((fault, given) -> misuse(fault))
                .setExecutionExceptionHandler((fault, command, parsed) -> {
                    command.getErr().println(sentence(fault));
                    return UNUSABLE;
                })
                .execute(args);
    }

    private static int misuse(ParameterException fault) {
        CommandLine command = fault.getCommandLine();
        command.getErr().println(sentence(fault, command));
        command.getErr().println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
        return UNUSABLE;
    }

    private static String sentence(ParameterException fault, CommandLine command) {
        if (fault instanceof UnmatchedArgumentException stray && !stray.isUnknownOption()) {
            String first = "'" + stray.getUnmatched().get(0) + "'";
            return command.getSubcommands().isEmpty()
                    ? first + " is one argument too many."
                    : first + " is not a command; known are "
                            + String.join(", ", command.getSubcommands().keySet()) + ".";
        }
        return fault.getMessage() + ".";
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException notOne) {
            throw new TypeConversionException("'" + text + "' is not a day; write it as 2026-01-31");
        }
    }

    private static int wholeNumber(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notOne) {
            throw new TypeConversionException("'" + text + "' is not a whole number that can be used");
        }
    }

    private static String sentence(Exception fault) {
        if (fault instanceof Unusable || fault instanceof ShelfFault) {
            return String.valueOf(fault.getMessage());
        }
        return "Gudgeon failed on this, which is a fault of its own: " + fault
                + ". Please report it with the book that caused it.";
    }

    @Override
    public void run() {
        if (spec != null) {
            spec.commandLine().usage(spec.commandLine().getOut());
        }
    }
}
