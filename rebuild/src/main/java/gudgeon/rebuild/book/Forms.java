package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import java.util.List;
import java.util.stream.Stream;

/** The blocks of an engine book and their keys. The spans are common practice for small engines, no source; generous on purpose. */
final class Forms {
    private Forms() {}

    /** A size written as a block. */
    static final Form SIZE = new Form(
            "size",
            "A size with what is known of it; value or readings is needed.",
            List.of(
                    new Form.Key(
                            "value",
                            new Value.OfSize(Unit.NONE, -1e6, 1e6),
                            false,
                            "value",
                            "The size, with its unit if it is not mm or degrees."),
                    new Form.Key(
                            "unit",
                            new Value.OfText(),
                            false,
                            "unit",
                            "Unit of value, doubt and readings where they carry none: mm, in, thou, deg, cm3."),
                    new Form.Key(
                            "doubt",
                            new Value.OfSize(Unit.NONE, 0, 1e6),
                            false,
                            "doubt",
                            "How far off it may be either way."),
                    new Form.Key(
                            "with",
                            new Value.OfText(),
                            false,
                            "instrument",
                            "The instrument it was measured with, by its name under instruments."),
                    new Form.Key(
                            "readings",
                            new Value.OfReadings(),
                            false,
                            "readings",
                            "Repeat readings; their mean is the value, their scatter a doubt."),
                    new Form.Key(
                            "source",
                            new Value.OfText(),
                            false,
                            "source",
                            "Where the figure comes from, such as a page of the workshop manual."),
                    new Form.Key("note", new Value.OfText(), false, "note", Keys.NOTE)));

    static final Form ENGINE = new Form(
            "engine",
            "Which engine the book is of.",
            List.of(
                    new Form.Key("name", new Value.OfText(), true, "engine name", "The engine's name."),
                    new Form.Key("maker", new Value.OfText(), false, "maker", "Who made it."),
                    Keys.note()));

    static final Form INSTRUMENT = new Form(
            "instrument",
            "What was measured with.",
            List.of(
                    new Form.Key(
                            "resolution",
                            new Value.OfSize(Unit.NONE, 0, 100),
                            true,
                            "resolution",
                            "The least step that its scale can show; mm unless a unit is written."),
                    new Form.Key(
                            "error",
                            new Value.OfSize(Unit.NONE, 0, 100),
                            true,
                            "permissible error",
                            "The greatest error its maker or its standard allows, either way."),
                    Keys.note()));

    static final Form CYLINDER = new Form(
            "cylinder", "The barrel.", List.of(Keys.size("bore", Unit.MM, 10, 200, "bore", "Diameter of the bore.")));

    static final Form DECK_HEIGHT = new Form(
            "deck height",
            "Crank axis to the barrel's gasket face.",
            List.of(
                    Keys.size(
                            "case",
                            Unit.MM,
                            0,
                            500,
                            "case deck height",
                            "Crank axis to the face the barrel stands on."),
                    Keys.size(
                            "barrel",
                            Unit.MM,
                            0,
                            500,
                            "barrel height",
                            "Barrel between its faces, with the base gasket pressed.")));

    static final Form CRANK = new Form(
            "crank",
            "Crank and rod.",
            List.of(
                    Keys.size("stroke", Unit.MM, 8, 300, "stroke", "Twice the crank radius."),
                    Keys.size("rod", Unit.MM, 15, 600, "rod length", "Between the centres of the rod's eyes."),
                    Keys.optional(
                            "pin-offset",
                            Unit.MM,
                            -8,
                            8,
                            "gudgeon pin offset",
                            "The gudgeon pin's distance from the piston's middle, + towards the major thrust side; 0 if left out."),
                    Keys.optional(
                            "protrusion",
                            Unit.MM,
                            -30,
                            15,
                            "crown height at TDC",
                            "Crown's flat edge above the barrel's face at top dead centre, - below it; measured with the first piston of the book."),
                    new Form.Key(
                            "deck-height",
                            new Value.OfBlock(DECK_HEIGHT),
                            false,
                            "deck height",
                            "Instead of protrusion, together with each piston's compression-height.")));

    static final Form HEAD = new Form(
            "head",
            "The cylinder head.",
            List.of(Keys.optional(
                    "chamber",
                    Unit.CM3,
                    0.1,
                    1000,
                    "chamber volume",
                    "Volume under the joint face with plug and valves in, in cm3; by burette and a plate.")));

    static final Form GASKET = new Form(
            "gasket",
            "A head gasket to choose.",
            List.of(
                    Keys.id("gasket"),
                    Keys.size(
                            "pressed",
                            Unit.MM,
                            0,
                            10,
                            "gasket thickness",
                            "Thickness when pressed; a used gasket measured beside the fire ring."),
                    Keys.size("bore", Unit.MM, 10, 220, "gasket bore", "Diameter of its hole."),
                    Keys.note()));

    static final Form CAM = new Form(
            "cam",
            "The cam's chain or belt.",
            List.of(new Form.Key(
                    "sprocket-teeth",
                    new Value.OfWhole(8, 200),
                    true,
                    "sprocket teeth",
                    "Teeth of the sprocket on the camshaft.")));

    static final Form WANTED_VALVE = new Form(
            "set of wanted gaps",
            "The least gaps wanted of one valve.",
            List.of(
                    wanted(
                            "bore-gap",
                            "bore gap",
                            "How far the piston must still be able to rise before it touches the valve."),
                    wanted(
                            "valve-gap",
                            "valve gap",
                            "How far the valve must still be able to open before it touches the crown."),
                    wanted("nearest-gap", "nearest gap", "Least distance between valve and crown."),
                    wanted("side-gap", "side gap", "The valve's edge to its pocket's wall.")));

    /** The block of wanted gaps also holds one block for each valve, under the valve's id. */
    static final Form WANTED = new Form(
            "list of wanted gaps",
            "The least gaps wanted: the maker's figures, or common practice where left out. One block for each valve under its id, and the gaps that belong to no valve.",
            List.of(
                    wanted("valve-to-valve", "valve to valve", "Between the heads of two valves."),
                    wanted("wall-gap", "wall gap", "The valve's edge to the bore wall."),
                    wanted("deck-gap", "deck gap", "The crown's flat edge to the head's flat at top dead centre.")));

    /** The blocks without which no fit can be tried: a book has all of them, or none as an archetype does. */
    static final List<String> FIGURES = List.of("cylinder", "crank", "gaskets", "valves", "pistons");

    private static final List<Form.Key> OWN_KEYS = List.of(
            new Form.Key("book", new Value.OfWhole(1, 1), true, "book", "The kind of book; always 1."),
            new Form.Key("engine", new Value.OfBlock(ENGINE), true, "engine", ENGINE.description()),
            new Form.Key(
                    "instruments",
                    new Value.OfNamed(INSTRUMENT),
                    false,
                    "instruments",
                    "What was measured with, each under a name of your own."),
            new Form.Key("cylinder", new Value.OfBlock(CYLINDER), false, "cylinder", CYLINDER.description()),
            new Form.Key("crank", new Value.OfBlock(CRANK), false, "crank", CRANK.description()),
            new Form.Key("head", new Value.OfBlock(HEAD), false, "head", HEAD.description()),
            new Form.Key(
                    "gaskets",
                    new Value.OfList(GASKET),
                    false,
                    "gaskets",
                    "Head gaskets to choose from, the usual one first."),
            new Form.Key("cam", new Value.OfBlock(CAM), false, "cam", CAM.description()),
            new Form.Key(
                    "ignition",
                    new Value.OfBlock(IgnitionReader.IGNITION),
                    false,
                    "ignition",
                    IgnitionReader.IGNITION.description()),
            new Form.Key("valves", new Value.OfList(ValveForms.VALVE), false, "valves", "The valves."),
            new Form.Key(
                    "pistons",
                    new Value.OfList(PistonForms.PISTON),
                    false,
                    "pistons",
                    "Pistons to choose from, the one now fitted first."),
            new Form.Key("wanted", new Value.OfBlock(WANTED), false, "wanted gaps", WANTED.description()));

    static final Form BOOK = new Form(
            "engine book",
            "All that is true of one type of engine.",
            Stream.of(OWN_KEYS, StructureForms.keys(), CommissioningForms.keys())
                    .flatMap(List::stream)
                    .toList());

    private static Form.Key wanted(String name, String label, String description) {
        return Keys.optional(name, Unit.MM, 0, 20, label, description);
    }
}
