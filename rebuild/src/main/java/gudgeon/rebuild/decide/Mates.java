package gudgeon.rebuild.decide;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Expanded;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Mate.Goes;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Works out whether an option's parts go with those they touch: every clearance and difference that has an end in one of them. */
final class Mates {
    private final Structure structure;
    private final Applied applied;
    private final SizesNow now;

    Mates(Build build, Applied applied) {
        this.structure = build.structure();
        this.applied = applied;
        this.now = new SizesNow(build);
    }

    List<Mate> all() {
        return structure.dimensions().stream()
                .filter(this::isTouched)
                .map(this::mate)
                .toList();
    }

    private boolean isTouched(Dimension dimension) {
        return dimension.derived().filter(Mates::isOfSeveral).stream()
                .flatMap(derived -> ends(derived).stream())
                .anyMatch(end -> applied.size(end).isPresent()
                        || applied.line(end.of()).filter(Applied::isNew).isPresent());
    }

    private static boolean isOfSeveral(Derivation derived) {
        return derived.as() == Derivation.As.CLEARANCE || derived.as() == Derivation.As.DIFFERENCE;
    }

    private List<Dimension> ends(Derivation derived) {
        return derived.of().stream()
                .flatMap(id -> structure.dimension(id).stream())
                .toList();
    }

    private Mate mate(Dimension dimension) {
        List<String> unknown = new ArrayList<>();
        Optional<Extent> difference = Optional.empty();
        for (Dimension end : ends(dimension.derived().orElseThrow())) {
            Optional<Extent> size = size(end);
            if (size.isEmpty()) {
                unknown.add(end.name());
            } else {
                Extent known = size.get();
                difference =
                        Optional.of(difference.map(first -> first.minus(known)).orElse(known));
            }
        }
        return unknown.isEmpty() && difference.isPresent()
                ? judged(dimension, difference.get())
                : new Mate(
                        dimension.id(),
                        dimension.name(),
                        "",
                        Goes.NOT_KNOWN,
                        Sentence.capital(dimension.name()) + " can't be told: measure or ask for "
                                + Sentence.list(unknown) + " before money is spent.");
    }

    /** A size as the option makes it; of a new part of which nothing is said, as the book has it new; else as it is now. */
    private Optional<Extent> size(Dimension end) {
        Optional<String> written = applied.size(end);
        if (written.isPresent()) {
            return TypedSize.of(end.unit(), written.get(), 1) instanceof TypedSize.Read read
                    ? Optional.of(Extent.of(Quantity.exact(read.value())))
                    : Optional.empty();
        }
        return applied.line(end.of()).filter(Applied::isNew).isPresent() ? SizesNow.asNew(end) : now.size(end);
    }

    private Mate judged(Dimension dimension, Extent value) {
        Optional<Expect> limits = dimension.expect().or(dimension::standard);
        String words = words(value, dimension.unit());
        Goes goes = limits.map(known -> goes(value, interval(dimension, known))).orElse(Goes.NO_LIMITS);
        String would = Sentence.capital(dimension.name()) + " would be " + words
                + limits.map(known -> ", wanted is " + known.words()).orElse("");
        String sentence = switch (goes) {
            case NOT_TOGETHER -> would + ": " + change(dimension);
            case UNPROVEN ->
                would + ": these sizes do not prove it. Measure the parts themselves before money is spent.";
            case NO_LIMITS -> would + "; the book has no limits for it.";
            default -> would + ".";
        };
        return new Mate(dimension.id(), dimension.name(), words, goes, sentence);
    }

    private static String words(Extent value, Unit unit) {
        Expect writer = new Expect(OptionalDouble.empty(), OptionalDouble.empty(), unit);
        double least = value.least().value();
        double greatest = value.greatest().value();
        double expanded = Expanded.of(
                        value.least().standardUncertainty() > value.greatest().standardUncertainty()
                                ? value.least()
                                : value.greatest())
                .halfWidth();
        return writer.figure(least)
                + (greatest > least ? " to " + writer.figure(greatest) : "")
                + (expanded > 0 ? " ± " + writer.figure(expanded) : "");
    }

    /** Out if either end is proved out; in if both are proved in. */
    private static Goes goes(Extent value, ToleranceInterval limits) {
        Zone least = Conformity.of(value.least(), limits).zone();
        Zone greatest = Conformity.of(value.greatest(), limits).zone();
        if (least == Zone.OUT || greatest == Zone.OUT) {
            return Goes.NOT_TOGETHER;
        }
        return least == Zone.IN && greatest == Zone.IN ? Goes.TOGETHER : Goes.UNPROVEN;
    }

    /**
     * The limits asked for. Where wear alone is limited, the least is that of new parts; and a part that shall run in a hole does not
     * go into one that is smaller.
     */
    private static ToleranceInterval interval(Dimension dimension, Expect limits) {
        double most = limits.atMost().orElse(Double.POSITIVE_INFINITY);
        boolean runs = dimension.derived().filter(Mates::isClearance).isPresent() && most > 0;
        double least = Stream.of(Optional.of(limits), dimension.standard())
                .flatMap(Optional::stream)
                .map(Expect::atLeast)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .filter(one -> one <= most)
                .findFirst()
                .orElse(runs ? 0 : Double.NEGATIVE_INFINITY);
        return new ToleranceInterval(least, most);
    }

    private static boolean isClearance(Derivation derived) {
        return derived.as() == Derivation.As.CLEARANCE;
    }

    /** What else must change so that the option's parts go in. */
    private String change(Dimension dimension) {
        List<String> others = ends(dimension.derived().orElseThrow()).stream()
                .map(Dimension::of)
                .filter(position -> applied.line(position).isEmpty())
                .distinct()
                .map(structure::name)
                .toList();
        return others.isEmpty()
                ? "these parts of the option do not go with each other."
                : Sentence.list(others) + " would have to be changed or worked on as well.";
    }
}
