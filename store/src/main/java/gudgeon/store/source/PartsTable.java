package gudgeon.store.source;

import de.siegmar.fastcsv.writer.CsvWriter;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.source.Offer;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import gudgeon.rebuild.source.Want;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A parts list as a spreadsheet takes it (RFC 4180): a line for each position, one more for each further offer. What a person fills in
 * can be read back as a {@link PartsFile}.
 */
public final class PartsTable {
    private PartsTable() {}

    /** The text, beginning with a byte order mark, by which spreadsheets know that it is in UTF-8. */
    public static String text(PartsList list) {
        StringWriter text = new StringWriter();
        text.append('\uFEFF');
        try (CsvWriter writer = CsvWriter.builder().build(text)) {
            write(writer, Column::word);
            for (PartsLine line : list.lines()) {
                if (line.offers().isEmpty()) {
                    write(writer, line, Optional.empty());
                }
                line.offers().forEach(offer -> write(writer, line, Optional.of(offer)));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static void write(CsvWriter writer, PartsLine line, Optional<Offer> offer) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        cells.put(Column.POSITION, line.position());
        cells.put(Column.WHAT, line.name());
        cells.put(Column.WHY, line.want().map(Want::sentence).orElse(""));
        cells.put(Column.NEEDED, String.valueOf(line.needed()));
        cells.put(Column.IN_HAND, String.valueOf(line.inHand()));
        cells.put(Column.ON_THE_WAY, String.valueOf(line.ordered()));
        cells.put(Column.TO_ORDER, String.valueOf(line.toOrder()));
        offer.ifPresent(one -> {
            cells.put(Column.PART, one.part());
            cells.put(Column.ORIGIN, one.origin().map(Origin::words).orElse(""));
            cells.put(Column.FROM, one.from());
            cells.put(Column.PRICE, one.written());
            cells.put(Column.LEAST, days(one, Days::least));
            cells.put(Column.LIKELY, days(one, Days::likely));
            cells.put(Column.MOST, days(one, Days::most));
        });
        write(writer, column -> cells.getOrDefault(column, ""));
    }

    private static String days(Offer offer, Function<Days, Integer> which) {
        return offer.days().map(which).map(String::valueOf).orElse("");
    }

    private static void write(CsvWriter writer, Function<Column, String> cell) {
        List<String> cells =
                Arrays.stream(Column.values()).map(cell).map(Guarded::cell).toList();
        writer.writeRecord(cells);
    }
}
