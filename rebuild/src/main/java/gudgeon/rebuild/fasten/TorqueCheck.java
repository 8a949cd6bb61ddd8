package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Head;
import gudgeon.mechanics.bolt.Limit;
import gudgeon.mechanics.bolt.Tightening;
import gudgeon.mechanics.limits.Material;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a torque does to a fastener as it is put together.
 *
 * @param tightening the fastener and what holds it
 * @param torqueNm the torque, N·m, above 0
 * @param lubricated how its thread is, in words
 */
public record TorqueCheck(Tightening tightening, double torqueNm, String lubricated) {
    private static final double NEWTONS_PER_KN = 1000;

    /** How a torque stands to what bolt and thread bear. */
    public enum Outcome {
        /** They bear it even where friction is least. */
        IN_HAND("in hand"),
        /** They bear it at the usual friction, and not where it is least. */
        AS_USUAL("in hand at the usual friction only"),
        /** They don't bear it at the usual friction. */
        TOO_MUCH("too much");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /** How it stands to what bolt and thread bear; a head that is pressed in a little only settles, and is told beside it. */
    public Outcome outcome() {
        if (inHandNm(tightening.friction().least()) >= 0) {
            return Outcome.IN_HAND;
        }
        return inHandNm(tightening.friction().usual()) >= 0 ? Outcome.AS_USUAL : Outcome.TOO_MUCH;
    }

    /** N·m that it leaves until bolt or thread gives way: at the least friction where that is in hand, else at the usual one. */
    public double inHandNm() {
        return outcome() == Outcome.IN_HAND
                ? inHandNm(tightening.friction().least())
                : inHandNm(tightening.friction().usual());
    }

    private double inHandNm(double friction) {
        // a torque that was worked out lies on the limit itself
        double left = tightening.damagedAtNm(friction) - torqueNm;
        return Math.abs(left) < 1e-9 ? 0 : left;
    }

    /** Whether nothing is against it: bolt and thread bear it whatever the friction, and the head is not pressed in. */
    public boolean holds() {
        return outcome() == Outcome.IN_HAND && settling().isEmpty();
    }

    /** Whether bolt and thread bear it even where friction is least; a head that is pressed in a little only settles. */
    public boolean isBorneByBoltAndThread() {
        return outcome() == Outcome.IN_HAND;
    }

    /** Span of pull, what each part bears, and what is left in hand, each a sentence. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(span());
        sentences.add("Bolt and seat bear: " + Sentence.list(bears()) + ".");
        sentences.add(verdict());
        settling().ifPresent(sentences::add);
        return sentences;
    }

    /** The span of the pull that friction makes. */
    public String span() {
        return WrittenTorque.newtonMetres(torqueNm) + " on a thread that is " + lubricated + " pulls with "
                + kN(tightening.leastPreloadN(torqueNm)) + " to " + kN(tightening.mostPreloadN(torqueNm))
                + ", as friction will have it; usual is " + kN(tightening.usualPreloadN(torqueNm)) + ".";
    }

    /** Whether bolt and thread bear it, and how much is in hand. */
    public String verdict() {
        double least = tightening.friction().least();
        return switch (outcome()) {
            case IN_HAND ->
                "It leaves " + WrittenTorque.newtonMetres(inHandNm()) + " in hand before " + gives(least)
                        + ", even where friction is least.";
            case AS_USUAL ->
                "At the usual friction it leaves " + WrittenTorque.newtonMetres(inHandNm()) + " in hand before "
                        + gives(tightening.friction().usual()) + "; on the slickest thread it would be "
                        + WrittenTorque.newtonMetres(-inHandNm(least)) + " too much. Up to "
                        + WrittenTorque.newtonMetres(tightening.damagedAtNm(least))
                        + " it is safe whatever the friction.";
            case TOO_MUCH ->
                "It is " + WrittenTorque.newtonMetres(-inHandNm()) + " too much at the usual friction: "
                        + gives(tightening.friction().usual()) + " first.";
        };
    }

    /** Whether the head is pressed into what lies under it, which loosens the joint; empty where it is not. */
    public Optional<String> settling() {
        double soft = tightening.pressedInAtNm().orElse(Double.POSITIVE_INFINITY);
        if (torqueNm <= soft) {
            return Optional.empty();
        }
        boolean sure = torqueNm > tightening.surelyPressedInAtNm().orElse(Double.POSITIVE_INFINITY);
        String metal = tightening.seat().under().map(Metal::words).orElse("metal");
        return Optional.of(head() + (sure ? " is pressed into the " : " may be pressed into soft ") + metal + " from "
                + WrittenTorque.newtonMetres(soft)
                + " on, and the joint then settles and loosens: "
                + (tightening.bolt().head() == Head.WASHER
                        ? "use a larger washer."
                        : "put a hard washer under it, and it bears more."));
    }

    /** Which of bolt, thread and head sets the most that a torque may be, and what would let it be more. */
    public static String setBy(Tightening tightening) {
        return switch (tightening.weakest()) {
            case BOLT -> "The bolt sets it.";
            case THREAD -> "The thread" + in(tightening.seat().into()) + " sets it, for it strips first.";
            case BEARING ->
                "The metal under the head sets it; bolt and thread would bear more."
                        + (tightening.bolt().head() == Head.HEXAGON
                                ? " With a hard washer under the head it may be "
                                        + WrittenTorque.newtonMetres(
                                                tightening.onWasher().mostNm()) + "."
                                : "");
        };
    }

    private String head() {
        return switch (tightening.bolt().head()) {
            case HEXAGON -> "A bare hexagon head";
            case SOCKET -> "A socket head";
            case CHEESE -> "A cheese head";
            case PAN -> "A pan head";
            case FLANGE -> "A flanged head";
            case WASHER -> "A washer";
        };
    }

    private String gives(double friction) {
        return tightening.damaged(friction) == Limit.BOLT
                ? "the bolt is used to the full"
                : "the thread" + in(tightening.seat().into()) + " strips";
    }

    private List<String> bears() {
        return tightening.bearsN().entrySet().stream()
                .map(one -> name(one.getKey()) + " " + kN(one.getValue()))
                .toList();
    }

    private String name(Limit limit) {
        return switch (limit) {
            case BOLT ->
                "the bolt of class " + tightening.bolt().strength().designation() + " at 90 % of its yield strength";
            case THREAD -> "the thread" + in(tightening.seat().into());
            case BEARING ->
                "the metal under the head" + in(tightening.seat().under()).replaceFirst(" in ", ", ");
        };
    }

    private static String in(Optional<Material> metal) {
        return metal.map(one -> " in " + Metal.words(one)).orElse("");
    }

    static String kN(double newtons) {
        return WrittenTorque.number(newtons / NEWTONS_PER_KN) + " kN";
    }
}
