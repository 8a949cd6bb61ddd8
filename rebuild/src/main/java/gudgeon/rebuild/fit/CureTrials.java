package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Gap;
import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.clearance.Verdict;
import gudgeon.mechanics.cure.SmallestChange;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/** Tries changes of a fit, and tells whether they bring every gap to what is wanted. Safe to share between threads. */
final class CureTrials {
    /**
     * The greatest doubt carried over from the fit as it is, in mm. There the least gap may jump from one place to another,
     * which makes a doubt that the cured fit does not have; its own is worked out before it is said to work.
     */
    private static final double MOST_DOUBT_MM = 0.2;

    private static final int MOST_SEARCHES = 3;

    private final Model now;
    private final Sentences sentences;
    private final Map<String, Double> doubts;

    CureTrials(Model now, Sentences sentences, List<Finding> findings) {
        this.now = now;
        this.sentences = sentences;
        doubts = new HashMap<>(doubts(findings));
        doubts.replaceAll((gap, doubt) -> Math.min(MOST_DOUBT_MM, doubt));
    }

    private static Map<String, Double> doubts(List<Finding> findings) {
        Map<String, Double> doubts = new HashMap<>();
        for (Finding finding : findings) {
            doubts.put(key(finding.kind(), finding.valves()), Finding.COVERAGE * finding.standardUncertaintyMm());
        }
        return doubts;
    }

    private static String key(GapKind kind, List<String> valves) {
        return kind + String.join("+", valves);
    }

    /** The choice now tried, with some sizes changed as well. */
    Choice changed(Map<String, Double> sizes) {
        Choice choice = now.tried().choice();
        Map<String, Double> all = new LinkedHashMap<>(choice.changed());
        all.putAll(sizes);
        return new Choice(
                choice.pistonId(),
                choice.gasketId(),
                choice.teethMoved(),
                choice.valveClearanceMm(),
                choice.turned(),
                all);
    }

    /** The model of a choice, empty where its sizes can't go together. */
    Optional<Model> model(Choice choice) {
        try {
            Model model = new Model(Tried.find(now.tried().booked(), choice));
            model.topEnd(model.values(), false);
            return Optional.of(model);
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /** Whether every gap clears with a choice, that choice's own doubts worked out. */
    boolean clears(Choice choice) {
        return enough(choice, doubts)
                && model(choice)
                        .map(this::findings)
                        .filter(CureTrials::allClear)
                        .isPresent();
    }

    /**
     * The smallest change in whole steps, up to {@code most} of them, with which every gap clears; empty when none does.
     *
     * @param choice the choice with so many steps made
     */
    OptionalInt smallest(int most, IntFunction<Choice> choice) {
        Map<String, Double> asked = doubts;
        for (int search = 0; search < MOST_SEARCHES; search++) {
            Map<String, Double> looked = asked;
            OptionalDouble found = SmallestChange.find(0, 1, most, steps -> enough(choice.apply((int) steps), looked));
            if (found.isEmpty()) {
                return OptionalInt.empty();
            }
            int steps = (int) found.getAsDouble();
            List<Finding> findings = findings(model(choice.apply(steps)).orElseThrow());
            if (allClear(findings)) {
                return OptionalInt.of(steps);
            }
            // its own doubts are greater than those it was looked for with
            asked = doubts(findings);
        }
        return OptionalInt.empty();
    }

    /** Why a choice does not give every gap what is wanted: the gap that falls shortest. */
    String why(Choice choice) {
        Optional<Model> model = model(choice);
        if (model.isEmpty()) {
            return "Sizes like that can't be made.";
        }
        Optional<FitGaps.Entry> shortest = shortest(model.get(), doubts);
        if (shortest.isEmpty()) {
            return Sentences.worst(findings(model.get())).map(Finding::sentence).orElse("");
        }
        FitGaps.Entry entry = shortest.get();
        double doubt = doubt(entry, doubts);
        return "The " + Sentences.name(entry.kind(), entry.valves()) + " would be "
                + entry.gap().map(gap -> sentences.length(gap.leastMm())).orElse("none") + ", where "
                + sentences.length(entry.wanted().mm()) + " is wanted"
                + (doubt > 0 ? " and " + sentences.length(doubt) + " more for the doubt." : ".");
    }

    private boolean enough(Choice choice, Map<String, Double> doubts) {
        return model(choice).filter(model -> shortest(model, doubts).isEmpty()).isPresent();
    }

    private static boolean allClear(List<Finding> findings) {
        return findings.stream().allMatch(finding -> finding.verdict() == Verdict.CLEARS);
    }

    private List<Finding> findings(Model model) {
        double[] best = model.values();
        Gaps full = new Sweep().gaps(model.topEnd(best, false));
        Optional<Gaps> lean =
                model.banded() ? Optional.of(new Sweep().gaps(model.topEnd(best, true))) : Optional.empty();
        return new Findings(model, sentences).of(full, lean);
    }

    private static Optional<FitGaps.Entry> shortest(Model model, Map<String, Double> doubts) {
        Gaps gaps = new Sweep().gaps(model.topEnd(model.values(), false));
        return FitGaps.list(model.tried().book(), gaps).stream()
                .filter(entry -> shortage(entry, doubts) > 0)
                .max(Comparator.comparingDouble(entry -> shortage(entry, doubts)));
    }

    private static double doubt(FitGaps.Entry entry, Map<String, Double> doubts) {
        return doubts.getOrDefault(key(entry.kind(), entry.valves()), 0.0);
    }

    private static double shortage(FitGaps.Entry entry, Map<String, Double> doubts) {
        return entry.wanted().mm()
                + doubt(entry, doubts)
                - entry.gap().map(Gap::leastMm).orElse(Double.POSITIVE_INFINITY);
    }
}
