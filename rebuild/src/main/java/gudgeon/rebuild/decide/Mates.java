package gudgeon.rebuild.decide;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.decide.Mate.Goes;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
        Optional<Quantity> difference = Optional.empty();
        for (Dimension end : ends(dimension.derived().orElseThrow())) {
            Optional<Quantity> size = size(end);
            if (size.isEmpty()) {
                unknown.add(end.name() + " (" + structure.name(end.of()) + ")");
            } else {
                Quantity known = size.get();
                difference =
                        Optional.of(difference.map(first -> first.minus(known)).orElse(known));
            }
        }
        if (!unknown.isEmpty() || difference.isEmpty()) {
            return new Mate(
                    dimension.id(),
                    dimension.name(),
                    "",
                    Goes.NOT_KNOWN,
                    Sentence.capital(dimension.name()) + " can't be told: measure or ask for " + Sentence.list(unknown)
                            + " before money is spent.");
        }
        return judged(dimension, difference.get());
    }

    /** A size as the option makes it; of a new part of which nothing is said, as the book has it new; else as it is now. */
    private Optional<Quantity> size(Dimension end) {
        Optional<String> written = applied.size(end);
        if (written.isPresent()) {
            return TypedSize.of(end.unit(), written.get(), 1) instanceof TypedSize.Read read
                    ? Optional.of(Quantity.exact(read.value()))
                    : Optional.empty();
        }
        return applied.line(end.of()).filter(Applied::isNew).isPresent() ? asNew(end) : now.size(end);
    }

    static Optional<Quantity> asNew(Dimension dimension) {
        return dimension.standard().flatMap(range -> {
            if (range.atLeast().isEmpty() || range.atMost().isEmpty()) {
                return Optional.empty();
            }
            double least = range.atLeast().getAsDouble();
            double most = range.atMost().getAsDouble();
            return Optional.of(Quantity.of((least + most) / 2, Doubt.stated(Math.abs(most - least) / 2)));
        });
    }

    private Mate judged(Dimension dimension, Quantity value) {
        double expanded = 2 * value.standardUncertainty();
        Expect shown = dimension
                .expect()
                .or(dimension::standard)
                .orElse(new Expect(
                        java.util.OptionalDouble.empty(), java.util.OptionalDouble.empty(), dimension.unit()));
        String words = shown.figure(value.value()) + (expanded > 0 ? " ± " + shown.figure(expanded) : "");
        Optional<Expect> limits = dimension.expect().or(dimension::standard);
        if (limits.isEmpty()) {
            return new Mate(
                    dimension.id(),
                    dimension.name(),
                    words,
                    Goes.NO_LIMITS,
                    Sentence.capital(dimension.name()) + " would be " + words + "; the book has no limits for it.");
        }
        Expect asked = limits.get();
        Goes goes = switch (Conformity.of(value, interval(asked)).zone()) {
            case IN -> Goes.TOGETHER;
            case OUT -> Goes.NOT_TOGETHER;
            case UNPROVEN -> Goes.UNPROVEN;
        };
        return new Mate(dimension.id(), dimension.name(), words, goes, sentence(dimension, words, asked, goes));
    }

    private static ToleranceInterval interval(Expect limits) {
        return new ToleranceInterval(
                limits.atLeast().orElse(Double.NEGATIVE_INFINITY),
                limits.atMost().orElse(Double.POSITIVE_INFINITY));
    }

    private String sentence(Dimension dimension, String words, Expect limits, Goes goes) {
        String would = Sentence.capital(dimension.name()) + " would be " + words + ", wanted is " + limits.words();
        return switch (goes) {
            case NOT_TOGETHER -> would + ": " + change(dimension);
            case UNPROVEN -> would + ": not proven by these sizes. Measure the parts themselves before money is spent.";
            default -> would + ".";
        };
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
