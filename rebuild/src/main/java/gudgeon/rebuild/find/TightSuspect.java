package gudgeon.rebuild.find;

import gudgeon.mechanics.diagnose.FeltAngle;
import gudgeon.mechanics.diagnose.TightPattern;
import gudgeon.mechanics.diagnose.TightPattern.Pair;
import gudgeon.rebuild.book.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A suspect of a tight spot.
 *
 * @param suspect the suspect
 * @param nature what makes it tight
 * @param valve id of the valve that meets the crown; empty where it is no one valve
 * @param teeth teeth by which the cam is late; 0 for none, negative for early
 * @param turned whether the piston is turned by half a turn
 * @param pattern at which angles it shows
 * @param located whether its angles follow from this engine's sizes
 */
record TightSuspect(
        Suspect suspect,
        Nature nature,
        String valve,
        int teeth,
        boolean turned,
        TightPattern pattern,
        boolean located) {
    /** Quantiles one standard deviation to either side of a normal distribution's median. */
    private static final double BELOW = 0.1587;

    private static final double MIDDLE = 0.5;
    private static final double ABOVE = 0.8413;
    private static final double BOTTOM_DEG = 180;
    private static final double CLOSE = 1;
    private static final double NEAR = 2;
    private static final double FAR = 3;

    /**
     * Where it shows turning one way; empty where that does not follow from the sizes. Median and half the middle 68 % of the angles
     * in the order in which turning reaches them, since a mistaken size may move it to quite another place.
     */
    Optional<Place> place(boolean forward) {
        if (!located) {
            return Optional.empty();
        }
        List<Pair> sorted = pattern.pairs().stream()
                .sorted(Comparator.comparingDouble(pair -> turned(pair, forward)))
                .toList();
        double half = (turned(sorted, forward, ABOVE) - turned(sorted, forward, BELOW)) / 2;
        double median = turned(sorted, forward, MIDDLE);
        double deg = (BOTTOM_DEG + (forward ? median : -median)) % FeltAngle.CYCLE_DEG;
        return Optional.of(new Place(deg < 0 ? deg + FeltAngle.CYCLE_DEG : deg, half));
    }

    /** How far the crank is turned from bottom dead centre until it shows, in degrees. */
    private static double turned(Pair pair, boolean forward) {
        double way = forward ? pair.forwardDeg() - BOTTOM_DEG : BOTTOM_DEG - pair.backwardDeg();
        return way < 0 ? way + FeltAngle.CYCLE_DEG : way;
    }

    private static double turned(List<Pair> sorted, boolean forward, double share) {
        double whole = sorted.stream().mapToDouble(Pair::weight).sum();
        double sum = 0;
        for (Pair pair : sorted) {
            sum += pair.weight();
            if (sum >= share * whole) {
                return turned(pair, forward);
            }
        }
        return turned(sorted.get(sorted.size() - 1), forward);
    }

    /** The same with how it shows in words. */
    TightSuspect shown(String shows) {
        Suspect told = new Suspect(
                suspect.id(),
                suspect.name(),
                suspect.odds(),
                suspect.basis(),
                suspect.reach(),
                shows,
                suspect.working());
        return new TightSuspect(told, nature, valve, teeth, turned, pattern, located);
    }

    /** An angle and its standard uncertainty, in degrees. */
    record Place(double deg, double doubtDeg) {
        String words() {
            return Unit.DEGREES.figure(round(deg)) + " ± " + Unit.DEGREES.figure(round(doubtDeg));
        }

        private static double round(double deg) {
            return Math.rint(deg * 10) / 10;
        }
    }

    /** How well it explains the angles felt, each a sentence. */
    List<String> explains(List<FeltAngle> felt) {
        List<String> all = new ArrayList<>();
        for (FeltAngle reading : felt) {
            place(reading.forward()).ifPresent(place -> all.add(explains(reading, place)));
        }
        if (all.isEmpty() && !felt.isEmpty()) {
            all.add(
                    nature == Nature.LOOSE || nature == Nature.UNLISTED
                            ? "It may show at any angle, so that the angles felt say little of it."
                            : "Where it shows does not follow from the sizes; the angles felt count by how they lie to each other.");
        }
        return all;
    }

    private String explains(FeltAngle reading, Place place) {
        double circle = pattern.everyTurn() ? FeltAngle.TURN_DEG : reading.periodDeg();
        double off = Math.abs(Math.IEEEremainder(reading.angleDeg() - place.deg(), circle));
        double doubts = off / Math.hypot(reading.doubtDeg(), place.doubtDeg());
        String fits =
                doubts <= CLOSE ? "fits well" : doubts <= NEAR ? "fits" : doubts <= FAR ? "fits badly" : "does not fit";
        return "Turning " + (reading.forward() ? "forward" : "backward") + " it would show at " + place.words()
                + "; felt at " + new Place(reading.angleDeg(), reading.doubtDeg()).words() + " with the slack, which "
                + fits + ".";
    }
}
