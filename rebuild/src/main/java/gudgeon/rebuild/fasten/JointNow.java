package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import java.util.List;
import java.util.Optional;

/**
 * A joint as the build has it: the book's figures, what was mapped and measured laid over them, and how far it is tightened. It
 * hangs on the build alone.
 *
 * @param book the joint as the book has it
 * @param outline corners of its outline; may be empty
 * @param holes its holes, those of the book first
 * @param mapped how its holes were found, if they were
 * @param lubricated what is on its threads, by the journal; empty where it does not say
 * @param wrench the wrench taken for it last
 * @param tightenedAgain when it was last tightened again, since it was last loose
 * @param loose number of the entry with which tightening began anew last; 0 where there is none
 */
public record JointNow(
        Joint book,
        List<Point> outline,
        List<HoleNow> holes,
        Optional<Told<JointMapped>> mapped,
        Optional<Lubrication> lubricated,
        Optional<Told<WrenchChosen>> wrench,
        Optional<Told<TightenedAgain>> tightenedAgain,
        long loose) {
    public JointNow {
        outline = List.copyOf(outline);
        holes = List.copyOf(holes);
    }

    /** The joint of that id; empty where the book does not have it. */
    public static Optional<JointNow> of(Build build, String joint) {
        return build.structure().joint(joint).map(book -> of(build, book));
    }

    /** The joint as the build has it. */
    public static JointNow of(Build build, Joint book) {
        return new JointFold(build, book).joint();
    }

    /** Every joint of the book, in its order. */
    public static List<JointNow> all(Build build) {
        return build.structure().joints().stream().map(book -> of(build, book)).toList();
    }

    /** Its name in the book. */
    public String id() {
        return book.id();
    }

    /** The hole of that id. */
    public Optional<HoleNow> hole(String id) {
        return holes.stream().filter(hole -> hole.id().equals(id)).findFirst();
    }

    /** The maker's torque for a hole of it, in N·m: the hole's own, else the joint's. */
    public Optional<Quantity> makersTorque(HoleNow hole) {
        return hole.book().torque().or(book::torque).map(size -> size.quantity());
    }
}
