package gudgeon.rebuild.timing;

import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.timing.Disc;
import gudgeon.mechanics.timing.StopReadings;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Proving;
import gudgeon.rebuild.journal.Proving.StopTouched;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Where true top dead centre is on the disc, by the two readings at a stop.
 *
 * @param number number of the entry that tells the readings, 0 if they come from none
 * @param read the readings
 * @param crank the engine's crank, if its sizes are known
 * @param offDeg what the disc reads at top dead centre, in degrees in [-180, 180)
 */
public record TopDeadCentre(long number, StopReadings read, Optional<Crank> crank, Quantity offDeg) {
    /** A stop that lets the piston come so near to the top tells its place badly: common practice, no source. */
    private static final double NEAR_DEG = 10;

    /** Of two readings. */
    public static TopDeadCentre of(long number, StopReadings read, Optional<Crank> crank, TimingInstruments with) {
        double top = crank.map(read::topDeg).orElseGet(read::middleDeg);
        Doubt[] doubts = with.ofDisc(2).toArray(Doubt[]::new);
        return new TopDeadCentre(number, read, crank, Quantity.of(Disc.shortest(0, top), doubts));
    }

    /** By the last readings of a build; empty where there are none that can be used. */
    static Optional<TopDeadCentre> of(Build build, TimingInstruments with) {
        List<Told<StopTouched>> told = build.told(StopTouched.class, Proving.TOP_DEAD_CENTRE);
        if (told.isEmpty()) {
            return Optional.empty();
        }
        Told<StopTouched> last = told.get(told.size() - 1);
        StopTouched fact = last.fact();
        return fact.forwardDeg() == fact.backwardDeg()
                ? Optional.empty()
                : Optional.of(of(
                        last.number(),
                        new StopReadings(fact.forwardDeg(), fact.backwardDeg()),
                        BookedCrank.of(build.book()),
                        with));
    }

    /** Whether the disc stands right as far as the readings can tell. */
    public boolean isSet() {
        return Math.abs(offDeg.value()) <= Angle.doubt(offDeg);
    }

    /** What the disc must read against the stop, turning backward, once it is set; degrees in [0, 360). */
    public double backwardWhenSetDeg() {
        return Disc.reading(read.backwardDeg() - offDeg.value());
    }

    /** The same turning forward. */
    public double forwardWhenSetDeg() {
        return Disc.reading(read.forwardDeg() - offDeg.value());
    }

    /** Where it is and what to do, sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        all.add("At true top dead centre the disc reads " + Angle.text(Disc.reading(offDeg.value())) + ", give or take "
                + Angle.text(Angle.doubt(offDeg)) + ".");
        if (isSet()) {
            all.add("The disc stands right as far as these readings can tell: leave it.");
        } else {
            all.add(
                    "Hold the piston against the stop turning backward, and move the pointer or the disc, not the crank, by "
                            + Angle.text(Math.abs(offDeg.value())) + " until it reads "
                            + Angle.text(backwardWhenSetDeg())
                            + " there in place of " + Angle.text(read.backwardDeg())
                            + ". Turning forward it must then read "
                            + Angle.text(forwardWhenSetDeg()) + ".");
        }
        if (read.halfDeg() < NEAR_DEG) {
            all.add("The stop lets the piston come within " + Angle.text(read.halfDeg())
                    + " of the top, where a small slip counts much. Let it stand farther in and read again.");
        }
        if (read.halfDeg() > 90) {
            all.add(
                    "The stop holds the crank more than a quarter turn away. See that the two readings are not exchanged: turning"
                            + " forward it is met before top dead centre.");
        }
        return all;
    }

    /** How it was worked out, sentences. */
    public List<String> working() {
        List<String> all = new ArrayList<>();
        all.add("Half way from " + Angle.text(read.forwardDeg()) + " on to " + Angle.text(read.backwardDeg()) + " is "
                + Angle.text(read.middleDeg()) + ".");
        crank.filter(one -> one.pinOffsetMm() != 0)
                .ifPresent(one -> all.add(String.format(
                        Locale.ROOT,
                        "The gudgeon pin's offset of %.2f mm moves true top dead centre by %.2f° from there.",
                        one.pinOffsetMm(),
                        Disc.shortest(read.middleDeg(), read.topDeg(one)))));
        crank.ifPresent(
                one -> all.add("The stop held the piston " + Angle.mm(read.travelMm(one)) + " below its highest."));
        return all;
    }
}
