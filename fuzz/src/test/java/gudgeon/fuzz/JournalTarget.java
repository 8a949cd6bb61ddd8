package gudgeon.fuzz;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.plan.Plan;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;

/** A journal that is read is the same when it was written, and can be told, folded, planned by and looked through for alarms. */
public final class JournalTarget {
    private static final EngineBook BOOK = Tarn.book();
    private static final Alarms ALARMS = new Alarms();
    private static final Instant NOW = Instant.parse("2026-01-31T12:00:00Z");

    private JournalTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        Reading reading = JournalFile.read(new String(input, StandardCharsets.UTF_8));
        if (reading instanceof Reading.Refused refused) {
            Promise.said(refused.sentences());
        } else if (reading instanceof Reading.Read read) {
            use(read.entries());
        }
    }

    private static void use(List<Entry> entries) {
        Promise.same(new Reading.Read(entries), JournalFile.read(JournalFile.write(entries)), "the journal");
        entries.forEach(entry -> Promise.kept(
                !Telling.of(entry.fact(), BOOK.structure()).isBlank(), "an entry is told as nothing: " + entry));
        Build build = Build.of(BOOK).after(entries);
        Promise.same((long) entries.size(), build.size(), "the count of entries");
        ALARMS.standing(build).forEach(alarm -> Promise.kept(!alarm.what().isBlank(), "an alarm says nothing"));
        Plan.of(build, NOW);
    }
}
