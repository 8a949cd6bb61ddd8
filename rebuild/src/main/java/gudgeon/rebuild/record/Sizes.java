package gudgeon.rebuild.record;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was measured: as it came off, and as it is now, with limits, verdict and instrument. */
record Sizes(Build build) {
    private static final String NOTHING = "–";

    List<Chapter> chapters() {
        List<Block.Row> rows = build.structure().dimensions().stream()
                .flatMap(dimension -> row(dimension).stream())
                .toList();
        List<Block> blocks = new ArrayList<>();
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(
                    "", List.of("Size", "As it came off", "As it is", "Allowed", "Verdict", "Read with"), rows));
            blocks.add(new Block.Said(
                    "Values stand with their expanded uncertainty, 95 %, of the place that decides.", List.of()));
        }
        return List.of(new Chapter("sizes", "Sizes", blocks));
    }

    private Optional<Block.Row> row(Dimension dimension) {
        Verdict before = Verdict.of(build, dimension, "");
        Verdict now = Verdict.of(build, dimension);
        if (before.outcome() == Outcome.NOT_MEASURED && now.outcome() == Outcome.NOT_MEASURED) {
            return Optional.empty();
        }
        boolean same = now.part().isEmpty();
        List<Reading> readings = Stream.of(before, now)
                .distinct()
                .flatMap(verdict -> verdict.evaluated().figures().stream())
                .flatMap(figure -> figure.readings().stream())
                .toList();
        return Optional.of(new Block.Row(
                List.of(
                        build.structure().name(dimension.of()) + ": " + dimension.name(),
                        value(before),
                        same ? "the same part" : value(now) + " (" + now.part() + ")",
                        dimension.expect().map(Expect::words).orElse(NOTHING),
                        now.outcome().words(),
                        with(readings)),
                readings.stream().map(Reading::entry).distinct().sorted().toList()));
    }

    private static String value(Verdict verdict) {
        return verdict.worst().map(figure -> value(verdict.dimension(), figure)).orElse(NOTHING);
    }

    private static String value(Dimension dimension, Figure figure) {
        return figure.doubtKnown()
                ? dimension.unit().figure(figure.value(), figure.expanded())
                : dimension.unit().figure(figure.value());
    }

    private static String with(List<Reading> readings) {
        String names = readings.stream()
                .map(Reading::with)
                .filter(name -> !name.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? NOTHING : names;
    }
}
