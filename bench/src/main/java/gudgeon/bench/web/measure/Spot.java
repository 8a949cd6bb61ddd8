package gudgeon.bench.web.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Sheet;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One place at which one piece is to be read.
 *
 * @param dimension what is read
 * @param piece which of several alike pieces, from 1
 * @param at the place; empty where the dimension has one only
 */
public record Spot(Dimension dimension, int piece, String at) {
    /** Every place of a dimension, piece by piece, in the order in which they are read. */
    static Stream<Spot> of(Dimension dimension) {
        return IntStream.rangeClosed(1, dimension.pieces())
                .boxed()
                .flatMap(piece -> dimension.places().all().stream().map(at -> new Spot(dimension, piece, at)));
    }

    static Spot of(Sheet.Row row) {
        return new Spot(row.dimension(), row.piece(), row.at());
    }

    /** Which piece and place, in words; empty where there is one only. */
    public String words() {
        String of = dimension.pieces() > 1 ? "piece " + piece + " of " + dimension.pieces() : "";
        return of + (of.isEmpty() || at.isEmpty() ? "" : ", ") + at;
    }

    /** The number of its place among those of the dimension, from 0, as the fields of a sheet are named. */
    public int place() {
        return dimension.places().all().indexOf(at);
    }

    /** The name of its field on a sheet. */
    public String field() {
        return "reading." + dimension.id() + "." + piece + "." + place();
    }

    /** What an address of the walk says of it. */
    public String query(String part) {
        return "?dimension=" + written(dimension.id()) + "&piece=" + piece + "&at=" + written(at)
                + (part.isEmpty() ? "" : "&part=" + written(part));
    }

    /** The readings taken here on a part. */
    public List<Told<ReadingTaken>> readings(Build build, String part) {
        return build.readings(dimension.id(), part).stream()
                .filter(told -> told.fact().piece() == piece && told.fact().at().equals(at))
                .toList();
    }

    /** A text as it stands in an address. */
    public static String written(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
