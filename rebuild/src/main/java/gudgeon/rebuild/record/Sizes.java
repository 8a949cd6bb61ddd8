package gudgeon.rebuild.record;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Reading;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Sizes of what came off and of what is in now, held against the limits of the book. */
record Sizes(Build build) {
    static final List<String> HEADINGS = List.of("Size", "As found", "Now", "Limits", "Verdict now", "Read with");

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Dimension dimension : build.structure().dimensions()) {
            Verdict before = Verdict.of(build, dimension, "");
            Verdict now = Verdict.of(build, dimension);
            if (now.outcome() != Outcome.NOT_MEASURED || before.outcome() != Outcome.NOT_MEASURED) {
                rows.add(row(dimension, before, now));
            }
        }
        return rows;
    }

    private static Row row(Dimension dimension, Verdict before, Verdict now) {
        List<Reading> readings = Stream.of(before, now)
                .flatMap(verdict -> verdict.evaluated().figures().stream())
                .flatMap(figure -> figure.readings().stream())
                .toList();
        String with = String.join(
                ", ",
                readings.stream()
                        .map(Reading::with)
                        .filter(name -> !name.isEmpty())
                        .distinct()
                        .toList());
        String verdict = now.outcome().words()
                + (now.condition().words().isEmpty()
                        ? ""
                        : ", " + now.condition().words());
        return new Row(
                readings.stream().map(Reading::entry).distinct().sorted().toList(),
                List.of(
                        Sentence.capital(dimension.name()),
                        value(dimension, before),
                        now.part().isEmpty() ? "the same part" : value(dimension, now) + ", '" + now.part() + "'",
                        dimension.expect().map(Expect::words).orElse("none in the book"),
                        verdict,
                        with));
    }

    private static String value(Dimension dimension, Verdict verdict) {
        return verdict.worst()
                .map((Figure worst) -> worst.doubtKnown()
                        ? dimension.unit().figure(worst.value(), worst.expanded())
                        : dimension.unit().figure(worst.value()))
                .orElse("not measured");
    }
}
