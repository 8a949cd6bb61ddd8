package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The blocks of the book's second part: how the engine is put together and proved. */
final class StructureForms {
    static final String BLASTING = "blasting";

    private static final int MOST_MINUTES = 100_000;
    private static final List<String> YES_OR_NO = List.of("true", "false");

    /** How a book writes the unit of a dimension. */
    static final Map<String, Unit> UNITS = units();

    private static Map<String, Unit> units() {
        Map<String, Unit> units = new LinkedHashMap<>();
        units.put("mm", Unit.MM);
        units.put("deg", Unit.DEGREES);
        units.put("cm3", Unit.CM3);
        units.put("kPa", Unit.KPA);
        units.put("N", Unit.NEWTON);
        units.put("degC", Unit.CELSIUS);
        units.put("%", Unit.PERCENT);
        return Collections.unmodifiableMap(units);
    }

    private StructureForms() {}

    static final Form SEAT_FIT = new Form(
            "fit",
            "How tight the part sits in what it goes into.",
            List.of(
                    text("size", true, "Size and tolerance classes of hole and part by ISO 286, such as 42 N7/h6."),
                    text("part", true, "What the part is made of, such as steel."),
                    text("into", true, "What it sits in is made of, such as aluminium."),
                    text(
                            "warmest",
                            false,
                            "The temperature that what it sits in must not pass, such as 120 degC; the maker's figure.")));

    static final Form POSITION = new Form(
            "position",
            "A place in the engine that a part fills.",
            List.of(
                    Keys.id("position"),
                    text("name", true, "What a fitter calls it."),
                    new Form.Key(
                            "quantity",
                            new Value.OfWhole(1, 999),
                            false,
                            "quantity",
                            "How many parts fill it; 1 if left out."),
                    new Form.Key(
                            "space",
                            new Value.OfWords(List.of("wet", "dry", "gas", "outside")),
                            false,
                            "space",
                            "The space it lives in: wet (oil), dry, gas or outside; a list of two for what seals between them."),
                    yes("single-use", "Whether its part may not be used again once removed."),
                    yes("critical", "Whether a copy must be compared before it goes in."),
                    text("mark", false, "Which way round it goes, where that matters."),
                    texts("compare", "What is worth comparing on a new part."),
                    text(
                            "sizes",
                            false,
                            "Which of the book's figures are of its part: pistons, gaskets, base-gasket, cylinder, head, or valves and the valve's id."),
                    Keys.optional(
                            "pressed",
                            Unit.MM,
                            0,
                            10,
                            "pressed thickness",
                            "Of a gasket that sets a height: its thickness as the book's figures have it."),
                    new Form.Key("fit", new Value.OfBlock(SEAT_FIT), false, "fit", SEAT_FIT.description()),
                    text(
                            "bearing",
                            false,
                            "Of a rolling bearing: its designation without the maker's own marks, such as 6203 C3."),
                    texts(
                            "oversizes",
                            "Of a piston: how far over the standard bore it is also made, each with its unit."),
                    Keys.note()));

    static final Form HOLE = new Form(
            "hole",
            "A place that a fastener goes.",
            List.of(
                    Keys.id("hole"),
                    new Form.Key(
                            "at",
                            new Value.OfPoint(),
                            false,
                            "place",
                            "Where it is, seen from outside: to the right and upwards, in mm."),
                    new Form.Key(
                            "kind",
                            new Value.OfWord(List.of("screw", "stud", "nut", "castle-nut", "tab-washer")),
                            false,
                            "kind",
                            "What holds there; a screw if left out."),
                    text("thread", false, "Its thread, such as M6 or M10x1.25."),
                    text("class", false, "Strength class of its fastener, such as \"8.8\"."),
                    text("head", false, "What its head is like."),
                    Keys.optional("length", Unit.MM, 1, 400, "length", "Length of its fastener under the head."),
                    Keys.optional("stack", Unit.MM, 0, 400, "stack", "What it clamps: cover, gasket and washers."),
                    Keys.optional("depth", Unit.MM, 1, 400, "depth", "Usable depth of its thread."),
                    yes("through", "Whether it goes right through."),
                    yes("dowel", "Whether a dowel sits in it."),
                    new Form.Key(
                            "behind",
                            new Value.OfWord(List.of("wet", "dry", "gas", "outside")),
                            false,
                            "space behind",
                            "What it opens into, where it goes through."),
                    Keys.optional("room", Unit.MM, 0, 400, "room", "How far a fastener may stand through."),
                    text("into", false, "What its thread is cut in, such as aluminium."),
                    yes("left-hand", "Whether its thread is left-handed."),
                    Keys.optional(
                            "torque",
                            Unit.NEWTON_METRE,
                            0.1,
                            1000,
                            "torque",
                            "The maker's figure for this one, where it differs from the joint's."),
                    Keys.note()));

    static final Form JOINT = new Form(
            "joint",
            "Parts clamped by fasteners.",
            List.of(
                    Keys.id("joint"),
                    text("name", true, "What a fitter calls it."),
                    text("order", false, "In what order and in how many passes it is tightened."),
                    ids("sequence", "The maker's order of tightening, each hole once."),
                    new Form.Key(
                            "shape",
                            new Value.OfWord(List.of("ring", "cover", "head")),
                            false,
                            "shape",
                            "What it looks like, for an order that is worked out: ring, cover or head."),
                    new Form.Key(
                            "outline",
                            new Value.OfOutline(),
                            false,
                            "outline",
                            "Corners of its outline, seen from outside, in mm."),
                    Keys.optional(
                            "torque", Unit.NEWTON_METRE, 0.1, 1000, "torque", "The maker's figure for its fasteners."),
                    new Form.Key(
                            "lubricated",
                            new Value.OfWord(List.of("dry", "oiled", "greased", "locked")),
                            false,
                            "lubrication",
                            "How that figure is meant."),
                    new Form.Key(
                            "passes", new Value.OfWhole(1, 9), false, "passes", "In how many passes it is tightened."),
                    yes("gasket", "Whether a gasket lies in it."),
                    yes("warps", "Whether it is apt to warp, so that it is loosened with care."),
                    text("again", false, "When it is to be tightened again, such as after the first heat."),
                    new Form.Key("holes", new Value.OfList(HOLE), false, "holes", "Its holes."),
                    Keys.note()));

    static final Form STEP = new Form(
            "step",
            "One act of assembly.",
            List.of(
                    Keys.id("step"),
                    text("name", true, "What is done, as a fitter says it."),
                    texts("do", "How it is done, a sentence each."),
                    ids("fits", "Positions it fills."),
                    ids("into", "Castings or parts that it builds into, positions."),
                    ids("needs", "Steps that must be done first."),
                    ids(
                            "covers",
                            "Positions that can't be reached or taken off while what this step fits stays in place."),
                    ids("tightens", "Joints it tightens."),
                    texts("oil", "Where oil goes."),
                    texts("grease", "Where grease goes."),
                    texts("sealant", "Where sealant goes."),
                    texts("tools", "What it takes."),
                    minutes("minutes", "Likely minutes of work."),
                    minutes("sets", "Minutes to set, dry or cool before what stands on it."),
                    texts("cautions", "What can hurt.")));

    static final Form EXPECT = new Form(
            "span",
            "What a reading should lie in.",
            List.of(
                    text("at-least", false, "The least allowed, with its unit; mm if none is written."),
                    text("at-most", false, "The most allowed, with its unit; mm if none is written.")));

    static final Form CHECK = new Form(
            "check",
            "A proof.",
            List.of(
                    Keys.id("check"),
                    text("name", true, "What is proved, as a fitter says it."),
                    new Form.Key(
                            "how",
                            new Value.OfWord(List.of("measured", "tried", "computed", "seen")),
                            true,
                            "how",
                            "How it is done: measured, tried by hand, computed by Gudgeon, or seen."),
                    texts("do", "How it is done, a sentence each."),
                    ids("clears", "Its suspects: positions or steps that a pass clears."),
                    ids("with", "Positions that must be in place to do it."),
                    ids("needs", "Steps that must be done first."),
                    ids("after", "Checks that must have passed before this one can be believed."),
                    ids(
                            "disturbed-by",
                            "Steps or positions whose doing or undoing makes a pass void; 'blasting' for blast cleaning of a suspect."),
                    ids("holds", "Steps that may not begin before it has passed or was knowingly waived."),
                    new Form.Key("expect", new Value.OfBlock(EXPECT), false, "expected", EXPECT.description()),
                    text("late", false, "Why it can only be done when its suspects are covered."),
                    texts("tools", "What it takes."),
                    minutes("minutes", "Likely minutes of work."),
                    texts("cautions", "What can hurt.")));

    static final Form DERIVED = new Form(
            "derivation",
            "How a dimension follows from others.",
            List.of(
                    new Form.Key(
                            "as",
                            new Value.OfWord(List.of("clearance", "ovality", "taper", "wear", "difference")),
                            true,
                            "rule",
                            "clearance of a hole and a shaft, ovality, taper or wear of one dimension, or difference: the first less all others."),
                    ids("of", "The dimensions that it follows from.")));

    static final Form DIMENSION = new Form(
            "dimension",
            "A size that a fitter measures, or that follows from such.",
            List.of(
                    Keys.id("dimension"),
                    text("name", true, "What a fitter calls it."),
                    text("of", true, "The position whose part it is measured on."),
                    text("key", false, "The key by which the book's figures know it, such as pockets.exhaust.depth."),
                    text("how", false, "Where and how it is measured."),
                    text("with", false, "The instrument wanted."),
                    texts("heights", "At which heights it is measured, in order."),
                    texts("axes", "In which directions it is measured at each height."),
                    texts("places", "Where it is measured, in order, where heights and axes do not say it."),
                    new Form.Key(
                            "pieces",
                            new Value.OfWhole(1, 99),
                            false,
                            "pieces",
                            "On how many pieces alike it is measured; 1 if left out."),
                    new Form.Key(
                            "unit",
                            new Value.OfWord(List.copyOf(UNITS.keySet())),
                            false,
                            "unit",
                            "The unit of its readings; that of its limits if left out, else mm."),
                    new Form.Key(
                            "usual",
                            new Value.OfBlock(EXPECT),
                            false,
                            "usual span",
                            "What it can be in any sound engine of this kind, so that a slip shows; never a limit."),
                    new Form.Key(
                            "new",
                            new Value.OfBlock(EXPECT),
                            false,
                            "standard range",
                            "The maker's range of a new part."),
                    text("at-least", false, "The least allowed in service, with its unit; mm if none is written."),
                    text("at-most", false, "The most allowed in service, with its unit; mm if none is written."),
                    new Form.Key("derived", new Value.OfBlock(DERIVED), false, "derivation", DERIVED.description()),
                    yes("inspect", "Whether it is worth comparing on a part that arrives, before it is fitted."),
                    Keys.note()));

    static final Form MEMBER = new Form(
            "family's engine",
            "Another engine whose parts look like this one's.",
            List.of(
                    Keys.id("engine"),
                    text("name", true, "What a fitter calls it."),
                    new Form.Key(
                            "parts",
                            new Value.OfSizes(),
                            false,
                            "parts",
                            "Sizes of its parts: by position, and there by dimension."),
                    Keys.note()));

    /** The keys of the book itself. */
    static List<Form.Key> keys() {
        return List.of(
                list("positions", POSITION, "The places in the engine that parts fill."),
                list("joints", JOINT, "The joints."),
                list("steps", STEP, "The steps of assembly, in the order in which the book tells them."),
                list("checks", CHECK, "The checks."),
                list("dimensions", DIMENSION, "What is measured on the parts."),
                list("family", MEMBER, "Other engines whose parts look like this one's."));
    }

    private static Form.Key list(String name, Form form, String description) {
        return new Form.Key(name, new Value.OfList(form), false, name, description);
    }

    private static Form.Key text(String name, boolean required, String description) {
        return new Form.Key(name, new Value.OfText(), required, name, description);
    }

    private static Form.Key texts(String name, String description) {
        return new Form.Key(name, new Value.OfTexts(), false, name, description);
    }

    private static Form.Key ids(String name, String description) {
        return new Form.Key(name, new Value.OfIds(), false, name, description);
    }

    private static Form.Key yes(String name, String description) {
        return new Form.Key(name, new Value.OfWord(YES_OR_NO), false, name, description);
    }

    private static Form.Key minutes(String name, String description) {
        return new Form.Key(name, new Value.OfWhole(0, MOST_MINUTES), false, name, description);
    }
}
