package gudgeon.bench.cli;

import gudgeon.mechanics.clearance.Curves;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import java.util.List;
import java.util.Locale;

/** The gaps over the crank angle as a drawing that stands alone: one field for each valve, lines told apart by their dashes. */
final class GapPicture {
    private static final double LEFT = 70;
    private static final double WIDTH = 720;
    private static final double HEIGHT = 260;
    private static final double FIELD = 360;
    private static final double HIGHEST_MM = 8;
    private static final double STEP_DEG = 2;

    private final TrialFit fit;
    private final LengthUnit unit;
    private final Curves curves;
    private final double lowestMm;
    private final StringBuilder svg = new StringBuilder();

    private GapPicture(TrialFit fit, LengthUnit unit) {
        this.fit = fit;
        this.unit = unit;
        this.curves = fit.curves(STEP_DEG);
        double least = fit.findings().stream()
                .mapToDouble(finding -> finding.gap().leastMm())
                .min()
                .orElse(0);
        this.lowestMm = Math.min(0, Math.floor(least));
    }

    /** The drawing of a trial fit, lengths in the unit. */
    static String svg(TrialFit fit, LengthUnit unit) {
        return new GapPicture(fit, unit).draw();
    }

    private String draw() {
        int fields = fit.valveIds().size();
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" font-family=\"sans-serif\""
                        + " font-size=\"13\" aria-labelledby=\"title desc\">%n",
                LEFT + WIDTH + 20, fields * FIELD);
        add(
                "<title id=\"title\">%s</title>%n<desc id=\"desc\">%s</desc>%n",
                text("Gaps of " + fit.engine()), text(fit.sentence()));
        add("<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>%n");
        for (int v = 0; v < fields; v++) {
            field(v, v * FIELD + 60);
        }
        add("</svg>%n");
        return svg.toString();
    }

    private void field(int v, double top) {
        String id = fit.valveIds().get(v);
        add(
                "<text x=\"%.1f\" y=\"%.1f\" font-size=\"16\">%s valve, gaps over the crank angle</text>%n",
                LEFT, top - 36, text(id));
        for (double mm = lowestMm; mm <= HIGHEST_MM; mm++) {
            add(
                    "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%.2f\" y2=\"%.2f\" stroke=\"%s\"/>%n",
                    LEFT, LEFT + WIDTH, y(top, mm), y(top, mm), mm == 0 ? "#000" : "#ccc");
            if (mm % 2 == 0) {
                add(
                        "<text x=\"%.1f\" y=\"%.2f\" text-anchor=\"end\">%s</text>%n",
                        LEFT - 6, y(top, mm) + 4, unit.format(mm));
            }
        }
        for (int deg = 0; deg <= 720; deg += 90) {
            add("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d°</text>%n", LEFT + deg, top + HEIGHT + 18, deg);
        }
        line(top, id, GapKind.BORE, curves.boreMm()[v], "none", 0);
        line(top, id, GapKind.VALVE, curves.valveMm()[v], "8 4", 1);
        line(top, id, GapKind.NEAREST, curves.nearestMm()[v], "2 3", 2);
        line(top, id, GapKind.SIDE, curves.sideMm()[v], "10 3 2 3", 3);
    }

    private void line(double top, String id, GapKind kind, double[] values, String dashes, int place) {
        fit.findings().stream()
                .filter(finding -> finding.kind() == kind && finding.valves().equals(List.of(id)))
                .findFirst()
                .ifPresent(finding -> line(top, finding, values, dashes, place));
    }

    private void line(double top, Finding finding, double[] values, String dashes, int place) {
        StringBuilder path = new StringBuilder();
        boolean down = false;
        for (int i = 0; i < values.length; i++) {
            boolean shown = !Double.isNaN(values[i]) && values[i] <= HIGHEST_MM;
            if (shown) {
                path.append(String.format(
                        Locale.ROOT,
                        "%s%.1f %.2f",
                        down ? "L" : "M",
                        LEFT + curves.thetaDeg()[i],
                        y(top, Math.max(values[i], lowestMm))));
            }
            down = shown;
        }
        add(
                "<path d=\"%s\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.6\" stroke-dasharray=\"%s\"/>%n",
                path, dashes);
        add(
                "<circle cx=\"%.1f\" cy=\"%.2f\" r=\"4\"/>%n",
                LEFT + finding.gap().atDeg(), y(top, Math.max(finding.gap().leastMm(), lowestMm)));
        double legend = LEFT + place * 180;
        add(
                "<path d=\"M%.1f %.1fh30\" stroke=\"#000\" stroke-width=\"1.6\" stroke-dasharray=\"%s\"/>%n",
                legend, top - 18, dashes);
        add(
                "<text x=\"%.1f\" y=\"%.1f\">%s</text>%n",
                legend + 36, top - 14, text(finding.kind().term()));
        add(
                "<path d=\"M%.1f %.2fh12\" stroke=\"#000\" stroke-width=\"3\"/>%n",
                LEFT - 4 + place * 14, y(top, finding.wantedMm()));
        if (place == 0) {
            add(
                    "<text x=\"%.1f\" y=\"%.1f\">Thick marks at the left: least gap wanted. Dots: least gap found. Across: crank"
                            + " angle, 360° overlap top dead centre.</text>%n",
                    LEFT, top + HEIGHT + 38);
        }
    }

    private double y(double top, double mm) {
        return top + HEIGHT * (HIGHEST_MM - mm) / (HIGHEST_MM - lowestMm);
    }

    private void add(String format, Object... arguments) {
        svg.append(String.format(Locale.ROOT, format, arguments));
    }

    private static String text(String raw) {
        return raw.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
