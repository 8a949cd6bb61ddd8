package gudgeon.fuzz;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.source.PartsList;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import gudgeon.store.source.PartsFile;
import gudgeon.store.source.PartsTable;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** What is understood of a table of parts can be kept in the journal, and the table written afterwards reads back without a fault. */
public final class PartsTarget {
    private static final Build BUILD = Tarn.worn();
    private static final LocalDate TODAY = LocalDate.parse("2026-01-31");
    private static final Instant NOW = Instant.parse("2026-01-31T12:00:00Z");

    private PartsTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        PartsFile file = PartsFile.of(BUILD, input);
        file.faults().forEach(fault -> Promise.sentence(fault.sentence()));
        file.notes().forEach(Promise::sentence);
        Promise.sentence(file.sentence());
        for (Fact fact : file.facts()) {
            Entry entry = new Entry("e-1", NOW, "bench", BUILD.size(), fact);
            Promise.same(new Reading.Read(List.of(entry)), EntryJson.read(EntryJson.write(entry)), "the entry");
        }
        if (!file.facts().isEmpty()) {
            Build after = BUILD.asIf(file.facts());
            PartsFile again = PartsFile.of(after, PartsTable.text(PartsList.of(after, TODAY)));
            Promise.same(List.of(), again.faults(), "the table's faults");
        }
    }
}
