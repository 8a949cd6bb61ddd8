package gudgeon.rebuild.measure;

import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An instrument of the person's own that can measure a dimension.
 *
 * @param instrument the instrument
 * @param hopeless why it is too coarse all the same, a sentence; empty where it may prove something
 */
public record Suited(OwnInstrument instrument, Optional<String> hopeless) {
    /** Those that can measure a dimension, in the person's order; those that can't prove its limits too, with the warning. */
    public static List<Suited> of(Build build, Dimension dimension) {
        Optional<ToleranceInterval> about = Stream.concat(dimension.standard().stream(), dimension.expect().stream())
                .map(Verdict::interval)
                .findFirst();
        return OwnInstruments.of(build.instruments()).all().stream()
                .filter(one -> Serving.serves(one, dimension, about(about, one)))
                .map(one -> new Suited(one, Hopeless.of(build, dimension, one)))
                .toList();
    }

    /** A value to hold its range against: a limit where one is known, else one that it spans. */
    private static double about(Optional<ToleranceInterval> known, OwnInstrument instrument) {
        return known.map(span -> Double.isInfinite(span.upper()) ? span.lower() : span.upper())
                .orElse(Double.isInfinite(instrument.least()) ? 0 : instrument.least());
    }
}
