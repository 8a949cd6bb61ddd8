package gudgeon.rebuild.record;

import java.util.List;

/**
 * A line of a chapter.
 *
 * @param entries numbers of the journal's entries that it rests on; may be empty
 * @param cells its texts, one for each heading of its chapter
 */
public record Row(List<Long> entries, List<String> cells) {
    public Row {
        entries = List.copyOf(entries);
        cells = List.copyOf(cells);
    }
}
