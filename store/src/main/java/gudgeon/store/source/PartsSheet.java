package gudgeon.store.source;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import gudgeon.rebuild.source.Offer;
import gudgeon.rebuild.source.PartsLine;
import gudgeon.rebuild.source.PartsList;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The parts list as a table that a spreadsheet opens: how each position stands, what is offered, and empty columns to fill in what is
 * ordered and what arrived. Filled in, it is read by {@link PartsFile}.
 */
public final class PartsSheet {
    /** By which spreadsheets know UTF-8. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private PartsSheet() {}

    /** The table's text, separated by commas, with lines ended as RFC 4180 has them. */
    public static String of(PartsList list) {
        StringWriter text = new StringWriter();
        text.write(BYTE_ORDER_MARK);
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            writer.writeRecord(Arrays.stream(Column.values()).map(Column::word).toList());
            for (PartsLine line : list.lines()) {
                List<Optional<Offer>> offers = new ArrayList<>();
                line.offers().forEach(offer -> offers.add(Optional.of(offer)));
                if (offers.isEmpty()) {
                    offers.add(Optional.empty());
                }
                offers.forEach(offer -> writer.writeRecord(Arrays.stream(Column.values())
                        .map(column -> inert(cell(column, line, offer)))
                        .toList()));
            }
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return text.toString();
    }

    private static String cell(Column column, PartsLine line, Optional<Offer> offer) {
        return switch (column) {
            case POSITION -> line.position();
            case PART -> offer.map(Offer::part).orElse("");
            case ORIGIN ->
                offer.flatMap(Offer::origin).map(origin -> origin.words()).orElse("");
            case FROM -> offer.map(Offer::from).orElse("");
            case PRICE -> offer.map(Offer::written).orElse("");
            case LEAST -> days(offer, 0);
            case LIKELY -> days(offer, 1);
            case MOST -> days(offer, 2);
            case WHAT -> line.name();
            case WHY -> line.want().map(want -> want.kind().words()).orElse("");
            case NEEDED -> String.valueOf(line.needed());
            case IN_HAND -> String.valueOf(line.inHand());
            case ON_THE_WAY -> String.valueOf(line.ordered());
            case TO_ORDER -> String.valueOf(line.toOrder());
            case CURRENCY, ORDER, ORDERED, PROMISED, POSTAGE, ARRIVED, REMARK -> "";
        };
    }

    private static String days(Optional<Offer> offer, int which) {
        return offer.flatMap(Offer::days)
                .map(days -> List.of(days.least(), days.likely(), days.most()).get(which))
                .map(String::valueOf)
                .orElse("");
    }

    /** A text that a spreadsheet would reckon with as a formula is kept from it by a quote. */
    private static String inert(String text) {
        return text.matches("(?s)[-=+@\\t\\r].*") ? "'" + text : text;
    }
}
