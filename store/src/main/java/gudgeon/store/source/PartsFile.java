package gudgeon.store.source;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.source.PriceRefusals;
import gudgeon.store.journal.EntryJson;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a file of a spreadsheet says of offers, orders and arrivals. Each line is about one position, by its id or its name; what is
 * filled in says what it tells: a number ordered, a number arrived, or who offers it at what price. Lines in which none of these is
 * filled in tell nothing. Read only, so that a person can look at it before anything is kept.
 *
 * @param text the file's text
 * @param facts what was understood, in the order of the lines
 * @param faults lines that tell nothing that can be taken down
 * @param notes how the file was read, each a sentence
 */
public record PartsFile(String text, List<Fact> facts, List<Fault> faults, List<String> notes) {
    /** The largest file that is read, in bytes. */
    public static final int LARGEST = 1024 * 1024;

    private static final int MOST_LINES = 2000;

    public PartsFile {
        facts = List.copyOf(facts);
        faults = List.copyOf(faults);
        notes = List.copyOf(notes);
    }

    /**
     * A line that can't be taken down.
     *
     * @param line its number, from 1; 0 for the file as a whole
     * @param sentence why, and what to do
     */
    public record Fault(int line, String sentence) {}

    /** Reads a file, in whatever letters and separators a spreadsheet wrote it. */
    public static PartsFile of(Build build, byte[] content) {
        return content.length > LARGEST
                ? nothing("", 0, "The file is larger than 1 MB. Take out what is not about parts.")
                : of(build, SheetText.of(content));
    }

    /** Reads a file's text. */
    public static PartsFile of(Build build, String text) {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(SheetText.separator(text))
                .skipEmptyLines(true)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            reader.forEach(records::add);
        } catch (CsvParseException | IOException unreadable) {
            int line = records.isEmpty()
                    ? 1
                    : (int) records.get(records.size() - 1).getStartingLineNumber() + 1;
            return nothing(
                    text,
                    line,
                    "From here on the file is no table: a quote is opened and not closed. Save it again as CSV.");
        }
        if (records.isEmpty()) {
            return nothing(text, 0, "The file is empty. Write the columns' names in its first line.");
        }
        return new Lines(build, columns(records.get(0))).read(text, records);
    }

    private static PartsFile nothing(String text, int line, String sentence) {
        return new PartsFile(text, List.of(), List.of(new Fault(line, sentence)), List.of());
    }

    private static Map<Integer, Column> columns(CsvRecord first) {
        Map<Integer, Column> columns = new TreeMap<>();
        for (int i = 0; i < first.getFieldCount(); i++) {
            int at = i;
            Column.of(first.getField(i))
                    .filter(column -> !columns.containsValue(column))
                    .ifPresent(column -> columns.put(at, column));
        }
        return columns;
    }

    /** What was understood and what was not, as a sentence. */
    public String sentence() {
        return Amount.of(facts.size(), "entry", "entries") + " understood, " + Amount.of(faults.size(), "line")
                + " not.";
    }

    /** Goes through the lines. */
    private static final class Lines {
        private final Build build;
        private final Map<Integer, Column> columns;
        private final List<Fact> facts = new ArrayList<>();
        private final List<Fault> faults = new ArrayList<>();
        private final Set<String> notes = new LinkedHashSet<>();

        Lines(Build build, Map<Integer, Column> columns) {
            this.build = build;
            this.columns = columns;
        }

        PartsFile read(String text, List<CsvRecord> records) {
            if (!columns.containsValue(Column.POSITION)) {
                return nothing(
                        text,
                        1,
                        "No column is headed 'position'. Write the columns' names in the first line, as in the list that"
                                + " can be downloaded.");
            }
            if (records.size() > MOST_LINES + 1) {
                return nothing(text, 0, "The file has more than " + MOST_LINES + " lines. Send it in pieces.");
            }
            unread(records.get(0)).ifPresent(notes::add);
            records.stream().skip(1).forEach(this::line);
            return new PartsFile(text, facts, faults, List.copyOf(notes));
        }

        private static Optional<String> unread(CsvRecord first) {
            List<String> unread = first.getFields().stream()
                    .filter(heading -> !heading.isBlank() && Column.of(heading).isEmpty())
                    .toList();
            return unread.isEmpty()
                    ? Optional.empty()
                    : Optional.of("Columns that tell nothing here: " + String.join(", ", unread) + ".");
        }

        private void line(CsvRecord line) {
            Map<Column, String> cells = new EnumMap<>(Column.class);
            for (int i = 0; i < line.getFieldCount(); i++) {
                Column column = columns.get(i);
                if (column != null && column.isRead() && !line.getField(i).isBlank()) {
                    cells.put(column, line.getField(i).strip());
                }
            }
            PartsRow row = new PartsRow(build, cells);
            List<Fact> told = row.facts();
            List<String> refused = new ArrayList<>(row.refusals());
            if (refused.isEmpty()) {
                refused.addAll(Refusals.of(build.asIf(facts), told));
                refused.addAll(PriceRefusals.of(told));
                told.forEach(fact -> refused.addAll(EntryJson.against(fact)));
            }
            notes.addAll(row.notes());
            if (refused.isEmpty()) {
                facts.addAll(told);
            } else {
                faults.add(new Fault((int) line.getStartingLineNumber(), String.join(" ", refused)));
            }
        }
    }
}
