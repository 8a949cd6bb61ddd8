package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.StrengthClass;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.Piled;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Fasteners of one kind in the heap.
 *
 * @param name the person's name for the kind
 * @param thread its thread, where it is a known one
 * @param length its length under the head in mm, where it can be read
 * @param head what its head is like, may be empty
 * @param strength its strength class, may be empty
 * @param count how many lie there, 0 or more
 */
public record PileKind(
        String name, Optional<ScrewThread> thread, Optional<Quantity> length, String head, String strength, int count) {

    /** The heap as a build has it: of each kind what was said last. */
    public static List<PileKind> of(Build build) {
        Map<String, PileKind> kinds = new LinkedHashMap<>();
        build.told(Piled.class, Fastening.PILE).stream()
                .map(Told::fact)
                .forEach(piled -> kinds.put(piled.kind(), of(piled)));
        return List.copyOf(kinds.values());
    }

    private static PileKind of(Piled piled) {
        return new PileKind(
                piled.kind(),
                HoleSizes.thread(piled.thread()),
                TypedSize.quantity(Unit.MM, piled.length()),
                piled.head(),
                piled.strength(),
                Math.max(0, piled.count()));
    }

    /**
     * Whether it can be turned into a hole and is as strong as the book asks; says nothing of its length.
     *
     * @param wanted the hole's thread
     */
    boolean goesInto(HoleNow hole, ScrewThread wanted) {
        return thread.filter(own -> alike(own, wanted)).isPresent()
                && isScrew(hole.book())
                && isSameHead(hole.book())
                && isStrongEnough(hole.book());
    }

    /** A nut has no length, and goes only where one is wanted; a screw only where none is. */
    private boolean isScrew(Hole hole) {
        boolean nut = head.toLowerCase(Locale.ROOT).contains("nut");
        return hole.kind() == Hole.Kind.SCREW ? !nut : nut || length.isEmpty();
    }

    static boolean alike(ScrewThread one, ScrewThread other) {
        return one.form() == other.form() && one.majorMm() == other.majorMm() && one.pitchMm() == other.pitchMm();
    }

    private boolean isSameHead(Hole hole) {
        return head.isEmpty()
                || hole.head().isEmpty()
                || head.strip().equalsIgnoreCase(hole.head().strip());
    }

    /** One of which nobody knows the class is taken at its word. */
    private boolean isStrongEnough(Hole hole) {
        Optional<StrengthClass> own = StrengthClass.find(strength);
        Optional<StrengthClass> asked = StrengthClass.find(hole.strength());
        return own.isEmpty()
                || asked.isEmpty()
                || own.get().proofMpa() >= asked.get().proofMpa();
    }

    /** Whether it is the fastener that a person said belongs in a hole. */
    boolean is(ForHole fastener) {
        if (!fastener.kind().isEmpty()) {
            return fastener.kind().equals(name);
        }
        boolean sameThread = HoleSizes.thread(fastener.thread())
                .flatMap(other -> thread.map(own -> alike(own, other)))
                .orElse(fastener.thread().isEmpty());
        return sameThread
                && fastener.length().isPresent()
                && length.isPresent()
                && isSameLength(fastener.length().get(), length.get());
    }

    /** Whether two lengths are one and the same: screws are made in steps of several millimetres, and measured to less than one. */
    static boolean isSameLength(Quantity one, Quantity other) {
        Quantity apart = one.minus(other);
        return Math.abs(apart.value()) <= 1 + HoleSizes.half(apart);
    }
}
