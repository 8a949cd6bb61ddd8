package gudgeon.bench.web.fit;

import gudgeon.mechanics.clearance.Curves;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * A plot of some gaps over the crank angle. Drawn in a field 720 wide, a unit for each degree, and {@link #HEIGHT} high.
 *
 * @param title whose gaps
 * @param id of the plot on the page
 * @param lines the gaps
 * @param ticks labels of the scale, from the top, evenly spaced
 * @param zero height of the zero line in the field
 * @param text the plot in words
 */
public record GapPlot(String title, String id, List<Line> lines, List<String> ticks, double zero, String text) {
    /** Height of the field. */
    public static final double HEIGHT = 240;

    private static final int STEPS = 8;

    public GapPlot {
        lines = List.copyOf(lines);
        ticks = List.copyOf(ticks);
    }

    /**
     * One gap's line.
     *
     * @param kind which gap
     * @param name its class on the page
     * @param points the line, in pieces where the gap does not exist all along
     * @param wanted height of the line of what is wanted
     * @param least where the least value stands: angle
     * @param leastAt where the least value stands: height in the field
     * @param legend name, least value and what is wanted, in words
     */
    public record Line(
            GapKind kind,
            String name,
            List<String> points,
            double wanted,
            double least,
            double leastAt,
            String legend) {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** The same in millimetres, as a print has it. */
    public static List<GapPlot> of(TrialFit fit) {
        return of(fit, fit.curves(1), Lengths.MM);
    }

    /** A plot for each valve, and one of the gaps that belong to no one valve. */
    static List<GapPlot> of(TrialFit fit, Curves curves, Lengths lengths) {
        List<GapPlot> plots = new ArrayList<>();
        for (int v = 0; v < fit.valveIds().size(); v++) {
            String id = fit.valveIds().get(v);
            Predicate<Finding> its = finding -> finding.valves().equals(List.of(id));
            plots.add(new Drawer(fit, curves, lengths, v).plot(Sentence.capital(id) + " valve", id, its));
        }
        plots.add(new Drawer(fit, curves, lengths, 0)
                .plot("Deck, and valve to valve", "between", f -> f.valves().size() != 1));
        return plots;
    }

    private static final class Drawer {
        private final TrialFit fit;
        private final Curves curves;
        private final Lengths lengths;
        private final int valve;
        private final double stepMm;
        private double topMm;

        Drawer(TrialFit fit, Curves curves, Lengths lengths, int valve) {
            this.fit = fit;
            this.curves = curves;
            this.lengths = lengths;
            this.valve = valve;
            this.stepMm = lengths == Lengths.INCH ? 0.05 * 25.4 : 1;
        }

        GapPlot plot(String title, String id, Predicate<Finding> which) {
            List<Finding> shown = fit.findings().stream().filter(which).toList();
            double least = shown.stream()
                    .mapToDouble(f -> f.gap().leastMm())
                    .filter(Double::isFinite)
                    .min()
                    .orElse(0);
            double bottom = Math.floor(Math.min(least, -0.01) / stepMm);
            topMm = (bottom + STEPS) * stepMm;
            List<String> ticks = new ArrayList<>();
            for (int tick = STEPS; tick >= 0; tick--) {
                ticks.add(tick == STEPS ? lengths.length(topMm) : lengths.number((bottom + tick) * stepMm));
            }
            List<Line> lines = shown.stream().map(this::line).toList();
            String text = title + ": "
                    + String.join("; ", lines.stream().map(Line::legend).toList()) + ".";
            return new GapPlot(title, id, lines, ticks, y(0), text);
        }

        private Line line(Finding finding) {
            double least = finding.gap().leastMm();
            String legend = finding.kind().term()
                    + (Double.isFinite(least)
                            ? ", least " + lengths.length(least) + " at "
                                    + lengths.angle(finding.gap().atDeg())
                            : ", none")
                    + ", wanted " + lengths.length(finding.wantedMm());
            return new Line(
                    finding.kind(),
                    finding.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    pieces(values(finding.kind())),
                    y(finding.wantedMm()),
                    finding.gap().atDeg(),
                    y(Double.isFinite(least) ? least : topMm * 2),
                    legend);
        }

        private double[] values(GapKind kind) {
            return switch (kind) {
                case BORE -> curves.boreMm()[valve];
                case VALVE -> curves.valveMm()[valve];
                case NEAREST -> curves.nearestMm()[valve];
                case SIDE -> curves.sideMm()[valve];
                case WALL -> curves.wallMm()[valve];
                case VALVE_TO_VALVE -> curves.valveToValveMm();
                case DECK -> curves.deckMm();
            };
        }

        /** The line, broken where the gap does not exist; far above the field it may as well be cut. */
        private List<String> pieces(double[] values) {
            List<String> pieces = new ArrayList<>();
            StringBuilder piece = new StringBuilder();
            for (int n = 0; n < values.length; n++) {
                if (Double.isFinite(values[n])) {
                    double y = Math.max(-HEIGHT, Math.min(2 * HEIGHT, y(values[n])));
                    piece.append(String.format(Locale.ROOT, "%.1f,%.1f ", curves.thetaDeg()[n], y));
                }
                boolean ends = n == values.length - 1 || !Double.isFinite(values[n]);
                if (ends && piece.length() > 0) {
                    pieces.add(piece.toString().strip());
                    piece.setLength(0);
                }
            }
            return pieces;
        }

        private double y(double mm) {
            return Math.round((topMm - mm) / (STEPS * stepMm) * HEIGHT * 10) / 10.0;
        }
    }
}
