package gudgeon.bench.web.fit;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.compare.Comparison;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.Input;
import gudgeon.rebuild.fit.Simulation;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that the page shows.
 *
 * @param address the page's own address without what is asked for
 * @param book the book
 * @param asked what was asked for
 * @param groups the sizes that can be changed
 * @param found what was found, empty where the parts can't be tried
 * @param refusals why they can't be, sentences
 */
public record FitPage(
        String address,
        Geometry book,
        Asked asked,
        List<SizeGroup> groups,
        Optional<Found> found,
        List<String> refusals) {
    public FitPage {
        groups = List.copyOf(groups);
        refusals = List.copyOf(refusals);
    }

    /**
     * What was found by the trial.
     *
     * @param fit the trial fit
     * @param curesLater whether cures are needed and still to be asked for
     * @param plots the gaps over the crank angle
     * @param drawing the shapes for the page's script, as JSON
     * @param atDeg crank angle of the cursor
     * @param settled the doubt of the deciding gap by drawing lots, where that was asked for
     * @param comparison with another piston, where one was asked for
     */
    public record Found(
            TrialFit fit,
            boolean curesLater,
            List<GapPlot> plots,
            String drawing,
            double atDeg,
            Optional<Simulation> settled,
            Optional<Comparison> comparison) {
        public Found {
            plots = List.copyOf(plots);
        }
    }

    /** The trial fit; only where something was found. */
    public TrialFit fit() {
        return found.orElseThrow().fit();
    }

    /** The system in which lengths are shown. */
    public Lengths lengths() {
        return asked.lengths();
    }

    /** Whose gap it is, and which, such as "Exhaust bore gap". */
    public String name(Finding finding) {
        return finding.valves().size() == 1
                ? Sentence.capital(finding.valves().get(0)) + " "
                        + finding.kind().term()
                : Sentence.capital(finding.kind().term());
    }

    /** An id for something of a finding on the page. */
    public String id(String what, Finding finding) {
        return what + "-" + String.join("-", finding.valves()) + "-"
                + finding.kind().name().toLowerCase(Locale.ROOT);
    }

    /** Whether such a gap exists in the cycle at all. */
    public boolean exists(Finding finding) {
        return Double.isFinite(finding.gap().leastMm());
    }

    /** A least gap with its expanded uncertainty. */
    public String least(Finding finding) {
        String doubt = lengths().number(Finding.COVERAGE * finding.standardUncertaintyMm());
        String full = lengths().number(finding.gap().leastMm());
        String value = finding.leanLeastMm().isPresent()
                ? full + " to " + lengths().number(finding.leanLeastMm().get())
                : full;
        return value + " ± " + doubt + "\u00a0" + lengths().symbol();
    }

    /** A figure with its unit, and its expanded uncertainty or its range. */
    public String value(Figure figure) {
        boolean length = figure.unit().equals("mm");
        String value = number(figure.low(), length);
        if (figure.unit().equals("kPa")) {
            value = Math.round(figure.low()) + " to " + Math.round(figure.high());
        } else if (figure.high() != figure.low()) {
            value += " to " + number(figure.high(), length);
        } else if (figure.standardUncertainty() > 0) {
            value += " ± " + number(Finding.COVERAGE * figure.standardUncertainty(), length);
        }
        return withUnit(value, figure.unit());
    }

    /** An input's value with its unit. */
    public String input(Input input) {
        double expanded = Finding.COVERAGE * input.quantity().standardUncertainty();
        String doubt = expanded > 0 ? " ± " + lengths().number(expanded, unit(input.unit())) : "";
        return withUnit(lengths().number(input.quantity().value(), unit(input.unit())) + doubt, input.unit());
    }

    private static Unit unit(String symbol) {
        return symbol.equals("mm") ? Unit.MM : Unit.NONE;
    }

    private String withUnit(String number, String unit) {
        String shown = unit.equals("mm") ? lengths().symbol() : unit;
        return shown.isEmpty() || shown.equals("°") ? number + shown : number + "\u00a0" + shown;
    }

    /** The cursor's angle as a field's value. */
    public String atText() {
        return String.format(Locale.ROOT, "%.1f", found.orElseThrow().atDeg());
    }

    /** A compared size with its unit, or the word that there is none. */
    public String value(OptionalDouble value, String unit) {
        return value.isEmpty() ? "–" : withUnit(lengths().number(value.getAsDouble(), unit(unit)), unit);
    }

    private String number(double value, boolean length) {
        return length ? lengths().number(value) : String.format(Locale.ROOT, "%.2f", value);
    }

    /** The gap that decides. */
    public Finding worst() {
        return fit().worst().orElseThrow();
    }

    /** Verdict of the whole: that of the gap that decides. */
    public Verdict verdict() {
        return worst().verdict();
    }
}
