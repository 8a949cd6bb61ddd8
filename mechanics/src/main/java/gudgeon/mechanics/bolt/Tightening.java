package gudgeon.mechanics.bolt;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How tight a fastener may be: the weakest of the bolt, the thread it is screwed into and the metal under its head, with the span of
 * preload that friction makes. Bolt and thread are kept whole at the least friction, where a torque pulls hardest, for what they
 * suffer stays; a head that is pressed in only lets the joint settle, and is kept from it at the usual friction.
 *
 * @param bolt the fastener
 * @param seat what holds it
 * @param friction friction as it is put together
 */
public record Tightening(Bolt bolt, Seat seat, Friction friction) {
    /** Share of the yield strength that VDI 2230, 5.4.3, tightens a bolt to. */
    private static final double OF_YIELD = 0.9;

    /** Preload in N that each part bears, as far as it is known. */
    public Map<Limit, Double> bearsN() {
        Map<Limit, Double> bears = new EnumMap<>(Limit.class);
        bears.put(Limit.BOLT, bolt.preloadAtYieldN(OF_YIELD, friction.least()));
        put(bears, Limit.THREAD, seat.stripsAtN(bolt));
        put(bears, Limit.BEARING, seat.pressedInAtN(bolt));
        return bears;
    }

    /** What gives way at the least torque. */
    public Limit weakest() {
        return bearsN().keySet().stream()
                .min(Comparator.comparingDouble(this::mostNm))
                .orElseThrow();
    }

    /** Greatest torque in N·m that all of them bear, each at the friction that it is reckoned with. */
    public double mostNm() {
        return mostNm(weakest());
    }

    /**
     * Greatest torque in N·m that one of them bears: bolt and thread at the least friction, the metal under the head at the usual one.
     *
     * @throws IllegalArgumentException when it is not known what that one bears
     */
    public double mostNm(Limit limit) {
        Double bears = bearsN().get(limit);
        if (bears == null) {
            throw new IllegalArgumentException("it is not known what " + limit + " bears");
        }
        return bears * bolt.torquePerN(limit == Limit.BEARING ? friction.usual() : friction.least());
    }

    /** The same fastener with a washer of ISO 7089 that is not of soft metal under its head. */
    public Tightening onWasher() {
        return new Tightening(new Bolt(bolt.thread(), bolt.strength(), Head.WASHER), seat, friction);
    }

    /**
     * Torque in N·m at which the bolt is used to the full or a thread strips, whichever is first, at a friction. What lies under the
     * head is left out: pressed in, it lets the joint settle, and nothing breaks.
     *
     * @param coefficient coefficient of friction, 0 to 1
     */
    public double damagedAtNm(double coefficient) {
        double bolted = bolt.preloadAtYieldN(OF_YIELD, coefficient);
        return Math.min(bolted, seat.stripsAtN(bolt).orElse(bolted)) * bolt.torquePerN(coefficient);
    }

    /** Which of bolt and thread that is. */
    public Limit damaged(double coefficient) {
        double bolted = bolt.preloadAtYieldN(OF_YIELD, coefficient);
        return seat.stripsAtN(bolt).orElse(bolted) < bolted ? Limit.THREAD : Limit.BOLT;
    }

    /** Torque in N·m from which the head is pressed into metal of the weaker grade, at the usual friction; empty where it is not known. */
    public OptionalDouble pressedInAtNm() {
        return usualNm(seat.pressedInAtN(bolt));
    }

    /** Torque in N·m from which the head is pressed in whatever grade the metal is, at the usual friction; empty where it is not known. */
    public OptionalDouble surelyPressedInAtNm() {
        return usualNm(seat.surelyPressedInAtN(bolt));
    }

    private OptionalDouble usualNm(OptionalDouble newtons) {
        return newtons.isEmpty()
                ? newtons
                : OptionalDouble.of(newtons.getAsDouble() * bolt.torquePerN(friction.usual()));
    }

    /** By how many N·m a torque stays below what all of them bear; below zero when it does not. */
    public double inHandNm(double torqueNm) {
        return mostNm() - torqueNm;
    }

    /** Least preload in N that a torque in N·m makes, at the most friction. */
    public double leastPreloadN(double torqueNm) {
        return bolt.preloadN(torqueNm, friction.most());
    }

    /** Usual preload in N that a torque in N·m makes. */
    public double usualPreloadN(double torqueNm) {
        return bolt.preloadN(torqueNm, friction.usual());
    }

    /** Greatest preload in N that a torque in N·m makes, at the least friction. */
    public double mostPreloadN(double torqueNm) {
        return bolt.preloadN(torqueNm, friction.least());
    }

    /** Torque in N·m at another friction that makes the usual preload of a torque meant for this one. */
    public double sameAt(Friction other, double torqueNm) {
        return usualPreloadN(torqueNm) * bolt.torquePerN(other.usual());
    }

    private static void put(Map<Limit, Double> bears, Limit limit, OptionalDouble value) {
        value.ifPresent(newtons -> bears.put(limit, newtons));
    }
}
