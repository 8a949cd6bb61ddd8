package gudgeon.rebuild.fit;

import gudgeon.mechanics.chamber.Compression;
import gudgeon.mechanics.chamber.MetalLeft;
import gudgeon.mechanics.chamber.RingGroove;
import gudgeon.mechanics.clearance.Gap;
import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Verdict;
import gudgeon.mechanics.cure.SmallestChange;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.PocketEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Looks for what would bring every gap to what is wanted, its doubt included, and what that costs. */
final class Cures {
    private static final double STEP_MM = 0.1;
    private static final int MOST_STEPS = 32;
    private static final int MOST_TEETH = 3;
    /** Metal under this is reported as too thin to cut to: the trade's habit, no source. */
    private static final double THIN_MM = 1.0;

    /** The same between a pocket and the land's edge. */
    private static final double THIN_EDGE_MM = 0.5;

    private static final String EDGE = "to the land's edge";

    private final Model now;
    private final Sentences sentences;
    private final Map<String, Double> expanded = new HashMap<>();
    private final List<Finding> wanting;
    private final Sweep sweep = new Sweep();

    Cures(Model now, Sentences sentences, List<Finding> findings) {
        this.now = now;
        this.sentences = sentences;
        for (Finding finding : findings) {
            expanded.put(key(finding.kind(), finding.valves()), Finding.COVERAGE * finding.standardUncertaintyMm());
        }
        wanting = findings.stream()
                .filter(finding -> finding.verdict() != Verdict.CLEARS)
                .toList();
    }

    private static String key(GapKind kind, List<String> valves) {
        return kind + String.join("+", valves);
    }

    List<CureLine> all() {
        List<CureLine> cures = new ArrayList<>();
        if (wanting.isEmpty()) {
            return cures;
        }
        if (now.tried().choice().turned()) {
            cures.add(turnBack());
        }
        if (now.tried().choice().teethMoved() != 0) {
            cures.add(teeth(0));
        }
        otherPistons(cures);
        if (!now.tried().choice().turned()) {
            // nobody should cut a piston that is only the wrong way round
            pockets(cures);
        }
        cures.add(gasket());
        if (now.tried().book().cam().isPresent()) {
            cures.add(anyTeeth());
        }
        cures.sort((a, b) -> Boolean.compare(b.works(), a.works()));
        return cures;
    }

    // ---- trying

    private Model changed(Map<String, Double> sizes) {
        return with(now.tried().choice(), sizes);
    }

    private Model with(Choice choice, Map<String, Double> sizes) {
        Map<String, Double> all = new LinkedHashMap<>(choice.changed());
        all.putAll(sizes);
        Choice tried = new Choice(
                choice.pistonId(),
                choice.gasketId(),
                choice.teethMoved(),
                choice.valveClearanceMm(),
                choice.turned(),
                all);
        return new Model(Tried.find(now.tried().booked(), tried));
    }

    /** What is still short with a model: empty when every gap has what is wanted and its doubt. */
    private Optional<FitGaps.Entry> stillShort(Model model) {
        EngineBook book = model.tried().book();
        Gaps gaps = sweep.gaps(model.topEnd(model.values(), false));
        return FitGaps.list(book, gaps).stream()
                .filter(entry -> entry.gap().isPresent() && shortage(entry) > 1e-9)
                .max((a, b) -> Double.compare(shortage(a), shortage(b)));
    }

    private double shortage(FitGaps.Entry entry) {
        double doubt = expanded.getOrDefault(key(entry.kind(), entry.valves()), 0.0);
        return entry.wanted().mm() + doubt - entry.gap().map(Gap::leastMm).orElse(Double.POSITIVE_INFINITY);
    }

    private boolean enough(Model model) {
        try {
            return stillShort(model).isEmpty();
        } catch (IllegalArgumentException impossible) {
            return false;
        }
    }

    private String why(Model model) {
        return stillShort(model)
                .map(entry -> "The " + entry.kind().term()
                        + (entry.valves().isEmpty() ? "" : " of the " + String.join(" and ", entry.valves()))
                        + " would still be "
                        + entry.gap()
                                .map(gap -> sentences.length(gap.leastMm()))
                                .orElse("none")
                        + ", where " + sentences.length(entry.wanted().mm()) + " and the doubt are wanted.")
                .orElse("");
    }

    // ---- the cures

    private CureLine turnBack() {
        Choice choice = now.tried().choice();
        Choice right = new Choice(
                choice.pistonId(),
                choice.gasketId(),
                choice.teethMoved(),
                choice.valveClearanceMm(),
                false,
                choice.changed());
        Model model = with(right, Map.of());
        return line(
                enough(model),
                "Turn the piston the right way round by its direction mark.",
                List.of(),
                model,
                OptionalDouble.empty());
    }

    private void otherPistons(List<CureLine> cures) {
        Choice choice = now.tried().choice();
        for (PistonEntry piston : now.tried().booked().pistons()) {
            if (!piston.id().equals(now.tried().piston().id())) {
                Choice other = new Choice(
                        Optional.of(piston.id()),
                        choice.gasketId(),
                        choice.teethMoved(),
                        choice.valveClearanceMm(),
                        choice.turned(),
                        Map.of());
                Model model = with(other, Map.of());
                cures.add(line(
                        enough(model),
                        "Fit piston '" + piston.id() + "' instead.",
                        costs(model),
                        model,
                        OptionalDouble.empty()));
            }
        }
    }

    private CureLine gasket() {
        String path = now.tried().gasket().pressed().path();
        double from = now.tried().gasket().pressed().value();
        OptionalDouble found = SmallestChange.find(from, STEP_MM, MOST_STEPS, to -> enough(changed(Map.of(path, to))));
        double to = found.orElse(from + MOST_STEPS * STEP_MM);
        Model model = changed(Map.of(path, to));
        return line(
                found.isPresent(),
                found.isPresent()
                        ? "A head gasket " + sentences.length(to) + " thick when pressed (now " + sentences.length(from)
                                + ")."
                        : "A thicker head gasket.",
                costs(model),
                model,
                found);
    }

    private void pockets(List<CureLine> cures) {
        for (PocketEntry pocket : now.tried().piston().pockets()) {
            String valve = pocket.valve();
            boolean concerned = wanting.stream()
                    .anyMatch(finding -> finding.valves().equals(List.of(valve)) && ofCrown(finding.kind()));
            if (concerned) {
                pocketCures(cures, pocket);
            }
        }
    }

    private static boolean ofCrown(GapKind kind) {
        return kind == GapKind.BORE || kind == GapKind.VALVE || kind == GapKind.NEAREST || kind == GapKind.SIDE;
    }

    private void pocketCures(List<CureLine> cures, PocketEntry pocket) {
        String depth = pocket.depth().path();
        String diameter = pocket.diameter().path();
        String name = pocket.valve() + " pocket";
        CureLine deeper =
                cut("The " + name + " cut deeper", pocket, depth, pocket.depth().value(), Map.of());
        CureLine wider = cut(
                "The " + name + " cut wider",
                pocket,
                diameter,
                pocket.diameter().value(),
                Map.of());
        cures.add(deeper);
        cures.add(wider);
        if (!deeper.works() && !wider.works()) {
            double generous = pocket.diameter().value() + widening();
            cures.add(cut(
                    "The " + name + " cut to " + sentences.length(generous) + " across and deeper",
                    pocket,
                    depth,
                    pocket.depth().value(),
                    Map.of(diameter, generous)));
        }
    }

    /** How much wider a pocket must be for the greatest shortage of a side gap. */
    private double widening() {
        double most = wanting.stream()
                .filter(finding -> finding.kind() == GapKind.SIDE)
                .mapToDouble(finding -> finding.wantedMm()
                        + Finding.COVERAGE * finding.standardUncertaintyMm()
                        - finding.gap().leastMm())
                .max()
                .orElse(1);
        return Math.ceil(2 * Math.min(Math.max(most, STEP_MM), 4) / STEP_MM) * STEP_MM;
    }

    private CureLine cut(String what, PocketEntry pocket, String path, double from, Map<String, Double> also) {
        OptionalDouble found =
                SmallestChange.find(from, STEP_MM, MOST_STEPS, to -> enough(changed(and(also, path, to))));
        double to = found.orElse(from + MOST_STEPS * STEP_MM);
        Model model = changed(and(also, path, to));
        List<String> costs = new ArrayList<>(costs(model));
        Optional<String> broken = metal(model, pocket, costs);
        String text = what
                + (found.isPresent() ? ", to " + sentences.length(to) + " (now " + sentences.length(from) + ")" : "")
                + ".";
        if (found.isPresent() && broken.isPresent()) {
            return new CureLine(false, text, costs, broken.get(), found);
        }
        return line(found.isPresent(), text, costs, model, found);
    }

    private static Map<String, Double> and(Map<String, Double> also, String path, double to) {
        Map<String, Double> all = new HashMap<>(also);
        all.put(path, to);
        return all;
    }

    private CureLine anyTeeth() {
        for (int n = 1; n <= MOST_TEETH; n++) {
            for (int teeth : new int[] {-n, n}) {
                if (enough(moved(teeth))) {
                    return teeth(teeth);
                }
            }
        }
        Model nearest = moved(1);
        return new CureLine(
                false,
                "Another cam setting.",
                List.of(),
                "No setting within " + MOST_TEETH + " teeth either way gives every gap what is wanted. One tooth late: "
                        + why(nearest),
                OptionalDouble.empty());
    }

    private Model moved(int teeth) {
        Choice choice = now.tried().choice();
        return with(
                new Choice(
                        choice.pistonId(),
                        choice.gasketId(),
                        teeth,
                        choice.valveClearanceMm(),
                        choice.turned(),
                        choice.changed()),
                Map.of());
    }

    private CureLine teeth(int teeth) {
        Model model = moved(teeth);
        if (teeth == 0) {
            return line(enough(model), "Put the cam back on its marks.", List.of(), model, OptionalDouble.of(0));
        }
        double degrees = 720.0 * teeth / now.tried().book().cam().orElseThrow().sprocketTeeth();
        return line(
                enough(model),
                "The cam moved " + Sentences.teeth(teeth) + ".",
                List.of("Every valve event moves by " + LengthUnit.degrees(Math.abs(degrees))
                        + (teeth > 0 ? " later" : " earlier")
                        + ": the engine is then out of its maker's timing, which is no cure for a part that is wrong."),
                model,
                OptionalDouble.of(teeth));
    }

    private CureLine line(boolean works, String what, List<String> costs, Model model, OptionalDouble to) {
        return works
                ? new CureLine(true, what, costs, "", to)
                : new CureLine(false, what, costs, impossibleOrShort(model), OptionalDouble.empty());
    }

    private String impossibleOrShort(Model model) {
        try {
            return why(model);
        } catch (IllegalArgumentException impossible) {
            return "Such a size can't be made.";
        }
    }

    // ---- costs

    private List<String> costs(Model model) {
        List<String> costs = new ArrayList<>();
        Optional<Compression> before = now.compression(now.values());
        Optional<Compression> after = model.compression(model.values());
        if (before.isPresent() && after.isPresent()) {
            costs.add("Compression ratio " + ratio(after.get().staticRatio()) + " (now "
                    + ratio(before.get().staticRatio()) + ").");
        }
        double deckBefore = deck(now);
        double deckAfter = deck(model);
        if (Math.abs(deckAfter - deckBefore) > 0.005) {
            costs.add("Deck gap " + sentences.length(deckAfter) + " (now " + sentences.length(deckBefore) + ").");
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

    /** Adds the metal left to the costs; says so where there would be too little. */
    private Optional<String> metal(Model model, PocketEntry pocket, List<String> costs) {
        PistonEntry piston = model.tried().piston();
        int k = piston.pockets().stream()
                .map(PocketEntry::valve)
                .collect(Collectors.toList())
                .indexOf(pocket.valve());
        TopEnd topEnd = model.topEnd(model.values(), false);
        Map<String, Double> left = new LinkedHashMap<>();
        left.put(EDGE, MetalLeft.toEdge(topEnd.crown(), k).mm());
        piston.groove()
                .ifPresent(groove -> left.put(
                        "to the top ring groove",
                        MetalLeft.toGroove(
                                        topEnd.crown(),
                                        k,
                                        new RingGroove(
                                                groove.below().value(),
                                                groove.depth().value()))
                                .mm()));
        piston.crownThickness()
                .ifPresent(thickness -> left.put(
                        "to the crown's underside",
                        MetalLeft.toUnderside(topEnd.crown(), k, thickness.value())
                                .mm()));
        if (piston.crownThickness().isEmpty() || piston.groove().isEmpty()) {
            costs.add("Whether enough metal is left can't be told: the book lacks the piston's "
                    + (piston.groove().isEmpty() ? "top ring groove" : "crown thickness") + ".");
        }
        left.forEach((where, mm) -> costs.add("Metal left " + where + ": " + sentences.length(mm) + "."));
        return left.entrySet().stream()
                .filter(entry -> entry.getValue() < (entry.getKey().equals(EDGE) ? THIN_EDGE_MM : THIN_MM))
                .findFirst()
                .map(entry -> "It would leave " + sentences.length(entry.getValue()) + " of metal " + entry.getKey()
                        + ", which is too little (common practice, no source).");
    }
}
