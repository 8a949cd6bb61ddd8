package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.CrownGap;
import gudgeon.mechanics.clearance.Follower;
import gudgeon.mechanics.metrology.MonteCarlo;
import gudgeon.mechanics.metrology.Propagation;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.book.WantedGaps;
import java.util.List;
import java.util.Locale;

/** Propagates the doubts of all sizes to one gap by drawing them many times. */
final class Simulator {
    /** Low points up to this much above the least are followed, in mm. */
    private static final double REACH_MM = 0.6;

    private final Model model;
    private final Sentences sentences;

    Simulator(Model model, Sentences sentences) {
        this.model = model;
        this.sentences = sentences;
    }

    Simulation run(GapKind kind, String valve, long seed, int greatestDraws) {
        List<String> ids =
                model.tried().book().valves().stream().map(ValveEntry::id).toList();
        int index = ids.indexOf(valve);
        if (index < 0) {
            throw new UnknownChoice(
                    List.of("The book has no valve '" + valve + "'; it has '" + String.join("', '", ids) + "'."));
        }
        CrownGap gap = crownGap(kind);
        Propagation found;
        try {
            found = new MonteCarlo(seed, Runtime.getRuntime().availableProcessors())
                    .untilStable(
                            model.quantities(),
                            () -> {
                                Follower follower =
                                        new Follower(model.topEnd(model.values(), false), index, gap, REACH_MM);
                                return x -> follower.leastMm(model.topEnd(x, false));
                            },
                            greatestDraws);
        } catch (ArithmeticException | IllegalArgumentException none) {
            throw new UnknownChoice(List.of("The " + kind.term() + " of the " + valve
                    + " can't be drawn: it does not exist for every size within the doubts."));
        }
        WantedGaps.OfValve wanted = model.tried().book().wanted().valves().get(valve);
        double ask = wanted == null ? 0 : wanted(wanted, gap);
        double touches = found.shareBelow(0);
        double falls = found.shareBelow(ask);
        String sentence = "In " + found.draws() + " draws of all sizes within their doubts, the " + kind.term()
                + " of the "
                + valve + " lay between " + sentences.length(found.interval().low()) + " and "
                + sentences.length(found.interval().high()) + " in 95 %; it touched in " + percent(touches)
                + " and fell short of " + sentences.length(ask) + " in " + percent(falls) + ".";
        return new Simulation(
                kind,
                valve,
                found.draws(),
                found.stable(),
                found.mean(),
                found.standardUncertainty(),
                found.interval().low(),
                found.interval().high(),
                touches,
                falls,
                sentence);
    }

    private static CrownGap crownGap(GapKind kind) {
        return switch (kind) {
            case BORE -> CrownGap.BORE;
            case VALVE -> CrownGap.VALVE;
            case NEAREST -> CrownGap.NEAREST;
            case SIDE -> CrownGap.SIDE;
            default ->
                throw new UnknownChoice(
                        List.of("Only gaps between a valve and the crown are drawn by simulation, not the "
                                + kind.term() + "."));
        };
    }

    private static double wanted(WantedGaps.OfValve wanted, CrownGap gap) {
        return switch (gap) {
            case BORE -> wanted.bore().mm();
            case VALVE -> wanted.valve().mm();
            case NEAREST -> wanted.nearest().mm();
            case SIDE -> wanted.side().mm();
        };
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
