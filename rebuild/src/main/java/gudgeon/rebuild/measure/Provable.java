package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.reading.OwnInstrument;
import java.util.ArrayList;
import java.util.List;

/**
 * What an instrument is good for on an engine.
 *
 * @param proves dimensions that it can measure and on which a sound part could be proved with it
 * @param hopeless dimensions that it can measure, but too coarsely to prove anything
 */
public record Provable(List<Dimension> proves, List<Dimension> hopeless) {
    public Provable {
        proves = List.copyOf(proves);
        hopeless = List.copyOf(hopeless);
    }

    /** Of the dimensions that have limits, or from which a clearance with limits follows, those that the instrument can measure. */
    public static Provable with(Build build, OwnInstrument instrument) {
        List<Dimension> proves = new ArrayList<>();
        List<Dimension> hopeless = new ArrayList<>();
        build.structure().dimensions().stream()
                .filter(Dimension::isRead)
                .filter(dimension ->
                        Hopeless.limited(build, dimension).findAny().isPresent())
                .filter(dimension -> Hopeless.best(dimension).stream()
                        .anyMatch(value -> Serving.serves(instrument, dimension, value)))
                .forEach(dimension ->
                        (Hopeless.of(build, dimension, instrument).isEmpty() ? proves : hopeless).add(dimension));
        return new Provable(proves, hopeless);
    }
}
