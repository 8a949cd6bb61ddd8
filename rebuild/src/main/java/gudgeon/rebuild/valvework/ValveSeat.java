package gudgeon.rebuild.valvework;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.seat.SeatCuts;
import gudgeon.mechanics.seat.SmallHead;
import gudgeon.mechanics.seat.ValveFace;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.bore.Gauged;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A valve and its seat as they were measured last. The book knows a valve by a position whose id ends with {@code -valve}, and its
 * dimensions by the same beginning: {@code exhaust-seat-width}, {@code exhaust-stem-height}, {@code exhaust-head}, and, where it has
 * them, {@code exhaust-seat-outside}, {@code exhaust-face-width} and {@code exhaust-throat}.
 *
 * @param valve the valve's position
 * @param width the seat's dimension
 * @param widest its largest width, in mm
 * @param sunkMm how far the valve has sunk into the head since it was new or, without the book's word, since it was measured first
 * @param mayRiseMm how much further the stem may rise, by the book's service limit
 * @param headMm least diameter of the valve's head
 * @param roomMm widest seat that the head leaves room for over the throat, where the book has a dimension for that
 * @param landing where the seat lands on the valve's face
 */
public record ValveSeat(
        Position valve,
        Dimension width,
        Optional<Quantity> widest,
        Optional<Quantity> sunkMm,
        Optional<Double> mayRiseMm,
        Optional<Quantity> headMm,
        Optional<Double> roomMm,
        Optional<ValveFace.Landing> landing) {
    /** The seat and the cuts beside it, in degrees, that small engines have as a rule: common practice, no source. */
    static final double SEAT_DEG = 45;

    static final double TOP_DEG = 30;
    static final double THROAT_DEG = 60;
    /** Face left bare outside a seat and metal left inside it: common practice, no source. The width does not matter here. */
    private static final SmallHead AROUND = new SmallHead(1, SEAT_DEG, 0.3, 0.3);

    private static final String VALVE = "-valve";
    private static final Comparator<Gauged> BY_SIZE =
            Comparator.comparingDouble(reading -> reading.size().value());

    /** Every valve whose seat the book has a width for, in the book's order. */
    public static List<ValveSeat> all(Build build) {
        return build.structure().positions().stream()
                .filter(position -> position.id().endsWith(VALVE))
                .flatMap(valve -> named(build, valve, "seat-width").map(width -> of(build, valve, width)).stream())
                .toList();
    }

    private static ValveSeat of(Build build, Position valve, Dimension width) {
        Optional<Dimension> stem = named(build, valve, "stem-height");
        Optional<Gauged> risen = stem.flatMap(dimension -> largest(build, dimension));
        return new ValveSeat(
                valve,
                width,
                largest(build, width).map(Gauged::size),
                stem.flatMap(dimension -> risen.flatMap(now -> sunk(build, dimension, now))),
                stem.flatMap(dimension -> dimension
                        .expect()
                        .map(Expect::atMost)
                        .filter(most -> most.isPresent())
                        .flatMap(most ->
                                risen.map(now -> most.getAsDouble() - now.size().value()))),
                named(build, valve, "head")
                        .flatMap(head -> Gauged.last(build, head).stream().min(BY_SIZE))
                        .map(Gauged::size),
                room(build, valve),
                landing(build, valve));
    }

    private static Optional<Dimension> named(Build build, Position valve, String what) {
        String of = valve.id().substring(0, valve.id().length() - VALVE.length());
        return build.structure().dimension(of + "-" + what);
    }

    private static Optional<Gauged> largest(Build build, Dimension dimension) {
        return Gauged.last(build, dimension).stream().max(BY_SIZE);
    }

    /** Against the middle of the book's range when new, else against the first reading. */
    private static Optional<Quantity> sunk(Build build, Dimension stem, Gauged now) {
        Optional<Quantity> whenNew = stem.standard()
                .filter(span -> span.atLeast().isPresent() && span.atMost().isPresent())
                .map(span -> middle(span.atLeast().getAsDouble(), span.atMost().getAsDouble()));
        return whenNew.or(() -> Gauged.first(build, stem).stream()
                        .max(BY_SIZE)
                        .filter(first -> first.number() != now.number())
                        .map(Gauged::size))
                .map(before -> now.size().minus(before));
    }

    private static Quantity middle(double least, double most) {
        return Quantity.stated((least + most) / 2, (most - least) / 2);
    }

    private static Optional<Double> room(Build build, Position valve) {
        return value(build, valve, "throat")
                .flatMap(throat -> value(build, valve, "head").map(head -> AROUND.widestSeatMm(head, throat)));
    }

    private static Optional<ValveFace.Landing> landing(Build build, Position valve) {
        Optional<Double> outside = value(build, valve, "seat-outside");
        Optional<Double> head = value(build, valve, "head");
        Optional<Double> face = value(build, valve, "face-width");
        Optional<Double> width = value(build, valve, "seat-width");
        if (outside.isEmpty() || head.isEmpty() || face.isEmpty() || width.isEmpty()) {
            return Optional.empty();
        }
        try {
            double across = 2 * width.get() * Math.cos(Math.toRadians(SEAT_DEG));
            SeatCuts seat = new SeatCuts(outside.get() - across, outside.get(), TOP_DEG, SEAT_DEG, THROAT_DEG);
            return Optional.of(new ValveFace(head.get(), face.get(), SEAT_DEG).landing(seat));
        } catch (IllegalArgumentException contradictory) {
            return Optional.empty();
        }
    }

    private static Optional<Double> value(Build build, Position valve, String what) {
        return named(build, valve, what)
                .flatMap(dimension -> largest(build, dimension))
                .map(found -> found.size().value());
    }

    /** Whether anything measured says that the seat needs work: too wide, too narrow, sunk too far or off the face. */
    public boolean needsWork() {
        boolean outOfWidth = widest.isPresent()
                && width.expect()
                        .filter(limits -> !limits.holds(widest.get().value()))
                        .isPresent();
        boolean off = landing.filter(found -> found.outerMm() < 0 || found.innerMm() < 0)
                .isPresent();
        return outOfWidth
                || off
                || isTooSmall()
                || mayRiseMm.filter(left -> left < 0).isPresent();
    }

    /** Whether the head is too small for the least seat that the book has. */
    public boolean isTooSmall() {
        return roomMm.filter(room -> width.expect()
                        .filter(limits -> limits.atLeast().isPresent()
                                && room < limits.atLeast().getAsDouble())
                        .isPresent())
                .isPresent();
    }

    /** What was found and what it means for the spring and the clearance, sentences; none of what was not measured. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        widest.ifPresent(found -> all.add(width(found)));
        sunkMm.ifPresent(found -> all.add(String.format(
                Locale.ROOT,
                "The %s has sunk %.2f ± %.2f mm into the head: the spring's fitted height has grown and the valve clearance has closed by about as much.",
                valve.name(),
                found.value(),
                2 * found.standardUncertainty())));
        mayRiseMm.ifPresent(left -> all.add(
                left >= 0
                        ? String.format(Locale.ROOT, "By the book's limit it may sink %.2f mm more.", left)
                        : String.format(Locale.ROOT, "That is %.2f mm more than the book's limit allows.", -left)));
        roomMm.ifPresent(room -> all.add(String.format(
                Locale.ROOT,
                "Over its throat the head of the %s leaves room for a seat %.2f mm wide%s.",
                valve.name(),
                Math.max(0, room),
                isTooSmall() ? ", which is less than the book's least" : "")));
        landing.ifPresent(found -> all.add(landed(found)));
        return all;
    }

    private String width(Quantity found) {
        String limits = width.expect()
                .map(span -> (span.holds(found.value()) ? ", within " : ", outside ") + span.words())
                .orElse(", no limits in the book");
        return String.format(Locale.ROOT, "The %s is %.2f mm%s.", width.name(), found.value(), limits);
    }

    private String landed(ValveFace.Landing found) {
        if (found.outerMm() < 0) {
            return "The seat reaches past the edge of the " + valve.name()
                    + ": bring its outer edge in with the flat cutter.";
        }
        if (found.innerMm() < 0) {
            return "The seat reaches past the inner edge of the face of the " + valve.name()
                    + ": open its inner edge with the steep cutter.";
        }
        return String.format(
                Locale.ROOT,
                "It lands %.2f mm from the outer and %.2f mm from the inner edge of the valve's face.",
                found.outerMm(),
                found.innerMm());
    }
}
