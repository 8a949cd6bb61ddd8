package gudgeon.rebuild.record;

import gudgeon.rebuild.fit.TrialFit;
import java.util.List;

/** What a chapter of a record holds. */
public sealed interface Block {
    /**
     * A sentence.
     *
     * @param entries numbers of the entries that it rests on; none where it rests on what stands beside it
     */
    record Said(String sentence, List<Long> entries) implements Block {
        public Said {
            entries = List.copyOf(entries);
        }
    }

    /**
     * A table.
     *
     * @param title what it shows; may be empty
     * @param heads one for each column
     */
    record Table(String title, List<String> heads, List<Row> rows) implements Block {
        public Table {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /**
     * A row of a table.
     *
     * @param cells one for each column
     * @param entries numbers of the entries that it rests on
     */
    record Row(List<String> cells, List<Long> entries) {
        public Row {
            cells = List.copyOf(cells);
            entries = List.copyOf(entries);
        }
    }

    /** The gaps of a trial fit, drawn over the crank angle. */
    record Gaps(TrialFit fit) implements Block {}
}
