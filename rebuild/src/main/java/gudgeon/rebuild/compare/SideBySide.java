package gudgeon.rebuild.compare;

import gudgeon.rebuild.book.CrownEntry;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.PocketEntry;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Puts two pistons side by side, size by size. */
final class SideBySide {
    private static final String HEIGHT = "compression-height";
    private static final String PROTRUSION = "protrusion";

    private final Geometry book;
    private final PistonEntry a;
    private final PistonEntry b;
    private final Effects effects;
    private final LengthUnit unit;

    SideBySide(Geometry book, PistonEntry a, PistonEntry b, Effects effects, LengthUnit unit) {
        this.book = book;
        this.a = a;
        this.b = b;
        this.effects = effects;
        this.unit = unit;
    }

    List<Compared> lines() {
        List<Compared> lines = new ArrayList<>();
        lines.add(crownHeight());
        if (!a.crown().getClass().equals(b.crown().getClass())) {
            lines.add(whole("crown", "crown form", form(a), form(b), crownOfB()));
        }
        pocketsOfOne(lines);
        Map<String, Size> ofA = sizes(a);
        Map<String, Size> ofB = sizes(b);
        Set<String> keys = new LinkedHashSet<>(ofA.keySet());
        keys.addAll(ofB.keySet());
        keys.remove(PROTRUSION);
        for (String key : keys) {
            lines.add(sized(key, Optional.ofNullable(ofA.get(key)), Optional.ofNullable(ofB.get(key))));
        }
        return lines;
    }

    /** A piston's sizes by their path within it. */
    private static Map<String, Size> sizes(PistonEntry piston) {
        int prefix = ("pistons." + piston.id() + ".").length();
        Map<String, Size> sizes = new LinkedHashMap<>();
        piston.each(size -> {
            sizes.put(size.path().substring(prefix), size);
            return size;
        });
        return sizes;
    }

    private Compared crownHeight() {
        CrownHeight ofA = CrownHeight.of(book, a);
        CrownHeight ofB = CrownHeight.of(book, b);
        PistonEntry first = effects.first();
        PistonEntry changed = first.each(size -> size.path().endsWith("." + PROTRUSION) ? size.at(ofB.mm()) : size);
        return compared(
                PROTRUSION,
                CrownHeight.LABEL,
                Unit.MM,
                ofA.mm(),
                ofB.mm(),
                ofA.uncertaintyOfDifference(ofB),
                Optional.of(changed));
    }

    private Compared sized(String key, Optional<Size> ofA, Optional<Size> ofB) {
        if (ofA.isPresent() && ofB.isPresent()) {
            Size x = ofA.get();
            Size y = ofB.get();
            // a compression height acts through the crown's height, which has a line of its own
            Optional<PistonEntry> changed = key.equals(HEIGHT)
                    ? Optional.empty()
                    : Optional.of(
                            effects.first().each(size -> size.path().endsWith(")." + key) ? size.at(y.value()) : size));
            double u =
                    Math.hypot(x.quantity().standardUncertainty(), y.quantity().standardUncertainty());
            return compared(key, x.label(), x.unit(), x.value(), y.value(), u, changed);
        }
        Size known = ofA.or(() -> ofB).orElseThrow();
        return new Compared(
                key,
                known.label(),
                known.unit().symbol(),
                value(ofA),
                value(ofB),
                known.quantity().standardUncertainty(),
                Likeness.ONE_ONLY,
                Sentence.capital(known.label()) + ": " + text(known.value(), known.unit()) + " of '"
                        + (ofA.isPresent() ? a.id() : b.id()) + "', not in the book for the other.",
                List.of());
    }

    private Compared compared(
            String key, String label, Unit sizeUnit, double x, double y, double u, Optional<PistonEntry> changed) {
        double difference = y - x;
        // figures as written are never closer than this and yet different
        Likeness likeness = Math.abs(difference) < 1e-6
                ? Likeness.SAME
                : Math.abs(difference) > Finding.COVERAGE * u ? Likeness.DIFFERENT : Likeness.UNPROVEN;
        String both = Sentence.capital(label) + ": " + text(x, sizeUnit) + " and " + text(y, sizeUnit);
        String apart = text(Math.abs(difference), sizeUnit) + (difference < 0 ? " less" : " more");
        String doubt = u > 0 ? " ± " + text(Finding.COVERAGE * u, sizeUnit) : "";
        String sentence = switch (likeness) {
            case SAME -> both + ", the same.";
            case DIFFERENT -> both + ", " + apart + doubt + ".";
            default -> both + ", " + apart + doubt + ": these measurements do not prove a difference.";
        };
        List<Effect> does =
                likeness == Likeness.SAME ? List.of() : changed.map(effects::of).orElse(List.of());
        return new Compared(
                key, label, sizeUnit.symbol(), OptionalDouble.of(x), OptionalDouble.of(y), u, likeness, sentence, does);
    }

    private Compared whole(String key, String label, String ofA, String ofB, PistonEntry changed) {
        return new Compared(
                key,
                label,
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                Likeness.DIFFERENT,
                Sentence.capital(label) + ": " + ofA + " and " + ofB + ".",
                effects.of(changed));
    }

    private static String form(PistonEntry piston) {
        return piston.crown() instanceof CrownEntry.Dome
                ? "a dome"
                : piston.crown() instanceof CrownEntry.Dish ? "a dish" : "flat";
    }

    private PistonEntry crownOfB() {
        PistonEntry first = effects.first();
        return with(first, effects.like(b).crown(), first.pockets());
    }

    /** Pockets that only one of the two has, each tried as a whole. */
    private void pocketsOfOne(List<Compared> lines) {
        for (PocketEntry pocket : a.pockets()) {
            if (b.pockets().stream().noneMatch(other -> other.valve().equals(pocket.valve()))) {
                PistonEntry first = effects.first();
                List<PocketEntry> left = first.pockets().stream()
                        .filter(other -> !other.valve().equals(pocket.valve()))
                        .toList();
                lines.add(whole(
                        key(pocket), pocket.valve() + " pocket", "cut", "none", with(first, first.crown(), left)));
            }
        }
        for (PocketEntry pocket : b.pockets()) {
            if (a.pockets().stream().noneMatch(other -> other.valve().equals(pocket.valve()))) {
                PistonEntry first = effects.first();
                List<PocketEntry> more = new ArrayList<>(first.pockets());
                effects.like(b).pockets().stream()
                        .filter(other -> other.valve().equals(pocket.valve()))
                        .forEach(more::add);
                lines.add(whole(
                        key(pocket), pocket.valve() + " pocket", "none", "cut", with(first, first.crown(), more)));
            }
        }
    }

    private static String key(PocketEntry pocket) {
        return "pockets." + pocket.valve();
    }

    private static PistonEntry with(PistonEntry piston, CrownEntry crown, List<PocketEntry> pockets) {
        return new PistonEntry(
                piston.id(),
                piston.from(),
                piston.note(),
                crown,
                piston.land(),
                piston.compressionHeight(),
                piston.protrusion(),
                piston.groove(),
                piston.crownThickness(),
                pockets);
    }

    private static OptionalDouble value(Optional<Size> size) {
        return size.map(known -> OptionalDouble.of(known.value())).orElse(OptionalDouble.empty());
    }

    private String text(double value, Unit sizeUnit) {
        return switch (sizeUnit) {
            case MM -> unit.format(value);
            case DEGREES -> String.format(Locale.ROOT, "%.1f°", value);
            case CM3 -> String.format(Locale.ROOT, "%.2f cm³", value);
            case KPA -> String.format(Locale.ROOT, "%.0f kPa", value);
            case NEWTON -> String.format(Locale.ROOT, "%.1f N", value);
            case NEWTON_METRE -> String.format(Locale.ROOT, "%.1f N·m", value);
            case CELSIUS -> String.format(Locale.ROOT, "%.0f °C", value);
            case PERCENT -> String.format(Locale.ROOT, "%.1f %%", value);
            case NONE -> String.format(Locale.ROOT, "%.3f", value);
        };
    }
}
