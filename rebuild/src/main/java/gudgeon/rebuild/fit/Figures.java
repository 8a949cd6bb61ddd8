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
import gudgeon.rebuild.book.PocketEntry;
import gudgeon.rebuild.book.ValveEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** Works out the figures of a fit other than the gaps. */
final class Figures {
    private static final double[] ALTITUDES_M = {0, 1000, 2000};
    private static final String COMPRESSION_SOURCE =
            "J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, section 2.2";
    private static final String GEOMETRY_SOURCE = "Solid geometry of the pocket, the land and the groove";

    private final Model model;
    private final double[] best;
    private final TopEnd topEnd;
    private final Map<Crown, CrownVolumes> volumes = new HashMap<>();

    Figures(Model model) {
        this.model = model;
        this.best = model.values();
        this.topEnd = model.topEnd(best, false);
    }

    List<Figure> all() {
        List<Figure> figures = new ArrayList<>();
        model.compression(best, this::volumes).ifPresent(compression -> addCompression(figures, compression));
        addLifts(figures);
        addMetal(figures);
        return figures;
    }

    private void addCompression(List<Figure> figures, Compression compression) {
        figures.add(doubted(
                "sweptCm3",
                "swept volume",
                "cm³",
                "π/4 · bore² · stroke",
                COMPRESSION_SOURCE,
                x -> compression(x).sweptCm3()));
        figures.add(doubted(
                "compressionRatio",
                "compression ratio",
                "",
                "(swept + clearance volume) / clearance volume; clearance volume = chamber + gasket hole + bore down to the"
                        + " crown's flat − what the crown stands up, pockets taken off as cut",
                COMPRESSION_SOURCE,
                x -> compression(x).staticRatio()));
        inletShuts().ifPresent(shuts -> {
            figures.add(doubted(
                    "trappedRatio",
                    "compression ratio from inlet closing",
                    "",
                    "volume when the inlet shuts at " + shuts + "° / clearance volume",
                    COMPRESSION_SOURCE,
                    x -> compression(x).trappedRatio(shuts)));
            for (double altitude : ALTITUDES_M) {
                CrankingPressure pressure = CrankingPressure.range(compression.trappedRatio(shuts), altitude);
                figures.add(new Figure(
                        "crankingKPaAt" + Math.round(altitude) + "m",
                        "cranking pressure to expect at " + Math.round(altitude) + " m above the sea, on the gauge",
                        pressure.lowKPa(),
                        pressure.highKPa(),
                        "kPa",
                        0,
                        new Working(
                                "p · (ratio from inlet closing)^n − p, n " + CrankingPressure.LOW_EXPONENT + " to "
                                        + CrankingPressure.HIGH_EXPONENT + ", p of the standard atmosphere",
                                compressionInputs(),
                                "Atmosphere: ISO 2533. Exponents: common practice, no source")));
            }
        });
    }

    private Compression compression(double[] x) {
        return model.compression(x, this::volumes).orElseThrow();
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
    private OptionalInt inletShuts() {
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

    private void addLifts(List<Figure> figures) {
        List<ValveEntry> valves = model.tried().book().valves();
        for (int v = 0; v < valves.size(); v++) {
            int valve = v;
            figures.add(doubted(
                    "liftAtOverlapMm." + valves.get(v).id(),
                    valves.get(v).id() + " lift at overlap top dead centre",
                    "mm",
                    "valve lift at 360°",
                    "Definition of overlap top dead centre",
                    x -> model.topEnd(x, false).valves().get(valve).lift().mmAt(360)));
        }
    }

    private void addMetal(List<Figure> figures) {
        PistonEntry piston = model.tried().piston();
        for (int k = 0; k < piston.pockets().size(); k++) {
            int pocket = k;
            PocketEntry entry = piston.pockets().get(k);
            String name = entry.valve() + " pocket";
            figures.add(metal(
                    "ToEdge." + entry.valve(),
                    "metal from " + name + " to the land's edge",
                    crown -> MetalLeft.toEdge(crown, pocket).mm()));
            piston.groove()
                    .ifPresent(groove -> figures.add(metal(
                            "ToGroove." + entry.valve(),
                            "metal from " + name + " to the top ring groove",
                            crown -> MetalLeft.toGroove(
                                            crown,
                                            pocket,
                                            new RingGroove(
                                                    groove.below().value(),
                                                    groove.depth().value()))
                                    .mm())));
            piston.crownThickness()
                    .ifPresent(thickness -> figures.add(metal(
                            "ToUnderside." + entry.valve(),
                            "metal under " + name,
                            crown -> MetalLeft.toUnderside(crown, pocket, thickness.value())
                                    .mm())));
        }
    }

    private Figure metal(String key, String label, ToDoubleFunction<Crown> left) {
        return doubted(
                "metalLeftMm" + key,
                label,
                "mm",
                "least distance from the pocket's floor and wall; below 0 it is broken through",
                GEOMETRY_SOURCE,
                x -> left.applyAsDouble(model.topEnd(x, false).crown()));
    }

    private Figure doubted(
            String key, String label, String unit, String formula, String source, ToDoubleFunction<double[]> figure) {
        Budget budget = Budget.of(model.quantities(), x -> orNone(figure, x));
        List<Input> used = budget.lines().stream()
                .filter(line -> line.share() > 0)
                .map(line -> model.inputs().get(line.input()))
                .toList();
        return new Figure(
                key,
                label,
                budget.value(),
                budget.value(),
                unit,
                budget.standardUncertainty(),
                new Working(formula, used, source));
    }

    private static double orNone(ToDoubleFunction<double[]> figure, double[] x) {
        try {
            return figure.applyAsDouble(x);
        } catch (IllegalArgumentException impossible) {
            return Double.NaN;
        }
    }
}
