package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.SlottedNut;
import gudgeon.mechanics.bolt.Tightening;
import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How tight a hole's fastener is to be: the maker's figure, or one worked out and marked so.
 *
 * @param joint the joint as the build has it
 * @param hole one of its holes
 * @param maker the maker's figure, if the book has it
 * @param reckoned what bolt, thread and seat bear as the joint is put together; empty where the thread is not known
 * @param assumed what had to be assumed for that, each a sentence
 */
public record HoleTorque(
        JointNow joint, HoleNow hole, Optional<Size> maker, Optional<Tightening> reckoned, List<String> assumed) {
    private static final SlottedNut SIX = new SlottedNut(6);

    public HoleTorque {
        assumed = List.copyOf(assumed);
    }

    /** That of a hole. */
    public static HoleTorque of(JointNow joint, HoleNow hole) {
        HoleTightening worked = new HoleTightening(joint, hole);
        return new HoleTorque(
                joint,
                hole,
                hole.book().torque().or(() -> joint.book().torque()),
                worked.as(worked.lubricationNow()),
                worked.assumed());
    }

    /** Those of all holes of a joint, in its order. */
    public static List<HoleTorque> all(JointNow joint) {
        return joint.holes().stream().map(hole -> of(joint, hole)).toList();
    }

    /** Those of all holes of a joint of a build; none where the book does not have the joint. */
    public static List<HoleTorque> all(Build build, String joint) {
        return JointNow.of(build, joint).map(HoleTorque::all).orElse(List.of());
    }

    /** The torque to aim for, in N·m; empty where neither the maker gave one nor one can be worked out. */
    public OptionalDouble wantedNm() {
        return maker.isPresent()
                ? OptionalDouble.of(maker.get().value())
                : reckoned.map(one -> OptionalDouble.of(one.mostNm())).orElse(OptionalDouble.empty());
    }

    /** Whether it is worked out because the maker gave none. */
    public boolean isComputed() {
        return maker.isEmpty() && reckoned.isPresent();
    }

    /** By how much it may be missed either way, in N·m: what the maker states, else a twentieth of it (common practice, no source). */
    public double withinNm() {
        return Math.max(
                maker.map(size -> 2 * size.quantity().standardUncertainty()).orElse(0.0),
                0.05 * wantedNm().orElse(0));
    }

    /** What is on the thread, as far as anybody said: the journal, else as the maker means his figure. */
    public Optional<Lubrication> lubricated() {
        return joint.lubricated().or(() -> joint.book().lubricated());
    }

    /** What the wanted torque does to bolt, thread and seat as the joint is put together. */
    public Optional<TorqueCheck> check() {
        return reckoned.filter(one -> wantedNm().orElse(0) > 0)
                .map(one -> new TorqueCheck(
                        one, wantedNm().orElseThrow(), worked().lubricationNow().words()));
    }

    /** The same pull on the thread as it is now, in N·m, where the maker means his figure for another; empty where it is the same. */
    public OptionalDouble asItIsNm() {
        Lubrication now = worked().lubricationNow();
        Optional<Lubrication> meant = joint.book().lubricated().filter(one -> one != now);
        if (maker.isEmpty() || meant.isEmpty()) {
            return OptionalDouble.empty();
        }
        return worked().as(meant.get())
                .map(one -> OptionalDouble.of(
                        one.sameAt(Slickness.of(now), maker.get().value())))
                .orElse(OptionalDouble.empty());
    }

    /** All that is to be said of it, a sentence each. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add(figure());
        sentences.addAll(assumed);
        check().ifPresent(check -> sentences.addAll(check.sentences()));
        asItIsNm()
                .ifPresent(nm -> sentences.add("The maker means his figure for a thread that is "
                        + joint.book().lubricated().orElseThrow().words() + "; for the same pull on one that is "
                        + worked().lubricationNow().words() + ", about " + WrittenTorque.newtonMetres(nm)
                        + " is enough."));
        kind().ifPresent(sentences::add);
        if (hole.book().leftHand()) {
            sentences.add("Its thread is left-handed: it is tightened anticlockwise.");
        }
        return sentences;
    }

    private String figure() {
        if (maker.isPresent()) {
            return "Hole " + hole.id() + ": "
                    + WrittenTorque.newtonMetres(maker.get().value()) + ", the maker's figure"
                    + joint.book()
                            .lubricated()
                            .map(one -> " for a thread that is " + one.words())
                            .orElse("") + ".";
        }
        if (reckoned.isPresent()) {
            return "Hole " + hole.id() + ": at most "
                    + WrittenTorque.newtonMetres(reckoned.get().mostNm())
                    + ", worked out because the book has no figure of the maker's; the manual comes first. "
                    + TorqueCheck.setBy(reckoned.get());
        }
        return "Hole " + hole.id()
                + ": no torque. The book has no figure, and without its thread none can be worked out.";
    }

    private Optional<String> kind() {
        return switch (hole.book().kind()) {
            case CASTLE_NUT ->
                Optional.of(
                        "Castle nut: tighten to the low end, then on to the next slot, up to "
                                + WrittenTorque.number(SIX.mostTurnDeg())
                                + "° on; never back for the hole. How much that adds to the pull is unproven: it hangs on how far bolt and parts give. If that passes the high end, change the washer and begin again.");
            case TAB_WASHER ->
                Optional.of(
                        "Tab washer: a new one; tighten, then on to the next flat within the span, and bend the tab up against it.");
            case STUD -> Optional.of("Stud: screwed in by hand to its end; the torque is the nut's.");
            case SCREW, NUT -> Optional.empty();
        };
    }

    private HoleTightening worked() {
        return new HoleTightening(joint, hole);
    }

    /** A torque in N·m as a person reads it. */
    public static String newtonMetres(double nm) {
        return WrittenTorque.newtonMetres(nm);
    }

    /** A torque in N·m in that unit, as a person reads it. */
    static String in(TorqueUnit unit, double nm) {
        return new WrittenTorque(unit.fromNm(nm), unit).words();
    }
}
