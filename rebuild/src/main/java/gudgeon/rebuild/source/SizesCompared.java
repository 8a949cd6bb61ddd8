package gudgeon.rebuild.source;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.PartSize;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.measure.Evaluated;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.source.SizeCompared.Agrees;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Lays the sizes of a part that came beside what they should be. */
final class SizesCompared {
    private final Build build;
    private final Part part;
    private final Map<String, String> ordered;
    private final Map<String, String> old;

    SizesCompared(Build build, Position position, Part part) {
        this.build = build;
        this.part = part;
        this.ordered = build.told(Ordered.class, position.id()).stream()
                .map(Told::fact)
                .filter(order -> order.part().isEmpty() || order.part().equals(part.name()))
                .max(Comparator.comparing(order -> order.part().equals(part.name())))
                .map(Ordered::sizes)
                .orElse(Map.of());
        this.old = build.part(position.id(), "").map(Part::sizes).orElse(Map.of());
    }

    /** One of the book's dimensions, read on the part. */
    SizeCompared of(Dimension dimension) {
        Evaluated read = Evaluated.of(build, dimension, part.name());
        String asked = ordered.getOrDefault(dimension.id(), "");
        String told = dimension.key().isEmpty() ? "" : part.sizes().getOrDefault(dimension.key(), "");
        String found = read.isEmpty() ? told : span(dimension, read);
        List<Verdict> mates = read.isEmpty() ? List.of() : mates(dimension);
        Agrees agrees = read.isEmpty()
                ? byWord(dimension, told, asked)
                : worse(worse(byVerdict(Verdict.of(read)), byOrder(dimension, read, asked)), byMates(mates));
        List<String> said = mates.stream().map(SizesCompared::sentence).toList();
        return new SizeCompared(
                dimension.id(),
                dimension.name(),
                oldOf(dimension),
                booked(dimension),
                asked,
                found,
                said,
                agrees,
                sentence(dimension.name(), found, asked.isEmpty() ? booked(dimension) : asked, agrees));
    }

    /** A size that only the book's figures have. */
    SizeCompared of(PartSize size) {
        String found = part.sizes().getOrDefault(size.key(), "");
        Agrees agrees =
                found.isEmpty() ? Agrees.NOT_MEASURED : part.agrees() ? Agrees.NOTHING_TO_COMPARE : Agrees.UNPROVEN;
        return new SizeCompared(
                size.key(),
                size.label(),
                old.getOrDefault(size.key(), ""),
                size.booked(),
                "",
                found,
                List.of(),
                agrees,
                sentence(size.label(), found, size.booked(), agrees));
    }

    private String oldOf(Dimension dimension) {
        Evaluated read = Evaluated.of(build, dimension, "");
        return read.isEmpty() ? old.getOrDefault(dimension.key(), "") : span(dimension, read);
    }

    private static String booked(Dimension dimension) {
        return dimension.standard().or(dimension::expect).map(Expect::words).orElse("");
    }

    /** From the least to the greatest of what was read. */
    private static String span(Dimension dimension, Evaluated read) {
        double least = read.figures().stream().mapToDouble(Figure::value).min().orElse(Double.NaN);
        double most = read.figures().stream().mapToDouble(Figure::value).max().orElse(Double.NaN);
        String first = figure(dimension, least);
        String last = figure(dimension, most);
        return first.equals(last) ? first : first + " to " + last;
    }

    private static String figure(Dimension dimension, double value) {
        return new Expect(OptionalDouble.empty(), OptionalDouble.empty(), dimension.unit()).figure(value);
    }

    /** What was said of a size without a reading that has an instrument: it can be compared, and proves nothing. */
    private static Agrees byWord(Dimension dimension, String told, String asked) {
        if (told.isEmpty()) {
            return Agrees.NOT_MEASURED;
        }
        Optional<Double> value = value(dimension, told);
        Optional<Expect> limits = dimension.expect().or(dimension::standard);
        if (value.isEmpty()) {
            return Agrees.NOT_MEASURED;
        }
        if (limits.isEmpty()) {
            return asked.isEmpty() ? Agrees.NOTHING_TO_COMPARE : Agrees.UNPROVEN;
        }
        return limits.get().holds(value.get()) ? Agrees.YES : Agrees.NO;
    }

    private static Agrees byVerdict(Verdict verdict) {
        return switch (verdict.outcome()) {
            case IN_LIMITS -> Agrees.YES;
            case OUT_OF_LIMITS -> Agrees.NO;
            case UNPROVEN -> Agrees.UNPROVEN;
            case NO_LIMITS -> Agrees.NOTHING_TO_COMPARE;
            case NOT_MEASURED -> Agrees.NOT_MEASURED;
        };
    }

    /** Whether what came is what was ordered, as far as the order's last digit and the readings' doubt tell. */
    private static Agrees byOrder(Dimension dimension, Evaluated read, String asked) {
        return value(dimension, asked)
                .map(wanted -> read.figures().stream()
                        .allMatch(figure -> Math.abs(figure.value() - wanted)
                                <= figure.expanded() + AsWritten.halfLastDigit(dimension, asked)))
                .map(all -> all ? Agrees.YES : Agrees.NO)
                .orElse(Agrees.NOTHING_TO_COMPARE);
    }

    private static Agrees byMates(List<Verdict> mates) {
        return mates.stream()
                .map(SizesCompared::byVerdict)
                .filter(agrees -> agrees != Agrees.NOT_MEASURED)
                .reduce(Agrees.NOTHING_TO_COMPARE, SizesCompared::worse);
    }

    /** Disagreement outweighs doubt, doubt agreement, and anything a want of limits. */
    private static Agrees worse(Agrees one, Agrees other) {
        List<Agrees> order =
                List.of(Agrees.NO, Agrees.UNPROVEN, Agrees.YES, Agrees.NOTHING_TO_COMPARE, Agrees.NOT_MEASURED);
        return order.indexOf(one) <= order.indexOf(other) ? one : other;
    }

    /** Clearances and differences that this size has an end in, with the part in question on its side. */
    private List<Verdict> mates(Dimension end) {
        List<Verdict> mates = new ArrayList<>();
        for (Dimension dimension : build.structure().dimensions()) {
            boolean touches = dimension
                    .derived()
                    .filter(derived ->
                            derived.as() == Derivation.As.CLEARANCE || derived.as() == Derivation.As.DIFFERENCE)
                    .filter(derived -> derived.of().contains(end.id()))
                    .isPresent();
            if (touches && counts(end.of())) {
                Verdict verdict = Verdict.of(build, dimension);
                if (verdict.outcome() != Outcome.NOT_MEASURED) {
                    mates.add(verdict);
                }
            }
        }
        return mates;
    }

    private boolean counts(String position) {
        return build.partFor(position)
                .map(Part::name)
                .filter(part.name()::equals)
                .isPresent();
    }

    private static String sentence(Verdict verdict) {
        Dimension dimension = verdict.dimension();
        return Sentence.capital(dimension.name()) + ": "
                + verdict.worst().map(worst -> figure(dimension, worst.value())).orElse("not known")
                + dimension.expect().map(limits -> ", wanted " + limits.words()).orElse("") + ", "
                + verdict.outcome().words() + ".";
    }

    private static String sentence(String label, String found, String wanted, Agrees agrees) {
        String should = wanted.isEmpty() ? "" : ", wanted " + wanted;
        return Sentence.capital(label) + ": " + (found.isEmpty() ? "not measured" : "found " + found) + should + "; "
                + agrees.words() + ".";
    }

    private static Optional<Double> value(Dimension dimension, String written) {
        return !written.isBlank() && TypedSize.of(dimension.unit(), written, 1) instanceof TypedSize.Read read
                ? Optional.of(read.value())
                : Optional.empty();
    }
}
