package gudgeon.store.archive;

import de.siegmar.fastcsv.writer.CsvWriter;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Telling;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import gudgeon.store.shelf.Line;
import gudgeon.store.source.Guarded;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A journal as a spreadsheet takes it (RFC 4180): a line for each entry, told in words. It is for reading, and not taken in again. */
final class JournalTable {
    private JournalTable() {}

    /**
     * The table's text.
     *
     * @param structure of the engine book, which has the names of what the entries are about
     */
    static String text(List<Line> lines, Structure structure) {
        Set<String> struckOut = struckOut(lines);
        StringWriter text = new StringWriter();
        text.append('\uFEFF');
        try (CsvWriter writer = CsvWriter.builder().build(text)) {
            writer.writeRecord("number", "time", "device", "what", "struck out");
            for (Line line : lines) {
                Optional<Entry> entry = entry(line);
                writer.writeRecord(
                        String.valueOf(line.number()),
                        entry.map(read -> read.at().toString()).orElse(""),
                        Guarded.cell(entry.map(Entry::device).orElse("")),
                        Guarded.cell(entry.map(read -> Telling.of(read.fact(), structure))
                                .orElse("This entry can't be read.")),
                        struckOut.contains(line.key()) ? "yes" : "");
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static Set<String> struckOut(List<Line> lines) {
        Set<String> keys = new HashSet<>();
        for (Line line : lines) {
            entry(line)
                    .map(Entry::fact)
                    .filter(Corrected.class::isInstance)
                    .map(Corrected.class::cast)
                    .ifPresent(corrected -> keys.add(corrected.entry()));
        }
        return keys;
    }

    private static Optional<Entry> entry(Line line) {
        return EntryJson.read(line.json()) instanceof Reading.Read read
                ? read.entries().stream().findFirst()
                : Optional.empty();
    }
}
