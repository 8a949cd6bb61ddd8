package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Bolt;
import gudgeon.mechanics.bolt.Head;
import gudgeon.mechanics.bolt.Seat;
import gudgeon.mechanics.bolt.StrengthClass;
import gudgeon.mechanics.bolt.Tightening;
import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.mechanics.thread.UnknownFastener;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * How tight a fastener may be, worked out at the desk without a build.
 *
 * @param check the fastener at the torque that was asked about, or at the most it bears
 * @param given whether that torque was given and not worked out
 */
public record DeskTorque(TorqueCheck check, boolean given) {
    /**
     * What was asked, as typed.
     *
     * @param thread the thread
     * @param strength its strength class
     * @param lubricated what is on it
     * @param into what it is screwed into; empty for a nut
     * @param depth how far the threads engage; empty where not known
     * @param washer whether a washer lies under the head
     * @param torque a torque to be checked; empty to have one worked out
     */
    public record Asked(
            String thread,
            String strength,
            Lubrication lubricated,
            String into,
            String depth,
            boolean washer,
            String torque) {}

    /**
     * The answer.
     *
     * @throws Unanswerable with all that can't be used
     */
    public static DeskTorque of(Asked asked) throws Unanswerable {
        List<String> faults = new ArrayList<>();
        Optional<ScrewThread> thread = known(() -> ScrewThread.of(asked.thread()), faults);
        Optional<StrengthClass> strength = known(() -> StrengthClass.of(asked.strength()), faults);
        Optional<Material> into = Metal.named(asked.into());
        if (!asked.into().isBlank() && into.isEmpty()) {
            faults.add("'" + asked.into() + "' is not a metal known here; known are " + Metal.known() + ".");
        }
        OptionalDouble depth = size(Unit.MM, asked.depth(), "depth", faults);
        OptionalDouble torque = size(Unit.NEWTON_METRE, asked.torque(), "torque", faults);
        if (thread.isEmpty() || strength.isEmpty() || !faults.isEmpty()) {
            throw new Unanswerable(faults);
        }
        Bolt bolt = new Bolt(thread.get(), strength.get(), asked.washer() ? Head.WASHER : Head.HEXAGON);
        Tightening tightening = new Tightening(bolt, new Seat(into, depth, into), Slickness.of(asked.lubricated()));
        double nm = torque.orElse(tightening.mostNm());
        if (nm > 0
                && tightening.leastPreloadN(nm)
                        > bolt.strength().tensileMpa() * bolt.thread().stressAreaMm2()) {
            throw new Unanswerable(List.of(
                    HoleTorque.newtonMetres(nm) + " tears a " + bolt.thread().designation()
                            + " of class " + bolt.strength().designation()
                            + " in two whatever the friction. Look at the figure and its unit again."));
        }
        return new DeskTorque(new TorqueCheck(tightening, nm, asked.lubricated().words()), torque.isPresent());
    }

    /** The answer, a sentence each. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Tightening tightening = check.tightening();
        if (!given) {
            sentences.add("At most " + HoleTorque.newtonMetres(tightening.mostNm()) + " for " + designation()
                    + ", worked out; the maker's manual comes first.");
            sentences.add(TorqueCheck.setBy(tightening));
        }
        if (check.torqueNm() > 0) {
            sentences.addAll(check.sentences());
        } else {
            sentences.add("The threads engage too little to hold anything.");
        }
        if (tightening.seat().into().isPresent()
                && tightening.seat().engagedMm().isEmpty()) {
            sentences.add("How far the threads engage is not known, so whether they strip first is not reckoned.");
        }
        return sentences;
    }

    /** Thread and strength class. */
    public String designation() {
        return check.tightening().bolt().thread().designation() + " of class "
                + check.tightening().bolt().strength().designation();
    }

    private static <T> Optional<T> known(Supplier<T> read, List<String> faults) {
        try {
            return Optional.of(read.get());
        } catch (UnknownFastener fault) {
            faults.add(fault.sentence());
            return Optional.empty();
        }
    }

    private static OptionalDouble size(Unit unit, String text, String what, List<String> faults) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        if (TypedSize.of(unit, text, 1) instanceof TypedSize.Read read && read.value() > 0) {
            return OptionalDouble.of(read.value());
        }
        faults.add("The " + what + " '" + text + "' can't be used; write a size above 0, such as "
                + (unit == Unit.MM ? "12 or 1/2 in." : "'9 N.m' or '80 lbf.in'."));
        return OptionalDouble.empty();
    }

    /** A torque in the five units that torque is written in. */
    public static List<WrittenTorque> inAllUnits(WrittenTorque torque) {
        return Arrays.stream(TorqueUnit.values()).map(torque::in).toList();
    }
}
