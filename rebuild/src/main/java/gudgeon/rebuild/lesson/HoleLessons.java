package gudgeon.rebuild.lesson;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fasten.ForHole;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.journal.Fact.FaultFound;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What was measured of holes, and the lengths of the fasteners that held in them. */
final class HoleLessons {
    private final Build build;
    private final List<Taught> taught = new ArrayList<>();

    HoleLessons(Build build) {
        this.build = build;
    }

    List<Taught> taught() {
        JointNow.all(build)
                .forEach(joint -> joint.holes().stream()
                        .filter(hole -> joint.book().hole(hole.id()).isPresent())
                        .forEach(hole -> ofHole(joint.book(), hole)));
        return taught;
    }

    private void ofHole(Joint joint, HoleNow now) {
        Hole hole = now.book();
        List<Told<HoleMeasured>> measured = build.told(HoleMeasured.class, joint.id()).stream()
                .filter(told -> told.fact().hole().equals(hole.id()))
                .toList();
        size(joint, hole, measured, "stack", "what is clamped", HoleMeasured::stack, hole.stack());
        size(joint, hole, measured, "depth", "usable depth of the thread", HoleMeasured::depth, hole.depth());
        word(joint, hole, measured, "thread", HoleMeasured::thread, hole.thread());
        word(joint, hole, measured, "into", HoleMeasured::into, hole.into());
        now.fastener().ifPresent(fastener -> length(joint, now, fastener));
    }

    private static Optional<Told<HoleMeasured>> last(
            List<Told<HoleMeasured>> measured, Function<HoleMeasured, String> what) {
        return measured.stream()
                .filter(told -> !what.apply(told.fact()).isEmpty())
                .reduce((earlier, later) -> later);
    }

    private void size(
            Joint joint,
            Hole hole,
            List<Told<HoleMeasured>> measured,
            String key,
            String name,
            Function<HoleMeasured, String> what,
            Optional<Size> book) {
        last(measured, what).ifPresent(told -> {
            String written = what.apply(told.fact());
            TypedSize.quantity(Unit.MM, written)
                    .filter(found ->
                            book.map(size -> differs(size.quantity(), found)).orElse(true))
                    .ifPresent(found -> taught.add(new Lesson(
                            key + "." + joint.id() + "." + hole.id(),
                            place(joint, hole) + ": " + name + " " + written + ".",
                            "Measured at the hole. " + said(book),
                            List.of(told.number()),
                            put(joint, hole, key, written))));
        });
    }

    /** Two sizes differ where their doubts together, at about 95 %, don't explain it. */
    static boolean differs(Quantity one, Quantity other) {
        double doubt = 2 * Math.hypot(one.standardUncertainty(), other.standardUncertainty());
        return Math.abs(one.value() - other.value()) > Math.max(0.005, doubt);
    }

    private static String said(Optional<Size> book) {
        return book.map(size -> "The book says " + size.typed() + ".").orElse("The book does not say it.");
    }

    /** A word that the book does not have is offered; one that it has otherwise may be the mark of a repair. */
    private void word(
            Joint joint,
            Hole hole,
            List<Told<HoleMeasured>> measured,
            String key,
            Function<HoleMeasured, String> what,
            String book) {
        last(measured, what)
                .filter(told -> !what.apply(told.fact()).equalsIgnoreCase(book))
                .ifPresent(told -> {
                    String found = what.apply(told.fact());
                    List<Long> entries = List.of(told.number());
                    String words =
                            place(joint, hole) + ": " + (key.equals("into") ? "thread cut into " : "thread ") + found;
                    taught.add(
                            book.isEmpty()
                                    ? new Lesson(
                                            key + "." + joint.id() + "." + hole.id(),
                                            words + ".",
                                            "Found at the hole. The book does not say it.",
                                            entries,
                                            put(joint, hole, key, found))
                                    : new Withheld(
                                            words,
                                            "The book says " + book + "; a hole that differs may have been repaired.",
                                            entries));
                });
    }

    private void length(Joint joint, HoleNow hole, ForHole fastener) {
        if (fastener.length().isEmpty()
                || hole.makersLength()
                        .filter(makers -> !differs(makers, fastener.length().get()))
                        .isPresent()) {
            return;
        }
        String words = place(joint, hole.book()) + ": fastener " + fastener.written() + " long";
        List<Long> entries = Stream.concat(
                        Stream.of(fastener.entry()), hole.tightened().stream().map(Told::number))
                .sorted()
                .toList();
        if (hole.makersLength().isPresent()) {
            taught.add(new Withheld(
                    words,
                    "The maker's length in the book comes first. "
                            + said(hole.book().length()),
                    entries));
        } else if (!isSound(joint, hole, fastener)) {
            taught.add(new Withheld(
                    words, "It is not proved yet: it has not been tightened since, or a fault was found.", entries));
        } else {
            taught.add(new Lesson(
                    "length." + joint.id() + "." + hole.id(),
                    words + ".",
                    "Tightened with it, and no fault found. The book does not say it.",
                    entries,
                    put(joint, hole.book(), "length", fastener.written())));
        }
    }

    private boolean isSound(Joint joint, HoleNow hole, ForHole fastener) {
        boolean faulty =
                build.told(FaultFound.class, joint.id()).stream().anyMatch(told -> told.number() > fastener.entry());
        return !faulty && hole.tightened().stream().anyMatch(told -> told.number() > fastener.entry());
    }

    private static String place(Joint joint, Hole hole) {
        return joint.name() + ", hole " + hole.id();
    }

    private static Amendment put(Joint joint, Hole hole, String key, String found) {
        return new Amendment.Put(List.of("joints", joint.id(), "holes", hole.id(), key), Written.text(found));
    }
}
