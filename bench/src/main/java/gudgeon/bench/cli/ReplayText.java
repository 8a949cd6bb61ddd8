package gudgeon.bench.cli;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.sentence.Amount;
import java.io.PrintWriter;
import java.util.Locale;

/** A replay as a person reads it on a terminal. */
final class ReplayText {
    private static final String INDENT = "          ";

    private ReplayText() {}

    static void print(Replay replay, PrintWriter out) {
        Build build = replay.build();
        out.println(build.book().engine().name() + ", " + Amount.of(build.size(), "entry", "entries") + ".");
        for (Replay.Turn turn : replay.turns()) {
            out.println();
            out.printf(Locale.ROOT, "%6d  %s%n", turn.number(), told(build, turn.number()));
            turn.raised().forEach(alarm -> raised(alarm, build, out));
            turn.gone()
                    .forEach(alarm ->
                            out.println(INDENT + "gone: " + alarm.kind().words() + where(alarm, build)));
        }
        out.println();
        build.unknown()
                .forEach(number -> out.println("Entry " + number
                        + " names what the book does not have, and counts for nothing: " + told(build, number)));
        if (replay.standing().isEmpty()) {
            out.println("At the end no alarm stands.");
            return;
        }
        int standing = replay.standing().size();
        out.println("At the end " + Amount.of(standing, "alarm stands", "alarms stand") + ":");
        replay.standing()
                .forEach(alarm -> out.println(
                        "  " + alarm.severity().word() + ": " + alarm.kind().words() + where(alarm, build)));
    }

    private static void raised(Alarm alarm, Build build, PrintWriter out) {
        out.println(INDENT + alarm.severity().word().toUpperCase(Locale.ROOT) + ": "
                + alarm.kind().words() + where(alarm, build));
        out.println(INDENT + "  " + alarm.what());
        out.println(INDENT + "  " + alarm.why());
        out.println(INDENT + "  " + alarm.todo());
        alarm.figures().forEach(figure -> out.println(INDENT + "  - " + figure));
    }

    private static String where(Alarm alarm, Build build) {
        return alarm.at().isEmpty() ? "" : ", at: " + build.structure().name(alarm.at());
    }

    private static String told(Build build, long number) {
        return Telling.of(build.entry(number).fact(), build.structure());
    }
}
