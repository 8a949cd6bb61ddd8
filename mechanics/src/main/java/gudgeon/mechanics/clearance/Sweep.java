package gudgeon.mechanics.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds the gaps of a top end over the whole cycle: the least values to 0.001 mm, their angles to 0.05 degrees. Where bodies
 * overlap, the nearest gap is the depth of the deepest point found.
 *
 * <p>A sweep holds scratch space that is used again by the next: use one per thread.
 */
public final class Sweep {
    /** Turning by hand starts from here, where no valve can reach the crown. */
    private static final double BOTTOM_DEG = 180;

    private final CrownSolid crown = new CrownSolid();
    private final CrownEdges edges = new CrownEdges(crown);
    private final CycleSearch search = new CycleSearch();
    private final List<GapToCrown> toCrown = new ArrayList<>();
    private final List<GapToWall> toWall = new ArrayList<>();

    /** All gaps of the top end. */
    public Gaps gaps(TopEnd topEnd) {
        set(topEnd);
        List<ValveGaps> valves = new ArrayList<>();
        for (int v = 0; v < topEnd.valves().size(); v++) {
            GapToCrown gap = toCrown.get(v);
            valves.add(new ValveGaps(
                    find(gap.of(CrownGap.BORE)),
                    find(gap.of(CrownGap.VALVE)),
                    find(gap.of(CrownGap.NEAREST)),
                    sideGap(gap),
                    find(toWall.get(v))));
        }
        List<PairGap> pairs = new ArrayList<>();
        for (int i = 0; i < valves.size(); i++) {
            for (int j = i + 1; j < valves.size(); j++) {
                pairs.add(new PairGap(i, j, find(between(topEnd, i, j))));
            }
        }
        Gap deck = find(new GapToHead(topEnd));
        List<Span> touching = touching(valves, pairs, deck);
        return new Gaps(valves, pairs, deck, tightForward(touching), tightBackward(touching));
    }

    /**
     * The least bore gap of one valve over the cycle, in mm: a figure for propagating doubt, found without allocating more than
     * the top end itself.
     *
     * @throws IndexOutOfBoundsException if there is no such valve
     */
    public double leastBoreGapMm(TopEnd topEnd, int valve) {
        set(topEnd);
        return search.least(toCrown.get(valve).of(CrownGap.BORE));
    }

    /**
     * How far two bodies are from meeting at some crank angles, in mm; negative where they overlap. Where they are farther apart than
     * {@code reachMm}, a figure above it that may be less than the gap.
     *
     * @param reachMm up to what gap the figures have to be exact, in mm
     * @throws IndexOutOfBoundsException if there is no such valve
     */
    public double[] approach(TopEnd topEnd, Meeting meeting, double[] thetaDeg, double reachMm) {
        set(topEnd);
        OverCycle gap;
        if (meeting instanceof Meeting.ValveAndCrown one) {
            gap = toCrown.get(one.valve()).of(CrownGap.BORE);
        } else if (meeting instanceof Meeting.TwoValves pair) {
            gap = between(topEnd, pair.first(), pair.second());
        } else {
            gap = new GapToHead(topEnd);
        }
        double[] found = new double[thetaDeg.length];
        for (int i = 0; i < found.length; i++) {
            double bound = gap.bound(thetaDeg[i]);
            found[i] = bound > reachMm ? bound : gap.exact(thetaDeg[i]);
        }
        return found;
    }

    /**
     * The gaps over the crank angle, for a plot.
     *
     * @param stepDeg angle between samples, above 0
     */
    public Curves curves(TopEnd topEnd, double stepDeg) {
        if (!(stepDeg > 0)) {
            throw new IllegalArgumentException("the step between samples must be above 0 degrees, got " + stepDeg);
        }
        set(topEnd);
        int samples = (int) Math.floor(720 / stepDeg + 1e-9) + 1;
        int valves = topEnd.valves().size();
        Curves curves = new Curves(
                new double[samples],
                new double[valves][samples],
                new double[valves][samples],
                new double[valves][samples],
                new double[valves][samples],
                new double[valves][samples],
                new double[valves][samples],
                new double[samples],
                new double[samples]);
        OverCycle deck = new GapToHead(topEnd);
        List<OverCycle> pairs = new ArrayList<>();
        for (int i = 0; i < valves; i++) {
            for (int j = i + 1; j < valves; j++) {
                pairs.add(between(topEnd, i, j));
            }
        }
        for (int n = 0; n < samples; n++) {
            double theta = n * stepDeg;
            curves.thetaDeg()[n] = theta;
            curves.deckMm()[n] = deck.exact(theta);
            curves.valveToValveMm()[n] =
                    pairs.stream().mapToDouble(pair -> pair.exact(theta)).min().orElse(Double.NaN);
            for (int v = 0; v < valves; v++) {
                GapToCrown gap = toCrown.get(v);
                curves.liftMm()[v][n] = gap.lift(theta);
                curves.boreMm()[v][n] = finite(gap.of(CrownGap.BORE).exact(theta));
                curves.valveMm()[v][n] = finite(gap.of(CrownGap.VALVE).exact(theta));
                curves.nearestMm()[v][n] = finite(gap.of(CrownGap.NEAREST).exact(theta));
                curves.sideMm()[v][n] = finite(gap.of(CrownGap.SIDE).exact(theta));
                curves.wallMm()[v][n] = finite(toWall.get(v).exact(theta));
            }
        }
        return curves;
    }

    private static double finite(double value) {
        return Double.isInfinite(value) ? Double.NaN : value;
    }

    private void set(TopEnd topEnd) {
        crown.set(topEnd.crown());
        edges.trace();
        for (int v = 0; v < topEnd.valves().size(); v++) {
            Valve valve = topEnd.valves().get(v);
            if (v == toCrown.size()) {
                toCrown.add(new GapToCrown(crown, edges, valve, topEnd.crank()));
                toWall.add(new GapToWall(valve));
            }
            toCrown.get(v).set(valve, topEnd.crank(), topEnd.gasketMm());
            toWall.get(v).set(valve, topEnd.gasketMm(), topEnd.boreDiameterMm());
        }
    }

    static GapBetweenValves between(TopEnd topEnd, int i, int j) {
        Valve first = topEnd.valves().get(i);
        Valve second = topEnd.valves().get(j);
        GapBetweenValves between = new GapBetweenValves(first, second);
        between.set(first, second, topEnd.gasketMm());
        return between;
    }

    private Optional<Gap> sideGap(GapToCrown gap) {
        Gap side = find(gap.of(CrownGap.SIDE));
        return side.leastMm() < Double.POSITIVE_INFINITY ? Optional.of(side) : Optional.empty();
    }

    private Gap find(OverCycle gap) {
        double least = search.least(gap);
        double at = search.leastAt;
        if (least == Double.POSITIVE_INFINITY) {
            return new Gap(least, 0, new Place(0, 0, 0), List.of());
        }
        least = Math.min(least, gap.exact(at));
        Place place = gap.place();
        return new Gap(least, at, place, search.negativeSpans(gap, least));
    }

    private static List<Span> touching(List<ValveGaps> valves, List<PairGap> pairs, Gap deck) {
        List<Span> all = new ArrayList<>(deck.touching());
        for (ValveGaps valve : valves) {
            all.addAll(valve.bore().touching());
            all.addAll(valve.valve().touching());
            all.addAll(valve.nearest().touching());
            all.addAll(valve.wall().touching());
            valve.side().ifPresent(side -> all.addAll(side.touching()));
        }
        pairs.forEach(pair -> all.addAll(pair.gap().touching()));
        return all;
    }

    private static OptionalDouble tightForward(List<Span> touching) {
        return touching.stream().mapToDouble(span -> CycleSearch.wrap(span.fromDeg() - BOTTOM_DEG)).min().stream()
                .map(turned -> CycleSearch.wrap(turned + BOTTOM_DEG))
                .findFirst();
    }

    private static OptionalDouble tightBackward(List<Span> touching) {
        return touching.stream().mapToDouble(span -> CycleSearch.wrap(BOTTOM_DEG - span.toDeg())).min().stream()
                .map(turned -> CycleSearch.wrap(BOTTOM_DEG - turned))
                .findFirst();
    }
}
