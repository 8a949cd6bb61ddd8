package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Gap;
import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.LeastGaps;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Verdict;
import gudgeon.mechanics.metrology.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds the gaps of a fit, their doubts and their verdicts. */
final class Findings {
    /** Low points up to this much above the least are followed when sizes are moved by their doubts, in mm. */
    private static final double REACH_MM = 0.4;

    private static final String SOURCE = "Gaps: solid geometry of cylinders, planes and a sphere on a slider-crank"
            + " (R. L. Norton, Design of Machinery, ch. 4). Doubt: JCGM 100:2008, 5.1.2.";

    private final Model model;
    private final Sentences sentences;

    Findings(Model model, Sentences sentences) {
        this.model = model;
        this.sentences = sentences;
    }

    List<Finding> of(Gaps full, Optional<Gaps> lean) {
        List<FitGaps.Entry> entries = FitGaps.list(model.tried().book(), full);
        Optional<List<FitGaps.Entry>> leanEntries =
                lean.map(gaps -> FitGaps.list(model.tried().book(), gaps));
        List<Budget> budgets = budgets();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            FitGaps.Entry entry = entries.get(i);
            if (entry.gap().isPresent()) {
                int at = i;
                Optional<Double> leanLeast =
                        leanEntries.flatMap(list -> list.get(at).gap().map(Gap::leastMm));
                findings.add(finding(entry, entry.gap().get(), leanLeast, budgets.get(i)));
            }
        }
        return findings;
    }

    /** The budgets of all gaps, in the order of {@link FitGaps}. */
    private List<Budget> budgets() {
        LeastGaps least = new LeastGaps(model.topEnd(model.values(), false), REACH_MM);
        int[] figures = {-1};
        return Budget.ofAll(model.quantities(), x -> {
            double[] found = leastOrNone(least, x, figures[0]);
            figures[0] = found.length;
            return found;
        });
    }

    /** A size moved by its doubt may be one that can't be, such as a dome higher than its base is wide; then no figure exists. */
    private double[] leastOrNone(LeastGaps least, double[] x, int figures) {
        try {
            TopEnd moved = model.topEnd(x, false);
            return least.of(moved);
        } catch (IllegalArgumentException impossible) {
            if (figures < 0) {
                throw impossible;
            }
            double[] none = new double[figures];
            Arrays.fill(none, Double.NaN);
            return none;
        }
    }

    private Finding finding(FitGaps.Entry entry, Gap gap, Optional<Double> leanLeast, Budget budget) {
        double u = budget.standardUncertainty();
        double wanted = entry.wanted().mm();
        Verdict verdict = verdict(gap.leastMm(), leanLeast, Finding.COVERAGE * u, wanted);
        List<Input> inputs = model.inputs();
        List<Share> shares = budget.lines().stream()
                .filter(line -> line.share() > 0)
                .map(line -> new Share(inputs.get(line.input()), line.sensitivity(), line.share()))
                .toList();
        Working working = new Working(sentences.formula(entry.kind(), model.protrusion()), used(entry.kind()), SOURCE);
        return new Finding(
                entry.kind(),
                entry.valves(),
                gap,
                leanLeast,
                u,
                wanted,
                entry.wanted().source(),
                verdict,
                sentences.finding(entry.kind(), entry.valves(), gap, leanLeast, u, wanted, verdict),
                shares,
                working);
    }

    static Verdict verdict(double full, Optional<Double> lean, double expanded, double wanted) {
        Verdict ofFull = Verdict.of(full, expanded, wanted);
        if (lean.isEmpty()) {
            return ofFull;
        }
        Verdict ofLean = Verdict.of(lean.get(), expanded, wanted);
        return ofFull == ofLean ? ofFull : Verdict.UNPROVEN;
    }

    /** The inputs that a kind of gap can depend on. */
    private List<Input> used(GapKind kind) {
        return model.inputs().stream()
                .filter(input -> !input.path().startsWith("head.chamber"))
                .filter(input -> kind != GapKind.DECK
                        || !(input.path().startsWith("valves") || input.path().contains(".pockets")))
                .filter(input -> kind != GapKind.VALVE_TO_VALVE || input.path().startsWith("valves"))
                .toList();
    }
}
