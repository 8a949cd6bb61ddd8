package gudgeon.rebuild.build;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.CrankSizes;
import gudgeon.rebuild.book.Gasket;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Remeasured;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Telling;
import gudgeon.rebuild.journal.Way;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/** Lays the sizes of the parts at hand over the book's figures, part by part. */
final class Overlay {
    private static final String PISTONS = "pistons";
    private static final String GASKETS = "gaskets";
    private static final String BASE_GASKET = "base-gasket";
    private static final String CRANK_PROTRUSION = "crank.protrusion";
    private static final String PROTRUSION = "protrusion";
    private static final String PRESSED = "pressed";

    private final Build build;
    private final Map<String, Size> measured = new LinkedHashMap<>();
    private final List<Laid> laid = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    private Geometry geometry;
    private Optional<String> piston = Optional.empty();
    private Optional<String> gasket = Optional.empty();
    private boolean turned;
    /** How far another base gasket sets the barrel higher; nothing where it is the book's. */
    private Optional<Quantity> raised = Optional.empty();

    Overlay(Build build, Geometry booked) {
        this.build = build;
        this.geometry = booked;
    }

    AsMeasured with(Predicate<String> counts) {
        for (Position position : build.structure().positions()) {
            if (!position.sizes().isEmpty() && counts.test(position.id())) {
                build.partFor(position.id()).ifPresent(part -> lay(position, part));
            }
        }
        geometry = geometry.each(size -> measured.getOrDefault(size.path(), moved(size)));
        return new AsMeasured(
                geometry, new Choice(piston, gasket, 0, OptionalDouble.empty(), turned, Map.of()), laid, unread);
    }

    private void lay(Position position, Part part) {
        switch (position.sizes()) {
            case PISTONS -> {
                turned = build.place(position.id()).way() == Way.TURNED;
                piston = Optional.of(pistonFor(part));
                over(position, part, PISTONS + "." + piston.get());
            }
            case GASKETS -> {
                gasket = Optional.of(gasketFor(part));
                over(position, part, GASKETS + "." + gasket.get());
            }
            case BASE_GASKET -> baseGasket(position, part);
            default -> over(position, part, position.sizes());
        }
    }

    /** The piston's id: the book's first for the one that came off, else the part's name, copied from the first if need be. */
    private String pistonFor(Part part) {
        PistonEntry first = geometry.pistons().get(0);
        if (part.name().isEmpty()) {
            return first.id();
        }
        if (geometry.piston(part.name()).isEmpty()) {
            // a protrusion stated for the first piston was measured with that one
            CrankSizes crank = geometry.crank();
            Optional<Size> protrusion =
                    crank.protrusion().or(() -> first.protrusion().map(size -> size.renamed(CRANK_PROTRUSION)));
            PistonEntry copy = copied(first, part, protrusion);
            List<PistonEntry> pistons = new ArrayList<>(geometry.pistons());
            pistons.add(copy);
            CrankSizes with =
                    new CrankSizes(crank.stroke(), crank.rod(), crank.pinOffset(), protrusion, crank.deckHeight());
            geometry = new Geometry(
                    geometry.engine(),
                    geometry.instruments(),
                    geometry.cylinder(),
                    with,
                    geometry.head(),
                    geometry.gaskets(),
                    geometry.cam(),
                    geometry.valves(),
                    pistons,
                    geometry.wanted());
        }
        return part.name();
    }

    private static PistonEntry copied(PistonEntry first, Part part, Optional<Size> protrusion) {
        PistonEntry renamed = first.each(size -> renamed(size, PISTONS, first.id(), part.name()));
        return new PistonEntry(
                part.name(),
                from(part.origin()),
                "",
                renamed.crown(),
                renamed.land(),
                renamed.compressionHeight(),
                protrusion
                        .filter(size -> part.sizes().containsKey(PROTRUSION))
                        .map(size -> size.renamed(PISTONS + "." + part.name() + "." + PROTRUSION)),
                renamed.groove(),
                renamed.crownThickness(),
                renamed.pockets());
    }

    private static Size renamed(Size size, String list, String from, String to) {
        return size.renamed(list + "." + to + size.path().substring(list.length() + 1 + from.length()));
    }

    private static PistonEntry.From from(Optional<Origin> origin) {
        return switch (origin.orElse(Origin.ORIGINAL)) {
            case ORIGINAL -> PistonEntry.From.ORIGINAL;
            case PATTERN -> PistonEntry.From.PATTERN;
            case USED -> PistonEntry.From.USED;
            case MADE -> PistonEntry.From.MADE;
        };
    }

    private String gasketFor(Part part) {
        Gasket first = geometry.gaskets().get(0);
        if (part.name().isEmpty()) {
            return first.id();
        }
        if (geometry.gasket(part.name()).isEmpty()) {
            List<Gasket> gaskets = new ArrayList<>(geometry.gaskets());
            gaskets.add(new Gasket(
                    part.name(),
                    renamed(first.pressed(), GASKETS, first.id(), part.name()),
                    renamed(first.bore(), GASKETS, first.id(), part.name())));
            geometry = new Geometry(
                    geometry.engine(),
                    geometry.instruments(),
                    geometry.cylinder(),
                    geometry.crank(),
                    geometry.head(),
                    gaskets,
                    geometry.cam(),
                    geometry.valves(),
                    geometry.pistons(),
                    geometry.wanted());
        }
        return part.name();
    }

    private void over(Position position, Part part, String prefix) {
        Map<String, Size> booked = geometry.sizes();
        Set<String> paths = new HashSet<>();
        part.sizes().forEach((key, text) -> {
            String path = path(prefix, key, booked);
            Size size = booked.get(path);
            if (size == null) {
                hasNone(position, key, "the book's figures have no such size");
            } else {
                read(position, key, text, size).ifPresent(found -> {
                    measured.put(path, found);
                    paths.add(path);
                });
            }
        });
        new ReadSizes(build, position, part).byKey().forEach((key, size) -> {
            String path = path(prefix, key, booked);
            if (booked.containsKey(path)) {
                measured.put(path, size.renamed(path));
                paths.add(path);
            }
        });
        if (!part.name().isEmpty() || !paths.isEmpty()) {
            Set<String> others = new HashSet<>(booked.keySet());
            others.removeIf(path -> !path.startsWith(prefix + ".") || paths.contains(path));
            laid.add(new Laid(position, part.name(), paths, others));
        }
    }

    /** How high the piston that came off stands at top dead centre is a size of the crank in the book. */
    private static String path(String prefix, String key, Map<String, Size> booked) {
        String path = prefix + "." + key;
        return key.equals(PROTRUSION) && !booked.containsKey(path) ? CRANK_PROTRUSION : path;
    }

    private Optional<Size> read(Position position, String key, String text, Size booked) {
        Remeasured read = Remeasured.of(booked, text, geometry.instruments());
        if (read instanceof Remeasured.Refused refused) {
            refuse(position, key, refused.sentence());
            return Optional.empty();
        }
        return Optional.of(((Remeasured.Read) read).size());
    }

    private void refuse(Position position, String key, String why) {
        unread.add(new Unread(
                position.id(), uncounted(position, key) + Sentence.ended(why) + " Correct the entry.", true));
    }

    private void hasNone(Position position, String key, String why) {
        unread.add(new Unread(position.id(), uncounted(position, key) + why + ".", false));
    }

    private static String uncounted(Position position, String key) {
        return "The " + Telling.sizeName(key) + " measured on the " + position.name() + " does not count: ";
    }

    private void baseGasket(Position position, Part part) {
        Optional<Size> byReading =
                Optional.ofNullable(new ReadSizes(build, position, part).byKey().get(PRESSED));
        String text = part.sizes().get(PRESSED);
        if (text == null && byReading.isEmpty()) {
            return;
        }
        if (position.pressed().isEmpty()) {
            hasNone(position, PRESSED, "the book does not say how thick the one is that its figures were taken with");
            return;
        }
        Size booked = position.pressed().get();
        byReading
                .or(() -> text == null ? Optional.empty() : read(position, PRESSED, text, booked))
                .ifPresent(found -> {
                    raised = Optional.of(found.quantity().minus(booked.quantity()));
                    laid.add(new Laid(position, part.name(), Set.of(booked.path()), Set.of()));
                });
    }

    /** A size of the book as another base gasket moves it. */
    private Size moved(Size size) {
        if (raised.isEmpty()) {
            return size;
        }
        String path = size.path();
        if (path.equals(CRANK_PROTRUSION) || (path.startsWith(PISTONS + ".") && path.endsWith("." + PROTRUSION))) {
            return size.as(size.quantity().minus(raised.get()));
        }
        return path.equals("crank.deck-height.barrel") ? size.as(size.quantity().plus(raised.get())) : size;
    }
}
