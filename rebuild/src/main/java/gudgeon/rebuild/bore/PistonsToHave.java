package gudgeon.rebuild.bore;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The pistons that a build could have: in hand, ordered, offered, and those that the book says are made. */
public final class PistonsToHave {
    private final Build build;
    private final BoreDimensions dimensions;

    PistonsToHave(Build build, BoreDimensions dimensions) {
        this.build = build;
        this.dimensions = dimensions;
    }

    /**
     * A piston in hand, other than the one that came off.
     *
     * @param part its name
     * @param skirt the largest size of its skirt, once it is measured
     */
    public record InHand(String part, Optional<Quantity> skirt) {}

    /** The piston in hand that counts: the last entered that can still be used. */
    public static Optional<InHand> inHand(Build build, BoreDimensions dimensions) {
        List<Part> usable = build.parts(dimensions.piston().id()).stream()
                .filter(part -> !part.spent() && part.count() > 0)
                .toList();
        if (usable.isEmpty()) {
            return Optional.empty();
        }
        String name = usable.get(usable.size() - 1).name();
        return Optional.of(new InHand(
                name,
                Gauged.all(build, dimensions.skirt(), name).stream()
                        .map(Gauged::size)
                        .max(Comparator.comparingDouble(Quantity::value))));
    }

    /** The skirt that an order or an offer states, in mm. */
    public static OptionalDouble stated(BoreDimensions dimensions, Map<String, String> sizes) {
        String written = sizes.get(dimensions.skirt().id());
        return written == null ? OptionalDouble.empty() : Gauged.value(written, Unit.MM);
    }

    /** Each with the least bore that it asks for: pistons in hand first, then ordered, offered, and the book's oversizes. */
    List<Oversize> against(FoundBore found, Optional<Expect> clearance) {
        List<Oversize> all = new ArrayList<>();
        clearance.map(span -> span.atLeast().orElseThrow()).ifPresent(least -> {
            inHand(build, dimensions)
                    .ifPresent(piston -> piston.skirt()
                            .ifPresent(skirt ->
                                    all.add(row("'" + piston.part() + "', in hand", skirt.value() + least, found))));
            for (Told<Ordered> told :
                    build.told(Ordered.class, dimensions.piston().id())) {
                stated(dimensions, told.fact().sizes())
                        .ifPresent(skirt -> all.add(row(named(told.fact().part()) + "ordered", skirt + least, found)));
            }
            for (Told<Offered> told :
                    build.told(Offered.class, dimensions.piston().id())) {
                stated(dimensions, told.fact().sizes())
                        .ifPresent(skirt -> all.add(row(
                                named(told.fact().part()) + "offered by "
                                        + told.fact().from(),
                                skirt + least,
                                found)));
            }
        });
        all.addAll(booked(found));
        return all;
    }

    private List<Oversize> booked(FoundBore found) {
        OptionalDouble standard =
                dimensions.bore().standard().map(Expect::atLeast).orElse(OptionalDouble.empty());
        if (standard.isEmpty()) {
            return List.of();
        }
        return dimensions.piston().oversizes().stream()
                .filter(over -> over > found.overMm())
                .sorted()
                .map(over -> row(String.format(Locale.ROOT, "+%.2f mm", over), standard.getAsDouble() + over, found))
                .toList();
    }

    private static Oversize row(String name, double finishedMm, FoundBore found) {
        return Oversize.of(name, finishedMm, found.leastBore());
    }

    private static String named(String part) {
        return part.isEmpty() ? "" : "'" + part + "', ";
    }
}
