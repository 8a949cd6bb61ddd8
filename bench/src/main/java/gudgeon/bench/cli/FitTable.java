package gudgeon.bench.cli;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.fit.CureLine;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.sentence.Sentence;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** A trial fit as plain text. */
final class FitTable {
    private static final String ROW = "%-34s %20s %8s %12s  %s%n";

    private FitTable() {}

    static void print(TrialFit fit, LengthUnit unit, PrintWriter out) {
        out.println(fit.engine() + ". " + fit.sentence());
        out.println();
        out.printf(Locale.ROOT, ROW, "gap", "least ± doubt", "at", "wanted", "verdict");
        for (Finding finding : fit.findings()) {
            out.printf(
                    Locale.ROOT,
                    ROW,
                    String.join(" and ", finding.valves())
                            + (finding.valves().isEmpty() ? "" : " ")
                            + finding.kind().term(),
                    unit.format(finding.gap().leastMm()) + " ± "
                            + unit.format(Finding.COVERAGE * finding.standardUncertaintyMm()),
                    String.format(Locale.ROOT, "%.1f°", finding.gap().atDeg()),
                    unit.format(finding.wantedMm()),
                    word(finding.verdict()));
        }
        out.println();
        out.println(
                "The doubt is twice the standard uncertainty, about 95 %. Angles: 0° firing, 360° overlap top dead centre.");
        figures(fit.figures(), unit, out);
        cures(fit.cures(), out);
        fit.next().ifPresent(next -> {
            out.println();
            out.println("Next measurement worth taking: " + next.sentence());
        });
    }

    private static String word(Verdict verdict) {
        return switch (verdict) {
            case CLEARS -> "clears";
            case CLOSE -> "CLOSE";
            case TOUCHES -> "TOUCHES";
            case UNPROVEN -> "UNPROVEN";
        };
    }

    private static void figures(List<Figure> figures, LengthUnit unit, PrintWriter out) {
        out.println();
        for (Figure figure : figures) {
            out.println(Sentence.capital(figure.label()) + ": " + value(figure, unit) + ".");
        }
    }

    private static String value(Figure figure, LengthUnit unit) {
        boolean range = figure.low() != figure.high();
        if (figure.unit().equals("mm")) {
            return range
                    ? unit.format(figure.low()) + " to " + unit.format(figure.high())
                    : unit.format(figure.low()) + " ± " + unit.format(Finding.COVERAGE * figure.standardUncertainty());
        }
        String end = figure.unit().isEmpty() ? "" : " " + figure.unit();
        if (figure.unit().equals("kPa")) {
            return String.format(Locale.ROOT, "%.0f to %.0f%s", figure.low(), figure.high(), end);
        }
        return range
                ? String.format(Locale.ROOT, "%.2f to %.2f%s", figure.low(), figure.high(), end)
                : String.format(
                        Locale.ROOT,
                        "%.2f ± %.2f%s",
                        figure.low(),
                        Finding.COVERAGE * figure.standardUncertainty(),
                        end);
    }

    private static void cures(List<CureLine> cures, PrintWriter out) {
        if (cures.isEmpty()) {
            return;
        }
        out.println();
        out.println("What would cure it:");
        for (CureLine cure : cures) {
            out.println((cure.works() ? "  works:       " : "  can't work:  ")
                    + cure.what()
                    + (cure.whyNot().isEmpty() ? "" : " " + cure.whyNot()));
            if (cure.works()) {
                cure.costs().forEach(cost -> out.println("                 " + cost));
            }
        }
        out.println("  The maker's manual comes first. Turn the engine by hand with the plug out before it is closed.");
    }
}
