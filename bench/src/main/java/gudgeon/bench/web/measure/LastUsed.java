package gudgeon.bench.web.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import java.util.Comparator;
import java.util.List;

/** Which instrument is offered first for a dimension, so that nobody has to choose it at every place. */
final class LastUsed {
    private LastUsed() {}

    /**
     * The one that was used last for this dimension, or for one that wants the same; on this device, if it was one. Empty if none
     * was, unless there is only one that measures in its unit.
     */
    static String of(Build build, Dimension dimension, String device) {
        List<String> possible = OwnInstruments.of(build.instruments()).all().stream()
                .filter(one -> one.scale().unit() == dimension.unit())
                .map(OwnInstrument::name)
                .toList();
        return build.told(ReadingTaken.class).stream()
                .filter(told -> possible.contains(told.fact().instrument()))
                .filter(told -> build.structure()
                        .dimension(told.fact().dimension())
                        .filter(other -> other.with().equals(dimension.with()))
                        .isPresent())
                .max(Comparator.comparing((Told<ReadingTaken> told) ->
                                build.entry(told.number()).device().equals(device))
                        .thenComparing(told -> told.fact().dimension().equals(dimension.id()))
                        .thenComparingLong(Told::number))
                .map(told -> told.fact().instrument())
                .orElse(possible.size() == 1 ? possible.get(0) : "");
    }
}
