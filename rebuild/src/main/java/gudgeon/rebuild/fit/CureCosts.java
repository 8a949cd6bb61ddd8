package gudgeon.rebuild.fit;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.MetalLeft;
import gudgeon.mechanics.chamber.RingGroove;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.PocketEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a cure costs: compression, deck gap, and the metal left in the crown. */
final class CureCosts {
    /** Metal under this is too thin to cut to: common practice, no source. */
    private static final double THIN_MM = 1.0;

    /** The same between a pocket and the land's edge, where no pressure acts on it. */
    private static final double THIN_EDGE_MM = 0.5;

    private static final String EDGE = "to the land's edge";

    private final Model now;
    private final Sentences sentences;

    CureCosts(Model now, Sentences sentences) {
        this.now = now;
        this.sentences = sentences;
    }

    /** What changes of compression ratio and deck gap. */
    List<String> of(Model cured) {
        List<String> costs = new ArrayList<>();
        now.compression(now.values())
                .flatMap(before -> cured.compression(cured.values())
                        .map(after -> "Compression ratio " + ratio(after.staticRatio()) + " (now "
                                + ratio(before.staticRatio()) + ")."))
                .ifPresent(costs::add);
        double before = deck(now);
        double after = deck(cured);
        if (Math.abs(after - before) > 0.005) {
            costs.add("Deck gap " + sentences.length(after) + " (now " + sentences.length(before) + ").");
        }
        return costs;
    }

    private static double deck(Model model) {
        TopEnd topEnd = model.topEnd(model.values(), false);
        return topEnd.gasketMm() - topEnd.crank().protrusionMm();
    }

    private static String ratio(double ratio) {
        return String.format(Locale.ROOT, "%.2f : 1", ratio);
    }

    /** The metal left round a pocket, one sentence each. */
    List<String> metal(Model cured, PocketEntry pocket) {
        List<String> costs = new ArrayList<>();
        PistonEntry piston = cured.tried().piston();
        left(cured, pocket)
                .forEach((where, mm) -> costs.add("Metal left from the " + pocket.valve() + " pocket " + where + ": "
                        + sentences.length(mm) + "."));
        if (piston.crownThickness().isEmpty() || piston.groove().isEmpty()) {
            costs.add("Whether enough metal is left can't be told: the book lacks the piston's "
                    + (piston.groove().isEmpty() ? "top ring groove" : "crown thickness") + ".");
        }
        return costs;
    }

    /** Why a pocket must not be cut like that: it would break through, or leave too little metal. */
    Optional<String> tooThin(Model cured, PocketEntry pocket) {
        return left(cured, pocket).entrySet().stream()
                .filter(entry -> entry.getValue() < (entry.getKey().equals(EDGE) ? THIN_EDGE_MM : THIN_MM))
                .findFirst()
                .map(entry -> entry.getValue() <= 0
                        ? "The " + pocket.valve() + " pocket would break through " + entry.getKey() + "."
                        : "It would leave " + sentences.length(entry.getValue()) + " of metal from the "
                                + pocket.valve() + " pocket " + entry.getKey()
                                + ", which is too little (common practice, no source).");
    }

    private static Map<String, Double> left(Model cured, PocketEntry pocket) {
        PistonEntry piston = cured.tried().piston();
        int k = piston.pockets().stream().map(PocketEntry::valve).toList().indexOf(pocket.valve());
        Crown crown = cured.topEnd(cured.values(), false).crown();
        Map<String, Double> left = new LinkedHashMap<>();
        left.put(EDGE, MetalLeft.toEdge(crown, k).mm());
        piston.groove().ifPresent(groove -> {
            RingGroove ring =
                    new RingGroove(groove.below().value(), groove.depth().value());
            left.put(
                    "to the top ring groove", MetalLeft.toGroove(crown, k, ring).mm());
        });
        piston.crownThickness()
                .ifPresent(thickness -> left.put(
                        "to the crown's underside",
                        MetalLeft.toUnderside(crown, k, thickness.value()).mm()));
        return left;
    }
}
