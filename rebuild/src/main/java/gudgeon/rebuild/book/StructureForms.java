package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import java.util.List;

/** The blocks of the book's second part: how the engine is put together and proved. */
final class StructureForms {
    static final String BLASTING = "blasting";

    private static final int MOST_MINUTES = 100_000;
    private static final List<String> YES_OR_NO = List.of("true", "false");

    private StructureForms() {}

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
                            "Which of the book's figures are of its part: pistons, gaskets, base-gasket, or valves and the valve's id."),
                    Keys.optional(
                            "pressed",
                            Unit.MM,
                            0,
                            10,
                            "pressed thickness",
                            "Of a gasket that sets a height: its thickness as the book's figures have it."),
                    Keys.note()));

    static final Form HOLE = new Form(
            "hole",
            "A place that a fastener goes.",
            List.of(
                    Keys.id("hole"),
                    text("thread", false, "Its thread, such as M6."),
                    Keys.optional("length", Unit.MM, 1, 400, "length", "Length of its fastener under the head."),
                    Keys.optional("depth", Unit.MM, 1, 400, "depth", "Usable depth of its thread."),
                    yes("through", "Whether it goes right through."),
                    Keys.note()));

    static final Form JOINT = new Form(
            "joint",
            "Parts clamped by fasteners.",
            List.of(
                    Keys.id("joint"),
                    text("name", true, "What a fitter calls it."),
                    text("order", false, "In what order and in how many passes it is tightened."),
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

    static final Form DIMENSION = new Form(
            "dimension",
            "A size that a fitter measures.",
            List.of(
                    Keys.id("dimension"),
                    text("name", true, "What a fitter calls it."),
                    text("of", true, "The position whose part it is measured on."),
                    text("how", false, "Where and how it is measured."),
                    text("with", false, "The instrument wanted."),
                    text("at-least", false, "The least allowed in service, with its unit; mm if none is written."),
                    text("at-most", false, "The most allowed in service, with its unit; mm if none is written."),
                    Keys.note()));

    /** The keys of the book itself. */
    static List<Form.Key> keys() {
        return List.of(
                list("positions", POSITION, "The places in the engine that parts fill."),
                list("joints", JOINT, "The joints."),
                list("steps", STEP, "The steps of assembly, in the order in which the book tells them."),
                list("checks", CHECK, "The checks."),
                list("dimensions", DIMENSION, "What is measured on the parts."));
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
