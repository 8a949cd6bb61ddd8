package gudgeon.rebuild.valvework;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.spring.FittedSpring;
import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.bore.Gauged;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is left between the coils of a valve spring at full lift. The book says which spring that is by a difference of three
 * dimensions: a fitted height, less a solid height, less a lift. What was not measured is taken from the book's range of a new part,
 * but the fitted height must have been read, as it is the one that work on seats changes.
 *
 * @param room the book's dimension of what is left
 * @param fitted the book's dimension of the fitted height
 * @param spring the sizes: the least fitted height, the largest solid height and lift
 * @param fromBook names of those that were taken from the book
 * @param number number of the entry that told the fitted height last
 */
public record SpringRoom(Dimension room, Dimension fitted, FittedSpring spring, List<String> fromBook, long number) {
    /** Room wanted where the book says none: common practice, no source. */
    static final double USUAL_ROOM_MM = 1.0;

    private static final String SOLID = "solid";
    private static final String LIFT = "lift";

    public SpringRoom {
        fromBook = List.copyOf(fromBook);
    }

    /** All springs whose fitted height was read, in the book's order. */
    public static List<SpringRoom> all(Build build) {
        List<SpringRoom> all = new ArrayList<>();
        for (Dimension dimension : build.structure().dimensions()) {
            dimensions(build.structure(), dimension)
                    .flatMap(three -> of(build, dimension, three))
                    .ifPresent(all::add);
        }
        return all;
    }

    private record Three(Dimension fitted, Dimension solid, Dimension lift) {}

    private static Optional<Three> dimensions(Structure structure, Dimension room) {
        List<Dimension> of = room.derived()
                .filter(derivation -> derivation.as() == Derivation.As.DIFFERENCE)
                .map(derivation -> derivation.of().stream()
                        .flatMap(id -> structure.dimension(id).stream())
                        .toList())
                .orElse(List.of());
        if (of.size() != 3) {
            return Optional.empty();
        }
        List<Dimension> less = of.subList(1, 3);
        return named(less, SOLID).flatMap(solid -> named(less, LIFT).map(lift -> new Three(of.get(0), solid, lift)));
    }

    private static Optional<Dimension> named(List<Dimension> dimensions, String word) {
        return dimensions.stream()
                .filter(dimension -> dimension.id().contains(word))
                .findFirst();
    }

    private static Optional<SpringRoom> of(Build build, Dimension room, Three three) {
        Comparator<Gauged> bySize =
                Comparator.comparingDouble(reading -> reading.size().value());
        List<Gauged> fitted = Gauged.last(build, three.fitted());
        List<String> fromBook = new ArrayList<>();
        Optional<Quantity> solid = largest(build, three.solid(), fromBook);
        Optional<Quantity> lift = largest(build, three.lift(), fromBook);
        return fitted.stream()
                .min(bySize)
                .flatMap(least -> solid.flatMap(closed -> lift.map(up -> new SpringRoom(
                        room,
                        three.fitted(),
                        new FittedSpring(least.size(), closed, up),
                        fromBook,
                        fitted.stream().mapToLong(Gauged::number).max().orElse(0)))));
    }

    private static Optional<Quantity> largest(Build build, Dimension dimension, List<String> fromBook) {
        Optional<Quantity> read = Gauged.last(build, dimension).stream()
                .map(Gauged::size)
                .max(Comparator.comparingDouble(Quantity::value));
        if (read.isPresent()) {
            return read;
        }
        Optional<Quantity> booked = dimension.standard().flatMap(SpringRoom::booked);
        booked.ifPresent(found -> fromBook.add(dimension.name()));
        return booked;
    }

    private static Optional<Quantity> booked(Expect span) {
        if (span.atMost().isEmpty()) {
            return Optional.empty();
        }
        double most = span.atMost().getAsDouble();
        double least = span.atLeast().orElse(most);
        return Optional.of(Quantity.stated((least + most) / 2, (most - least) / 2));
    }

    /** Room wanted at full lift, in mm. */
    public double wantedMm() {
        return room.expect()
                .or(room::standard)
                .map(Expect::atLeast)
                .filter(least -> least.isPresent())
                .map(least -> least.getAsDouble())
                .orElse(USUAL_ROOM_MM);
    }

    /** Whether less is left than wanted. */
    public boolean isShort() {
        return spring.marginMm().value() < wantedMm();
    }

    /** Whether the coils meet before full lift. */
    public boolean binds() {
        return spring.marginMm().value() <= 0;
    }

    /** What is left and of what, a sentence. */
    public String sentence() {
        Quantity margin = spring.marginMm();
        return String.format(
                Locale.ROOT,
                "Fitted height %.2f mm less solid height %.2f mm less lift %.2f mm leaves %.2f ± %.2f mm, where %.2f mm is wanted%s.",
                spring.heightMm().value(),
                spring.solidMm().value(),
                spring.liftMm().value(),
                margin.value(),
                2 * margin.standardUncertainty(),
                wantedMm(),
                fromBook.isEmpty() ? "" : "; not measured but from the book: " + String.join(", ", fromBook));
    }

    /** What may be added under the spring, or must come out, a sentence. */
    public String shims() {
        double most = spring.mostShimsMm(wantedMm());
        return most >= 0
                ? String.format(Locale.ROOT, "Up to %.2f mm of shims may go under it.", most)
                : String.format(
                        Locale.ROOT,
                        "Take out %.2f mm of shims, or have the seat, the collar or the spring put right by as much.",
                        -most);
    }
}
