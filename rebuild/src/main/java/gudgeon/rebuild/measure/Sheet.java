package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The walk through all that is measured on a build: first what can be measured now, since the part is off or in the hand, in the
 * book's order, place by place and piece by piece.
 *
 * @param rows one for each place of each piece
 */
public record Sheet(List<Row> rows) {
    /**
     * A place to measure.
     *
     * @param dimension the dimension
     * @param part the part that counts; empty for the one that came off
     * @param piece which of several alike pieces, from 1
     * @param at the place, empty where there is one only
     * @param now whether the part is in the hand, so that it can be measured now
     * @param readings what was read there, the last one last
     */
    public record Row(Dimension dimension, String part, int piece, String at, boolean now, List<Reading> readings) {
        public Row {
            readings = List.copyOf(readings);
        }

        /** Whether nothing was read there yet. */
        public boolean isMissing() {
            return readings.isEmpty();
        }

        /** The place with its piece, in words; empty where there is one only. */
        public String where() {
            String which = dimension.pieces() > 1 ? "piece " + piece : "";
            return which + (which.isEmpty() || at.isEmpty() ? "" : ", ") + at;
        }

        /** The last reading in words, to be said back; empty where there is none. */
        public Optional<String> spoken() {
            return readings.stream()
                    .reduce((one, other) -> other)
                    .map(reading -> Spoken.of(
                            reading.written(),
                            reading.instrument().filter(one -> one.inches()).isPresent()
                                    ? "in"
                                    : dimension.unit().symbol()));
        }
    }

    public Sheet {
        rows = List.copyOf(rows);
    }

    /** The sheet of a build. */
    public static Sheet of(Build build) {
        List<Row> rows = new ArrayList<>();
        build.structure().dimensions().stream()
                .filter(Dimension::isRead)
                .forEach(dimension -> rows.addAll(rows(build, dimension)));
        rows.sort(Comparator.comparing(row -> !row.now()));
        return new Sheet(rows);
    }

    /** The next place to measure: the first that can be measured now and was not. */
    public Optional<Row> next() {
        return missing().stream().filter(Row::now).findFirst();
    }

    /** The places that were not read yet. */
    public List<Row> missing() {
        return rows.stream().filter(Row::isMissing).toList();
    }

    private static List<Row> rows(Build build, Dimension dimension) {
        Evaluated evaluated = Evaluated.of(build, dimension);
        boolean now = isInHand(build, dimension.of(), evaluated.part());
        List<Row> rows = new ArrayList<>();
        for (int piece = 1; piece <= dimension.pieces(); piece++) {
            for (String at : dimension.places().all()) {
                rows.add(new Row(dimension, evaluated.part(), piece, at, now, readings(evaluated, piece, at)));
            }
        }
        return rows;
    }

    private static List<Reading> readings(Evaluated evaluated, int piece, String at) {
        return evaluated.figures().stream()
                .filter(figure -> figure.piece() == piece && figure.at().equals(at))
                .map(Figure::readings)
                .findFirst()
                .orElse(List.of());
    }

    /** Whether a part lies on the bench: the one that came off, or another that is not in its place yet. */
    private static boolean isInHand(Build build, String position, String part) {
        return build.place(position).isOut()
                && (!part.isEmpty() || build.partFor(position).isPresent());
    }
}
