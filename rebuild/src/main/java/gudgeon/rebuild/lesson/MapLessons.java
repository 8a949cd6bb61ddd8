package gudgeon.rebuild.lesson;

import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Where the holes of joints were found to lie. */
final class MapLessons {
    private final Build build;
    private final List<Taught> taught = new ArrayList<>();

    MapLessons(Build build) {
        this.build = build;
    }

    List<Taught> taught() {
        for (Joint joint : build.structure().joints()) {
            build.told(JointMapped.class, joint.id()).stream()
                    .reduce((earlier, later) -> later)
                    .ifPresent(told -> ofJoint(joint, told));
        }
        return taught;
    }

    private void ofJoint(Joint joint, Told<JointMapped> told) {
        List<Amendment> changes = new ArrayList<>();
        outline(joint, told.fact().outline()).ifPresent(changes::add);
        new TreeMap<>(told.fact().holes())
                .forEach((id, at) -> hole(joint, id, at, told.number()).ifPresent(changes::add));
        if (!changes.isEmpty()) {
            taught.add(new Lesson(
                    "map." + joint.id(),
                    "The map of " + joint.name() + ": "
                            + Amount.of(told.fact().holes().size(), "hole")
                            + (told.fact().outline().isEmpty() ? "." : " and the outline."),
                    Sentence.of(
                            told.fact().how().isBlank() ? "Mapped" : told.fact().how()),
                    List.of(told.number()),
                    changes,
                    Optional.empty()));
        }
    }

    private static Optional<Amendment> outline(Joint joint, List<Point> outline) {
        return outline.isEmpty() || same(outline, joint.outline())
                ? Optional.empty()
                : Optional.of(new Amendment.Put(
                        List.of("joints", joint.id(), "outline"),
                        Written.list(outline.stream().map(Written::point).toList())));
    }

    private static boolean same(List<Point> one, List<Point> other) {
        return one.stream()
                .map(Written::point)
                .toList()
                .equals(other.stream().map(Written::point).toList());
    }

    private Optional<Amendment> hole(Joint joint, String id, Point at, long entry) {
        Optional<Hole> known = joint.hole(id);
        if (known.isPresent()) {
            return known.get()
                            .at()
                            .filter(place -> Written.point(place).equals(Written.point(at)))
                            .isPresent()
                    ? Optional.empty()
                    : Optional.of(
                            new Amendment.Put(List.of("joints", joint.id(), "holes", id, "at"), Written.point(at)));
        }
        if (!id.matches("[A-Za-z0-9-]{1,40}")) {
            taught.add(new Withheld(
                    joint.name() + ", hole " + id,
                    "A hole of the book is named with letters, digits and hyphens. Name it so, and map it again.",
                    List.of(entry)));
            return Optional.empty();
        }
        return Optional.of(new Amendment.Add(
                List.of("joints", joint.id(), "holes"),
                "{id: " + Written.text(id) + ", at: " + Written.point(at) + "}"));
    }
}
