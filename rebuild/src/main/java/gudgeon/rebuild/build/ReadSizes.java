package gudgeon.rebuild.build;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Figures;
import gudgeon.rebuild.reading.OwnInstruments;
import gudgeon.rebuild.reading.Reading;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sizes that readings give of a position's part: those that the book's figures know, so that the trial fit goes by them. */
record ReadSizes(Build build, Position position, Part part) {
    /** By the key that the book's figures have; of a size that was also told as a whole, what came last counts. */
    Map<String, Size> byKey() {
        Map<String, Size> sizes = new LinkedHashMap<>();
        for (Dimension dimension : build.structure().dimensionsOf(position.id())) {
            Optional<Size> booked =
                    PartSize.booked(build.book(), dimension).filter(size -> size.unit() == dimension.unit());
            Map<Long, ReadingTaken> taken = booked.isEmpty() ? Map.of() : Countable.of(build, dimension, part.name());
            if (!taken.isEmpty() && Collections.max(taken.keySet()) > toldAsWhole(dimension.key())) {
                Figures.of(dimension, taken, OwnInstruments.of(build.instruments()))
                        .overAll()
                        .ifPresent(figure -> sizes.put(dimension.key(), size(booked.orElseThrow(), figure)));
            }
        }
        return sizes;
    }

    private long toldAsWhole(String key) {
        return build.lastTold(
                position.id(),
                fact -> fact instanceof Measured of
                        && of.part().equals(part.name())
                        && of.sizes().containsKey(key));
    }

    /** With the book's doubts where nobody said what it was read with. */
    private static Size size(Size booked, Figure figure) {
        Quantity quantity = figure.doubtKnown()
                ? figure.quantity()
                : new Quantity(figure.value(), booked.quantity().doubts());
        List<Double> readings = figure.readings().stream().map(Reading::value).toList();
        return new Size(
                booked.path(),
                booked.label(),
                booked.unit(),
                quantity,
                booked.unit().figure(figure.value()),
                Optional.empty(),
                readings,
                "Read on the part.",
                "",
                booked.where());
    }
}
