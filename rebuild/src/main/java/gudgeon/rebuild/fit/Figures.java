package gudgeon.rebuild.fit;

import gudgeon.mechanics.chamber.Compression;
import gudgeon.mechanics.chamber.CrankingPressure;
import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownVolumes;
import gudgeon.mechanics.chamber.MetalLeft;
import gudgeon.mechanics.chamber.RingGroove;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.metrology.Budget;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.ValveEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** Works out the figures of a fit other than the gaps. */
final class Figures {
    private static final String TRAPPED = "trappedRatio";
    private static final String OVERLAP = "liftAtOverlapMm.";
    private static final double[] ALTITUDES_M = {0, 1000, 2000};
    private static final String COMPRESSION_SOURCE =
            "J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, section 2.2";
    /** To the land's edge, the groove and the underside. */
    private static final int METAL_KINDS = 3;

    private static final String GEOMETRY_SOURCE = "Solid geometry of the pocket, the land and the groove";

    private final Model model;
    private final double[] best;
    private final TopEnd topEnd;
    /** The same with the leanest lift, where a lift's shape is not known. */
    private final TopEnd leanEnd;

    private final Map<Crown, CrownVolumes> volumes = new HashMap<>();
    private final Map<Crown, double[]> metalLeft = new HashMap<>();

    /** A top end with some size moved, for which all figures are worked out. */
    private record Moved(TopEnd topEnd, Optional<Compression> compression) {}

    /** A figure that is asked for, before its doubt is known. */
    private record Asked(
            String key, String label, String unit, String formula, String source, ToDoubleFunction<Moved> figure) {}

    Figures(Model model) {
        this.model = model;
        this.best = model.values();
        this.topEnd = model.topEnd(best, false);
        this.leanEnd = model.banded() ? model.topEnd(best, true) : topEnd;
    }

    List<Figure> all() {
        List<Asked> asked = new ArrayList<>();
        Optional<Compression> compression = model.compression(best, this::volumes);
        if (compression.isPresent()) {
            addCompression(asked);
        }
        int cranking = asked.size();
        addLifts(asked);
        addMetal(asked);
        List<Figure> figures =
                new ArrayList<>(withDoubts(asked).stream().map(this::asRange).toList());
        compression.ifPresent(found -> figures.addAll(cranking, crankingPressures(found)));
        return figures;
    }

    /** A figure that hangs on a lift whose shape is not known is a range, from one bound of the lift to the other. */
    private Figure asRange(Figure figure) {
        OptionalDouble other = model.banded() ? withLeanLift(figure.key()) : OptionalDouble.empty();
        if (other.isEmpty()) {
            return figure;
        }
        return new Figure(
                figure.key(),
                figure.label(),
                Math.min(figure.low(), other.getAsDouble()),
                Math.max(figure.low(), other.getAsDouble()),
                figure.unit(),
                0,
                figure.working());
    }

    private OptionalDouble withLeanLift(String key) {
        if (key.equals(TRAPPED)) {
            Optional<Compression> compression = model.compression(best, this::volumes);
            OptionalInt shuts = inletShuts(leanEnd);
            return compression.isPresent() && shuts.isPresent()
                    ? OptionalDouble.of(compression.get().trappedRatio(shuts.getAsInt()))
                    : OptionalDouble.empty();
        }
        if (key.startsWith(OVERLAP)) {
            int valve = model.tried().book().valves().stream()
                    .map(ValveEntry::id)
                    .toList()
                    .indexOf(key.substring(OVERLAP.length()));
            return OptionalDouble.of(leanEnd.valves().get(valve).lift().mmAt(360));
        }
        return OptionalDouble.empty();
    }

    private void addCompression(List<Asked> asked) {
        asked.add(ofCompression("sweptCm3", "swept volume", "cm³", "π/4 · bore² · stroke", Compression::sweptCm3));
        asked.add(ofCompression(
                "compressionRatio",
                "compression ratio",
                "",
                "(swept + clearance volume) / clearance volume; clearance volume = chamber + gasket hole + bore down to the"
                        + " crown's flat − what the crown stands up, pockets taken off as cut",
                Compression::staticRatio));
        inletShuts(topEnd)
                .ifPresent(shuts -> asked.add(ofCompression(
                        TRAPPED,
                        "compression ratio from inlet closing",
                        "",
                        "volume when the inlet shuts at " + shuts + "° / clearance volume",
                        compression -> compression.trappedRatio(shuts))));
    }

    private static Asked ofCompression(
            String key, String label, String unit, String formula, ToDoubleFunction<Compression> figure) {
        return new Asked(
                key,
                label,
                unit,
                formula,
                COMPRESSION_SOURCE,
                moved -> figure.applyAsDouble(moved.compression().orElseThrow()));
    }

    private List<Figure> crankingPressures(Compression compression) {
        List<Figure> figures = new ArrayList<>();
        inletShuts(topEnd).ifPresent(shuts -> {
            for (double altitude : ALTITUDES_M) {
                CrankingPressure pressure = CrankingPressure.range(compression.trappedRatio(shuts), altitude);
                // the leanest lift shuts first and traps most
                double high = CrankingPressure.range(
                                compression.trappedRatio(inletShuts(leanEnd).orElse(shuts)), altitude)
                        .highKPa();
                figures.add(new Figure(
                        "crankingKPaAt" + Math.round(altitude) + "m",
                        "cranking pressure to expect at " + Math.round(altitude) + " m above the sea, on the gauge",
                        pressure.lowKPa(),
                        high,
                        "kPa",
                        0,
                        new Working(
                                "p · (ratio from inlet closing)^n − p, n " + CrankingPressure.LOW_EXPONENT + " to "
                                        + CrankingPressure.HIGH_EXPONENT + ", p of the standard atmosphere",
                                compressionInputs(),
                                "Atmosphere: ISO 2533. Exponents: common practice, no source")));
            }
        });
        return figures;
    }

    /** Many sizes that are moved by their doubt leave the crown as it is. */
    private CrownVolumes volumes(Crown crown) {
        return volumes.computeIfAbsent(crown, CrownVolumes::of);
    }

    private List<Input> compressionInputs() {
        return model.inputs().stream()
                .filter(input -> !input.path().startsWith("valves"))
                .toList();
    }

    /** The crank angle at which the first inlet valve is shut again. */
    private OptionalInt inletShuts(TopEnd topEnd) {
        List<ValveEntry> valves = model.tried().book().valves();
        for (int v = 0; v < valves.size(); v++) {
            if (valves.get(v).kind() == ValveEntry.Kind.INLET) {
                for (int theta = 500; theta < 720; theta++) {
                    if (topEnd.valves().get(v).lift().mmAt(theta) <= 0) {
                        return OptionalInt.of(theta);
                    }
                }
            }
        }
        return OptionalInt.empty();
    }

    private void addLifts(List<Asked> asked) {
        List<ValveEntry> valves = model.tried().book().valves();
        for (int v = 0; v < valves.size(); v++) {
            int valve = v;
            asked.add(new Asked(
                    OVERLAP + valves.get(v).id(),
                    valves.get(v).id() + " lift at overlap top dead centre",
                    "mm",
                    "valve lift at 360°",
                    "Definition of overlap top dead centre",
                    moved -> moved.topEnd().valves().get(valve).lift().mmAt(360)));
        }
    }

    private void addMetal(List<Asked> asked) {
        PistonEntry piston = model.tried().piston();
        for (int k = 0; k < piston.pockets().size(); k++) {
            String valve = piston.pockets().get(k).valve();
            int first = k * METAL_KINDS;
            asked.add(metal("ToEdge." + valve, "metal from " + valve + " pocket to the land's edge", first));
            if (piston.groove().isPresent()) {
                asked.add(metal(
                        "ToGroove." + valve, "metal from " + valve + " pocket to the top ring groove", first + 1));
            }
            if (piston.crownThickness().isPresent()) {
                asked.add(metal("ToUnderside." + valve, "metal under " + valve + " pocket", first + 2));
            }
        }
    }

    private Asked metal(String key, String label, int at) {
        return new Asked(
                "metalLeftMm" + key,
                label,
                "mm",
                "least distance from the pocket's floor and wall; below 0 it is broken through",
                GEOMETRY_SOURCE,
                moved -> metalLeft.computeIfAbsent(moved.topEnd().crown(), this::metalLeft)[at]);
    }

    /** For each pocket the metal to edge, groove and underside in mm; NaN for what the book does not know. */
    private double[] metalLeft(Crown crown) {
        PistonEntry piston = model.tried().piston();
        double[] left = new double[METAL_KINDS * crown.pockets().size()];
        for (int k = 0; k < crown.pockets().size(); k++) {
            int pocket = k;
            left[METAL_KINDS * k] = MetalLeft.toEdge(crown, k).mm();
            left[METAL_KINDS * k + 1] = piston.groove()
                    .map(groove -> new RingGroove(
                            groove.below().value(), groove.depth().value()))
                    .map(groove -> MetalLeft.toGroove(crown, pocket, groove).mm())
                    .orElse(Double.NaN);
            left[METAL_KINDS * k + 2] = piston.crownThickness()
                    .map(thickness -> MetalLeft.toUnderside(crown, pocket, thickness.value())
                            .mm())
                    .orElse(Double.NaN);
        }
        return left;
    }

    /** All figures with their doubts, worked out in one pass over the inputs. */
    private List<Figure> withDoubts(List<Asked> asked) {
        List<Budget> budgets = Budget.ofAll(model.quantities(), x -> values(asked, x));
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            Budget budget = budgets.get(i);
            Asked figure = asked.get(i);
            List<Input> used = budget.lines().stream()
                    .filter(line -> line.share() > 0)
                    .map(line -> model.inputs().get(line.input()))
                    .toList();
            figures.add(new Figure(
                    figure.key(),
                    figure.label(),
                    budget.value(),
                    budget.value(),
                    figure.unit(),
                    budget.standardUncertainty(),
                    new Working(figure.formula(), used, figure.source())));
        }
        return figures;
    }

    /** The figures' values; none where a size moved by its doubt is one that can't be. */
    private double[] values(List<Asked> asked, double[] x) {
        double[] values = new double[asked.size()];
        try {
            Moved moved = new Moved(model.topEnd(x, false), model.compression(x, this::volumes));
            for (int i = 0; i < values.length; i++) {
                values[i] = asked.get(i).figure().applyAsDouble(moved);
            }
        } catch (IllegalArgumentException impossible) {
            Arrays.fill(values, Double.NaN);
        }
        return values;
    }
}
