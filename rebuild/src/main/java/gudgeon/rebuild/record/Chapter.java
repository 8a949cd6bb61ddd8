package gudgeon.rebuild.record;

import java.util.List;

/**
 * A part of the record.
 *
 * @param title its heading
 * @param sentences what stands before its lines
 * @param headings what stands over its lines, without the column of entries
 * @param rows its lines
 */
public record Chapter(String title, List<String> sentences, List<String> headings, List<Row> rows) {
    public Chapter {
        sentences = List.copyOf(sentences);
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** Whether it says nothing. */
    public boolean isEmpty() {
        return sentences.isEmpty() && rows.isEmpty();
    }
}
