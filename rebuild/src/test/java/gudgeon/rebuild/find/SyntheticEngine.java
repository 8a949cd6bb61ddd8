package gudgeon.rebuild.find;

import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;

/**
 * Engines with a known fault. Every size is drawn within its doubt and the top end is turned until metal meets metal, so that where an
 * engine goes tight is found by the solid geometry and not by what is tested.
 */
final class SyntheticEngine {
    private static final int MOST_TRIES = 150;

    private final AsMeasured parts;
    private final RandomGenerator random;
    private final Sweep sweep = new Sweep();

    /** Where an engine goes tight, and whether every turn. */
    record Tight(double forwardDeg, double backwardDeg, boolean everyTurn) {}

    SyntheticEngine(AsMeasured parts, RandomGenerator random) {
        this.parts = parts;
        this.random = random;
    }

    /** An engine that has the fault; empty where none was found that goes tight by it. */
    Optional<Tight> with(TightSuspect fault) {
        return switch (fault.nature()) {
            case VALVE, HEAD -> located(fault);
            case PLUG -> Optional.of(symmetric(0, 35, true));
            case COMPRESSION -> Optional.of(symmetric(5, 120, false));
            case RING -> Optional.of(symmetric(0, 180, true));
            case CRANK, DRIVE -> {
                double at = random.nextDouble(360);
                double half = random.nextDouble(30);
                yield Optional.of(new Tight(at - half, at + half, true));
            }
            case LOOSE, UNLISTED ->
                Optional.of(new Tight(random.nextDouble(720), random.nextDouble(720), random.nextBoolean()));
        };
    }

    private Tight symmetric(double least, double most, boolean everyTurn) {
        double from = random.nextDouble(least, most);
        return new Tight(-from, from, everyTurn);
    }

    private Optional<Tight> located(TightSuspect fault) {
        for (int i = 0; i < MOST_TRIES; i++) {
            Optional<Tight> tight = drawn(fault);
            if (tight.isPresent()) {
                return tight;
            }
        }
        return Optional.empty();
    }

    private Optional<Tight> drawn(TightSuspect fault) {
        Map<String, Double> sizes = new HashMap<>();
        parts.geometry().sizes().forEach((path, size) -> sizes.put(path, drawn(size)));
        if (random.nextDouble() < 0.1) {
            // one part is taller or lower than anybody thinks
            String gasket = parts.geometry().gaskets().get(0).pressed().path();
            sizes.merge(gasket, random.nextGaussian(), Double::sum);
        }
        try {
            Geometry real = parts.geometry().with(sizes);
            Choice choice = new Choice(
                    parts.choice().pistonId(),
                    parts.choice().gasketId(),
                    fault.teeth(),
                    OptionalDouble.empty(),
                    fault.turned(),
                    Map.of());
            TopEnd topEnd = TrialFit.topEnd(real, choice);
            Gaps gaps = sweep.gaps(topEnd);
            return meets(fault, gaps)
                    ? Optional.of(new Tight(
                            gaps.tightForwardDeg().orElseThrow(),
                            gaps.tightBackwardDeg().orElseThrow(),
                            fault.pattern().everyTurn()))
                    : Optional.empty();
        } catch (UnknownChoice | IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    private double drawn(Size size) {
        return size.value() + size.quantity().standardUncertainty() * random.nextGaussian();
    }

    private boolean meets(TightSuspect fault, Gaps gaps) {
        if (fault.nature() == Nature.HEAD) {
            return gaps.deck().leastMm() < 0;
        }
        boolean crown = false;
        for (int v = 0; v < gaps.valves().size(); v++) {
            boolean touches = gaps.valves().get(v).bore().leastMm() < 0;
            crown |= touches
                    && (fault.valve().isEmpty()
                            || fault.valve()
                                    .equals(parts.geometry().valves().get(v).id()));
        }
        boolean pair = gaps.valveToValve().stream().anyMatch(one -> one.gap().leastMm() < 0);
        boolean pairCounts = fault.valve().isEmpty();
        boolean crownCounts = !fault.suspect().id().equals("valve-to-valve");
        return (crown && crownCounts) || (pair && pairCounts);
    }
}
