package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How late the cam is against the book, all valves taken together, and whether that is in limits.
 *
 * @param lateDeg crank degrees, negative is earlier
 * @param limits how late it may be, in crank degrees
 * @param limitsFrom where the limits come from, in words
 * @param chances how likely it lies below, within and above them
 * @param toothDeg crank degrees of one tooth of the cam's sprocket, if the book says how many it has
 * @param agree whether the valves tell the same
 */
public record CamTimed(
        Quantity lateDeg,
        ToleranceInterval limits,
        String limitsFrom,
        Conformity chances,
        OptionalDouble toothDeg,
        boolean agree) {
    private static final double APART = 2;

    /** Of the valves that were read; empty where none was. */
    static Optional<CamTimed> of(Build build, List<ValveTiming> valves, List<Doubt> common) {
        if (valves.isEmpty()) {
            return Optional.empty();
        }
        Quantity late = together(valves, common);
        Optional<Expect> expect = expect(build.structure());
        ToleranceInterval limits = expect.map(span -> new ToleranceInterval(
                        span.atLeast().orElse(Double.NEGATIVE_INFINITY),
                        span.atMost().orElse(Double.POSITIVE_INFINITY)))
                .orElse(new ToleranceInterval(-CamTiming.TOLERANCE_DEG, CamTiming.TOLERANCE_DEG));
        String from = expect.isPresent() ? "the book's check allows" : "is usual (common practice, no source)";
        return Optional.of(new CamTimed(
                late, limits, from, Conformity.of(late, limits), CamTiming.toothDeg(build.book()), agree(valves)));
    }

    private static Optional<Expect> expect(Structure structure) {
        return structure.check(CamTiming.check(structure)).flatMap(Check::expect);
    }

    private static Quantity together(List<ValveTiming> valves, List<Doubt> common) {
        double share = 1.0 / valves.size();
        double own = 0;
        double value = 0;
        for (ValveTiming valve : valves) {
            value += share * valve.lateDeg().value();
            own += share * share * valve.ownDoubtDeg() * valve.ownDoubtDeg();
        }
        // a standard uncertainty as the half-width of what is anywhere within it
        return Quantity.stated(value, Math.sqrt(3 * own)).with(common.toArray(Doubt[]::new));
    }

    private static boolean agree(List<ValveTiming> valves) {
        for (ValveTiming one : valves) {
            for (ValveTiming other : valves) {
                double apart = Math.abs(one.lateDeg().value() - other.lateDeg().value());
                if (apart > APART * Math.hypot(one.ownDoubtDeg(), other.ownDoubtDeg())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether it is proved in limits, out of them, or neither. */
    public Zone zone() {
        return chances.zone();
    }

    /** Whole teeth by which it is late, negative early; 0 where less than half a tooth, or where teeth are not known. */
    public int teethLate() {
        return toothDeg.isPresent() ? (int) Math.round(lateDeg.value() / toothDeg.getAsDouble()) : 0;
    }

    /** What is found, and what to move which way and how far; sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        String late = Angle.late(lateDeg.value());
        all.add("The cam is " + late + ", give or take " + Angle.text(Angle.doubt(lateDeg)) + ", where "
                + Angle.text(limits.lower()) + " to " + Angle.text(limits.upper()) + " " + limitsFrom + ": " + verdict()
                + ".");
        if (!agree) {
            all.add(
                    "The valves do not tell the same, and a tooth of the drive moves all of them alike: look at the valve clearances,"
                            + " at a worn lobe, and whether it is the book's cam.");
        }
        all.addAll(new CamMove(this).sentences());
        return all;
    }

    private String verdict() {
        return switch (zone()) {
            case IN -> "in time, and proved";
            case OUT -> "out of time, and proved";
            case UNPROVEN -> "neither is proved";
        };
    }
}
