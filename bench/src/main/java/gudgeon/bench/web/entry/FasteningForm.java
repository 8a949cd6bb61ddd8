package gudgeon.bench.web.entry;

import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.OwnWrenches;
import gudgeon.rebuild.fasten.PhotoMap;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Loosened;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.journal.Fastening.Piled;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Fastening.TightenedAgain;
import gudgeon.rebuild.journal.Fastening.WitnessMarked;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import gudgeon.rebuild.journal.Fastening.WrenchKept;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Turns what a form about fasteners sent into facts. */
final class FasteningForm {
    private final Build build;
    private final Form form;
    private final String joint;

    FasteningForm(Build build, Form form) {
        this.build = build;
        this.form = form;
        this.joint = form.text("joint");
    }

    /** The facts of a form of that type, none after a refusal; empty if it is not one about fasteners. */
    Optional<List<Fact>> facts(String type) {
        return switch (type) {
            case "joint-mapped" -> Optional.of(List.of(mapped()));
            case "joint-photographed" -> Optional.of(photographed());
            case "fastener-piled" -> Optional.of(List.of(piled()));
            case "wrench-kept" -> Optional.of(List.of(wrenchKept()));
            case "wrench-chosen" -> Optional.of(List.of(wrenchChosen()));
            case "lubricated" -> Optional.of(lubricated());
            case "tightened" -> Optional.of(tightened());
            case "loosened" -> Optional.of(List.of(new Loosened(joint, form.text("why"))));
            case "witness-marked" -> Optional.of(List.of(new WitnessMarked(joint, form.texts("hole"))));
            case "tightened-again" ->
                Optional.of(List.of(new TightenedAgain(joint, form.torque("torque"), form.text("remark"))));
            default -> ofHole(type);
        };
    }

    private Optional<List<Fact>> ofHole(String type) {
        String hole = form.text("hole");
        String thread = form.text("thread");
        String length = form.text("length");
        return switch (type) {
            case "hole-measured" ->
                Optional.of(List.of(new HoleMeasured(
                        joint, hole, thread, form.text("stack"), form.text("depth"), form.text("into"))));
            case "fastener-out" ->
                Optional.of(
                        List.of(new FastenerOut(joint, hole, thread, length, form.text("head"), form.text("remark"))));
            case "hole-given" -> Optional.of(given(hole, thread, length));
            default -> Optional.empty();
        };
    }

    /** A fastener out of the heap takes thread, length and head from there. */
    private List<Fact> given(String hole, String thread, String length) {
        String kind = form.text("kind");
        Optional<Piled> piled = build.told(Piled.class).stream()
                .map(told -> told.fact())
                .filter(one -> one.kind().equals(kind))
                .reduce((earlier, later) -> later);
        if (!kind.isEmpty() && piled.isEmpty()) {
            form.refuse("There is no '" + kind + "' in the heap. Choose one of the list, or write thread and length.");
            return List.of();
        }
        if (piled.isEmpty() && length.isEmpty()) {
            form.refuse("It is not said which fastener. Choose one of the heap, or write thread and length.");
            return List.of();
        }
        return List.of(new HoleGiven(
                joint,
                hole,
                kind,
                piled.map(Piled::thread).orElse(thread),
                piled.map(Piled::length).orElse(length),
                piled.map(Piled::head).orElse(form.text("head")),
                form.text("remark")));
    }

    private Fact piled() {
        return new Piled(
                form.text("kind"),
                form.text("thread"),
                form.text("length"),
                form.text("head"),
                form.text("strength"),
                form.whole("count", "How many", 1),
                form.text("remark"));
    }

    private Fact wrenchKept() {
        WrenchKept kept = new WrenchKept(
                form.text("wrench"),
                form.text("range"),
                form.text("step"),
                form.number("error", "May err by"),
                form.text("remark"));
        OwnWrenches.of(List.of(kept)).faults().forEach(form::refuse);
        return kept;
    }

    private Fact wrenchChosen() {
        return new WrenchChosen(
                joint,
                form.text("wrench"),
                form.torque("setting"),
                form.number("adapter", "Adapter's length"),
                form.number("angle", "Adapter's angle"),
                form.number("arm", "Length of the wrench"),
                form.text("remark"));
    }

    private List<Fact> lubricated() {
        if (form.text("how").isEmpty()) {
            form.refuse("It is not said what is on the threads. Choose it from the list.");
            return List.of();
        }
        return List.of(new Lubricated(joint, form.choice("how", "On the threads", Lubrication.DRY)));
    }

    /** One hole, as touched on the map, or several that are ticked. */
    private List<Fact> tightened() {
        List<Fact> facts = new ArrayList<>();
        int pass = form.whole("pass", "Pass", 1);
        for (String hole : form.texts("hole")) {
            facts.add(
                    new Tightened(joint, hole, pass, form.torque("torque"), form.text("wrench"), form.text("remark")));
        }
        if (facts.isEmpty()) {
            form.refuse("No hole is touched. Touch the hole on the map, or tick it in the list.");
        }
        return facts;
    }

    /** Places by numbers: a field each for right and up, and the outline with a corner on each line. */
    private Fact mapped() {
        Map<String, Point> holes = new TreeMap<>();
        Map<String, String> right = form.starting("x.");
        Map<String, String> up = form.starting("y.");
        right.keySet().stream().filter(id -> !up.containsKey(id)).forEach(this::halfPlaced);
        up.keySet().stream().filter(id -> !right.containsKey(id)).forEach(this::halfPlaced);
        right.keySet().stream()
                .filter(up::containsKey)
                .forEach(id -> Marks.point(form.text("x." + id), form.text("y." + id))
                        .ifPresentOrElse(
                                point -> holes.put(id, point),
                                () -> form.refuse("The place of hole " + id
                                        + " is not two numbers of millimetres. Write both, such as 6.0 and 8.5.")));
        return new JointMapped(joint, Marks.outline(form), holes, "by numbers");
    }

    private void halfPlaced(String id) {
        form.refuse("Only one number of the place of hole " + id
                + " is written. Write how far right and how far up, or leave both empty.");
    }

    private List<Fact> photographed() {
        Optional<JointNow> now = JointNow.of(build, joint);
        if (now.isEmpty()) {
            form.refuse("The engine book has no joint '" + joint + "'. Choose one from the list.");
            return List.of();
        }
        return Marks.in(form)
                .map(marked -> PhotoMap.of(now.get(), marked))
                .map(this::facts)
                .orElse(List.of());
    }

    private List<Fact> facts(PhotoMap map) {
        if (map instanceof PhotoMap.Refused refused) {
            refused.sentences().forEach(form::refuse);
            return List.of();
        }
        return List.of(((PhotoMap.Mapped) map).fact());
    }
}
