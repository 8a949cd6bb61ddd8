package gudgeon.rebuild.decide;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.TrialFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of an engine that an option is judged by, from a trial fit of its parts. */
final class FiguresOf {
    static final String CAPACITY = "sweptCm3";

    /** What comes of trying: the figures, or why there are none. */
    record Answer(List<OptionFigure> figures, List<String> sentences) {
        static final Answer NONE = new Answer(List.of(), List.of());

        Answer {
            figures = List.copyOf(figures);
            sentences = List.copyOf(sentences);
        }

        Optional<OptionFigure> figure(String key) {
            return figures.stream().filter(figure -> figure.key().equals(key)).findFirst();
        }
    }

    private FiguresOf() {}

    /**
     * Tries the parts.
     *
     * @param rpm the speed of the crank at which the piston's mean speed is given, in turns a minute
     */
    static Answer of(AsMeasured parts, Trials trials, double rpm) {
        Trials.Tried tried = trials.of(parts);
        return new Answer(
                tried.fit().map(fit -> figures(fit, parts.geometry(), rpm)).orElse(List.of()), tried.why());
    }

    private static List<OptionFigure> figures(TrialFit fit, Geometry geometry, double rpm) {
        List<OptionFigure> figures = new ArrayList<>();
        fit.figures().stream()
                .filter(figure -> !figure.key().startsWith("metalLeft"))
                .filter(figure -> !figure.key().startsWith("liftAtOverlap"))
                .filter(figure -> !figure.key().matches("crankingKPaAt[1-9].*"))
                .forEach(figure -> figures.add(figure(figure)));
        figures.add(pistonSpeed(fit, geometry, rpm));
        fit.findings().forEach(finding -> figures.add(gap(finding)));
        fit.figures().stream()
                .filter(figure -> figure.key().startsWith("metalLeft"))
                .filter(figure -> Double.isFinite(figure.low()))
                .forEach(figure -> figures.add(figure(figure)));
        return figures;
    }

    private static OptionFigure figure(Figure figure) {
        return new OptionFigure(
                figure.key(),
                figure.label(),
                figure.unit(),
                figure.low(),
                figure.high(),
                Finding.COVERAGE * figure.standardUncertainty(),
                Optional.empty());
    }

    private static OptionFigure pistonSpeed(TrialFit fit, Geometry geometry, double rpm) {
        double speed = fit.topEnd().crank().meanPistonSpeedMPerS(rpm);
        double relative = geometry.crank().stroke().quantity().standardUncertainty()
                / geometry.crank().stroke().value();
        return new OptionFigure(
                "pistonSpeed",
                "mean piston speed at " + Math.round(rpm) + " turns a minute",
                "m/s",
                speed,
                speed,
                Finding.COVERAGE * speed * relative,
                Optional.empty());
    }

    private static OptionFigure gap(Finding finding) {
        double full = finding.gap().leastMm();
        double lean = finding.leanLeastMm().orElse(full);
        String label = finding.valves().size() == 1
                ? finding.valves().get(0) + " " + finding.kind().term()
                : finding.kind().term();
        Verdict verdict = finding.verdict();
        return new OptionFigure(
                "gap." + finding.kind() + "." + String.join("-", finding.valves()),
                label,
                "mm",
                Math.min(full, lean),
                Math.max(full, lean),
                Finding.COVERAGE * finding.standardUncertaintyMm(),
                Optional.of(verdict));
    }
}
