package gudgeon.store.journal;

import static gudgeon.store.journal.FactForms.form;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Point;
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
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** The forms of facts about fasteners. */
final class FasteningForms {
    private FasteningForms() {}

    static final List<FactForm<?>> ALL = List.of(
            form(
                    "joint-mapped",
                    JointMapped.class,
                    (fact, to) -> {
                        to.put("joint", fact.joint());
                        ArrayNode outline = to.putArray("outline");
                        fact.outline().forEach(point -> point(outline.addArray(), point));
                        ObjectNode holes = to.putObject("holes");
                        new TreeMap<>(fact.holes()).forEach((hole, point) -> point(holes.putArray(hole), point));
                        to.put("how", fact.how());
                    },
                    from -> new JointMapped(
                            from.said("joint"), from.points("outline"), from.namedPoints("holes"), from.text("how"))),
            form(
                    "hole-measured",
                    HoleMeasured.class,
                    (fact, to) -> to.put("joint", fact.joint())
                            .put("hole", fact.hole())
                            .put("thread", fact.thread())
                            .put("stack", fact.stack())
                            .put("depth", fact.depth())
                            .put("into", fact.into()),
                    from -> new HoleMeasured(
                            from.said("joint"),
                            from.said("hole"),
                            from.text("thread"),
                            from.text("stack"),
                            from.text("depth"),
                            from.text("into"))),
            form(
                    "fastener-out",
                    FastenerOut.class,
                    (fact, to) -> to.put("joint", fact.joint())
                            .put("hole", fact.hole())
                            .put("thread", fact.thread())
                            .put("length", fact.length())
                            .put("head", fact.head())
                            .put("remark", fact.remark()),
                    from -> new FastenerOut(
                            from.said("joint"),
                            from.said("hole"),
                            from.text("thread"),
                            from.text("length"),
                            from.text("head"),
                            from.text("remark"))),
            form(
                    "piled",
                    Piled.class,
                    (fact, to) -> to.put("kind", fact.kind())
                            .put("thread", fact.thread())
                            .put("length", fact.length())
                            .put("head", fact.head())
                            .put("class", fact.strength())
                            .put("count", fact.count())
                            .put("remark", fact.remark()),
                    from -> new Piled(
                            from.said("kind"),
                            from.text("thread"),
                            from.text("length"),
                            from.text("head"),
                            from.text("class"),
                            Math.toIntExact(from.whole("count", 0, 100_000)),
                            from.text("remark"))),
            form(
                    "hole-given",
                    HoleGiven.class,
                    (fact, to) -> to.put("joint", fact.joint())
                            .put("hole", fact.hole())
                            .put("kind", fact.kind())
                            .put("thread", fact.thread())
                            .put("length", fact.length())
                            .put("head", fact.head())
                            .put("remark", fact.remark()),
                    from -> new HoleGiven(
                            from.said("joint"),
                            from.said("hole"),
                            from.text("kind"),
                            from.text("thread"),
                            from.text("length"),
                            from.text("head"),
                            from.text("remark"))),
            form(
                    "wrench-kept",
                    WrenchKept.class,
                    (fact, to) -> {
                        to.put("wrench", fact.wrench())
                                .put("range", fact.range())
                                .put("step", fact.step());
                        number(to, "error-percent", fact.errorPercent());
                        to.put("remark", fact.remark());
                    },
                    from -> new WrenchKept(
                            from.said("wrench"),
                            from.text("range"),
                            from.text("step"),
                            from.positive("error-percent", 100),
                            from.text("remark"))),
            form(
                    "lubricated",
                    Lubricated.class,
                    (fact, to) -> to.put("joint", fact.joint()).put("how", JsonFields.word(fact.how())),
                    from -> new Lubricated(from.said("joint"), from.word("how", Lubrication.class))),
            form(
                    "wrench-chosen",
                    WrenchChosen.class,
                    (fact, to) -> {
                        to.put("joint", fact.joint())
                                .put("wrench", fact.wrench())
                                .put("setting", fact.setting());
                        number(to, "adapter-mm", fact.adapterMm());
                        number(to, "adapter-deg", fact.adapterDeg());
                        number(to, "arm-mm", fact.armMm());
                        to.put("remark", fact.remark());
                    },
                    from -> new WrenchChosen(
                            from.said("joint"),
                            from.said("wrench"),
                            from.text("setting"),
                            from.positive("adapter-mm", 2000),
                            from.positive("adapter-deg", 360),
                            from.positive("arm-mm", 5000),
                            from.text("remark"))),
            form(
                    "tightened",
                    Tightened.class,
                    (fact, to) -> to.put("joint", fact.joint())
                            .put("hole", fact.hole())
                            .put("pass", fact.pass())
                            .put("torque", fact.torque())
                            .put("wrench", fact.wrench())
                            .put("remark", fact.remark()),
                    from -> new Tightened(
                            from.said("joint"),
                            from.said("hole"),
                            from.count("pass"),
                            from.text("torque"),
                            from.text("wrench"),
                            from.text("remark"))),
            form(
                    "loosened",
                    Loosened.class,
                    (fact, to) -> to.put("joint", fact.joint()).put("why", fact.why()),
                    from -> new Loosened(from.said("joint"), from.text("why"))),
            form(
                    "witness-marked",
                    WitnessMarked.class,
                    (fact, to) -> FactForms.texts(to.put("joint", fact.joint()), "holes", fact.holes()),
                    from -> new WitnessMarked(from.said("joint"), from.texts("holes"))),
            form(
                    "tightened-again",
                    TightenedAgain.class,
                    (fact, to) -> to.put("joint", fact.joint())
                            .put("torque", fact.torque())
                            .put("remark", fact.remark()),
                    from -> new TightenedAgain(from.said("joint"), from.text("torque"), from.text("remark"))));

    private static void number(ObjectNode to, String name, OptionalDouble value) {
        value.ifPresent(number -> to.put(name, number));
    }

    private static void point(ArrayNode to, Point point) {
        to.add(point.x()).add(point.y());
    }
}
