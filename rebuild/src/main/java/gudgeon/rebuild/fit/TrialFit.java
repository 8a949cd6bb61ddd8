package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Curves;
import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.ValveEntry;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The outcome of a trial fit.
 *
 * @param engine the engine's name
 * @param choice the parts tried, every choice resolved
 * @param valveIds ids of the valves, in the order of the top end's valves
 * @param topEnd the top end tried, at the best estimates; with the full profile where the lift's shape is not known
 * @param inputs every size that entered
 * @param findings the gaps found: by valve, then valve to valve, then the deck gap
 * @param figures swept volume, compression ratio, trapped ratio, cranking pressure, metal left
 * @param tightForwardDeg where it goes tight turned forward
 * @param tightBackwardDeg where it goes tight turned backward
 * @param cures what would cure it; empty when all clears
 * @param next the next measurement worth taking; empty when nothing is unproven
 * @param sentence the whole in one sentence
 */
public record TrialFit(
        String engine,
        Choice choice,
        List<String> valveIds,
        TopEnd topEnd,
        List<Input> inputs,
        List<Finding> findings,
        List<Figure> figures,
        OptionalDouble tightForwardDeg,
        OptionalDouble tightBackwardDeg,
        List<CureLine> cures,
        Optional<NextMeasurement> next,
        String sentence) {
    public TrialFit {
        valveIds = List.copyOf(valveIds);
        inputs = List.copyOf(inputs);
        findings = List.copyOf(findings);
        figures = List.copyOf(figures);
        cures = List.copyOf(cures);
    }

    /**
     * Tries a choice of a book's parts.
     *
     * @param book the book
     * @param choice what is tried
     * @param unit the unit in which sentences give lengths
     * @throws UnknownChoice if the book lacks what is chosen, or the sizes contradict each other; each reason a sentence
     */
    public static TrialFit of(Geometry book, Choice choice, LengthUnit unit) {
        return of(book, choice, unit, true);
    }

    /**
     * The same with the cures left out, which take the most time by far.
     *
     * @throws UnknownChoice as {@link #of(Geometry, Choice, LengthUnit)}
     */
    public static TrialFit withoutCures(Geometry book, Choice choice, LengthUnit unit) {
        return of(book, choice, unit, false);
    }

    private static TrialFit of(Geometry book, Choice choice, LengthUnit unit, boolean cures) {
        Model model = model(book, choice);
        try {
            return of(model, new Sentences(model.tried(), unit), cures);
        } catch (IllegalArgumentException impossible) {
            throw Impossible.of(book, choice, impossible);
        }
    }

    private static Model model(Geometry book, Choice choice) {
        Tried tried = Tried.find(book, choice);
        try {
            return new Model(tried);
        } catch (IllegalArgumentException impossible) {
            throw Impossible.of(book, choice, impossible);
        }
    }

    private static TrialFit of(Model model, Sentences sentences, boolean cures) {
        double[] best = model.values();
        TopEnd topEnd = model.topEnd(best, false);
        Gaps gaps = new Sweep().gaps(topEnd);
        Optional<Gaps> lean =
                model.banded() ? Optional.of(new Sweep().gaps(model.topEnd(best, true))) : Optional.empty();
        List<Finding> findings = new Findings(model, sentences).of(gaps, lean);
        Geometry book = model.tried().book();
        return new TrialFit(
                book.engine().name(),
                model.tried().choice(),
                book.valves().stream().map(ValveEntry::id).toList(),
                topEnd,
                model.inputs(),
                findings,
                new Figures(model).all(),
                gaps.tightForwardDeg(),
                gaps.tightBackwardDeg(),
                cures ? new Cures(model, sentences, findings).all() : List.of(),
                NextMeasurements.of(findings, model.inputs(), book),
                sentences.whole(findings, gaps.tightForwardDeg(), gaps.tightBackwardDeg()));
    }

    /**
     * The top end of a choice at the best estimates alone, without looking for gaps; with the full profile where the lift's shape is
     * not known.
     *
     * @throws UnknownChoice as {@link #of(Geometry, Choice, LengthUnit)}
     */
    public static TopEnd topEnd(Geometry book, Choice choice) {
        Model model = model(book, choice);
        try {
            return model.topEnd(model.values(), false);
        } catch (IllegalArgumentException impossible) {
            throw Impossible.of(book, choice, impossible);
        }
    }

    /** Whether every gap clears. */
    public boolean allClear() {
        return findings.stream().allMatch(finding -> finding.verdict() == Verdict.CLEARS);
    }

    /** The finding that decides: touching before unproven before close, then the one shortest of what is wanted. */
    public Optional<Finding> worst() {
        return Sentences.worst(findings);
    }

    /**
     * The doubt of a valve's gap to the crown by Monte Carlo, until it is stable or {@code greatestDraws} are made.
     *
     * @param kind bore, valve, nearest or side gap
     * @param valve the valve's id
     * @param seed the seed; the same gives the same result on any number of threads
     * @param greatestDraws 20,000 or more
     * @throws UnknownChoice as {@link #of}, and if there is no such gap to simulate
     */
    public static Simulation simulate(
            Geometry book, Choice choice, LengthUnit unit, GapKind kind, String valve, long seed, int greatestDraws) {
        Model model = model(book, choice);
        return new Simulator(model, new Sentences(model.tried(), unit)).run(kind, valve, seed, greatestDraws);
    }

    /**
     * The gaps over the crank angle, for a plot.
     *
     * @param stepDeg angle between samples, above 0
     */
    public Curves curves(double stepDeg) {
        return new Sweep().curves(topEnd, stepDeg);
    }
}
