package gudgeon.rebuild.fasten;

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

    /** N·m that it leaves until the weakest gives way; below zero when it is too much. */
    public double inHandNm() {
        return tightening.inHandNm(torqueNm);
    }

    /** Whether everything bears it, even where friction is at its least. */
    public boolean holds() {
        return inHandNm() >= 0;
    }

    /** Whether bolt and thread bear it; a head that is pressed in a little only settles. */
    public boolean isBorneByBoltAndThread() {
        return tightening.bearsN().entrySet().stream()
                .filter(one -> one.getKey() != Limit.BEARING)
                .allMatch(one -> tightening.mostPreloadN(torqueNm) <= one.getValue() + 1e-6);
    }

    /** Span of pull, what each part bears, and what is left in hand, each a sentence. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(span());
        sentences.add("Bolt and seat bear: " + Sentence.list(bears()) + ".");
        sentences.add(verdict());
        return sentences;
    }

    /** The span of the pull that friction makes. */
    public String span() {
        return WrittenTorque.newtonMetres(torqueNm) + " on a thread that is " + lubricated + " pulls with "
                + kN(tightening.leastPreloadN(torqueNm)) + " to " + kN(tightening.mostPreloadN(torqueNm))
                + ", as friction will have it; usual is " + kN(tightening.usualPreloadN(torqueNm)) + ".";
    }

    /** Whether it may be used, and how much is in hand. */
    public String verdict() {
        String who = weakestWords(
                tightening.weakest(),
                tightening.seat().into(),
                tightening.seat().under());
        return holds()
                ? "It leaves " + WrittenTorque.newtonMetres(inHandNm()) + " in hand before " + who + "."
                : "It is " + WrittenTorque.newtonMetres(-inHandNm()) + " too much where friction is least: " + who
                        + " first.";
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

    private static String weakestWords(Limit limit, Optional<Material> into, Optional<Material> under) {
        return switch (limit) {
            case BOLT -> "the bolt is used to the full";
            case THREAD -> "the thread" + in(into) + " strips";
            case BEARING ->
                "the head is pressed into the " + under.map(Metal::words).orElse("metal");
        };
    }

    static String kN(double newtons) {
        return WrittenTorque.number(newtons / NEWTONS_PER_KN) + " kN";
    }
}
