package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Size;
import java.util.List;

/**
 * A fit at the best estimates alone, without doubts and cures, for trying many.
 *
 * @param gaps the least gaps, in the order of a trial fit's findings; a side gap that does not exist is left out
 * @param figures the figures, without doubt
 */
public record QuickFit(List<LeastGap> gaps, List<Figure> figures) {
    public QuickFit {
        gaps = List.copyOf(gaps);
        figures = List.copyOf(figures);
    }

    /**
     * A gap's least value.
     *
     * @param kind which gap
     * @param valves ids of the valves it belongs to
     * @param leastMm the least value over the cycle
     * @param wantedMm the least gap wanted
     */
    public record LeastGap(GapKind kind, List<String> valves, double leastMm, double wantedMm) {
        public LeastGap {
            valves = List.copyOf(valves);
        }

        /** What a fitter calls it, such as "exhaust bore gap". */
        public String label() {
            return valves.size() == 1 ? valves.get(0) + " " + kind.term() : kind.term();
        }
    }

    /**
     * Tries a choice of a book's parts at the best estimates.
     *
     * @throws UnknownChoice as {@link TrialFit#of}
     */
    public static QuickFit of(Geometry book, Choice choice) {
        try {
            Model model = new Model(Tried.find(book.each(QuickFit::exact), choice));
            List<LeastGap> gaps =
                    FitGaps.list(model.tried().book(), new Sweep().gaps(model.topEnd(model.values(), false))).stream()
                            .filter(entry -> entry.gap().isPresent())
                            .map(entry -> new LeastGap(
                                    entry.kind(),
                                    entry.valves(),
                                    entry.gap().orElseThrow().leastMm(),
                                    entry.wanted().mm()))
                            .toList();
            return new QuickFit(gaps, new Figures(model).all());
        } catch (IllegalArgumentException impossible) {
            throw Impossible.of(book, choice, impossible);
        }
    }

    private static Size exact(Size size) {
        return size.as(Quantity.exact(size.value()));
    }
}
