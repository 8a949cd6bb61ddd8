package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import gudgeon.rebuild.book.Form.Way;
import java.util.List;

/** The blocks of an engine book and their keys. The spans are common practice for small engines, no source; generous on purpose. */
final class Forms {
    private Forms() {}

    static final String NOTE = "Anything worth remembering about it.";

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
                    new Form.Key("note", new Value.OfText(), false, "note", NOTE)));

    static final Form ENGINE = new Form(
            "engine",
            "Which engine the book is of.",
            List.of(
                    new Form.Key("name", new Value.OfText(), true, "engine name", "The engine's name."),
                    new Form.Key("maker", new Value.OfText(), false, "maker", "Who made it."),
                    note()));

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
                    note()));

    static final Form CYLINDER = new Form(
            "cylinder", "The barrel.", List.of(size("bore", Unit.MM, 10, 200, "bore", "Diameter of the bore.")));

    static final Form DECK_HEIGHT = new Form(
            "deck height",
            "Crank axis to the barrel's gasket face.",
            List.of(
                    size("case", Unit.MM, 0, 500, "case deck height", "Crank axis to the face the barrel stands on."),
                    size(
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
                    size("stroke", Unit.MM, 8, 300, "stroke", "Twice the crank radius."),
                    size("rod", Unit.MM, 15, 600, "rod length", "Between the centres of the rod's eyes."),
                    optional(
                            "pin-offset",
                            Unit.MM,
                            -8,
                            8,
                            "gudgeon pin offset",
                            "The gudgeon pin's distance from the piston's middle, + towards the major thrust side; 0 if left out."),
                    optional(
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
            List.of(optional(
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
                    id("gasket"),
                    size(
                            "pressed",
                            Unit.MM,
                            0,
                            10,
                            "gasket thickness",
                            "Thickness when pressed; a used gasket measured beside the fire ring."),
                    size("bore", Unit.MM, 10, 220, "gasket bore", "Diameter of its hole."),
                    note()));

    static final Form CAM = new Form(
            "cam",
            "The cam's chain or belt.",
            List.of(new Form.Key(
                    "sprocket-teeth",
                    new Value.OfWhole(8, 200),
                    true,
                    "sprocket teeth",
                    "Teeth of the sprocket on the camshaft.")));

    static final Form LIFT = new Form(
            "lift",
            "What is known of the lift: a measured table, a named law, or opening and closing angles.",
            List.of(
                    new Form.Key(
                            "table",
                            new Value.OfPoints(),
                            false,
                            "lift table",
                            "Pairs of crank degrees and lift in mm, angles rising: counted from the lobe's centre, or from firing top dead centre where no centre is given."),
                    new Form.Key(
                            "law",
                            new Value.OfWord(List.of("harmonic", "3-4-5", "4-5-6-7")),
                            false,
                            "law of lift",
                            "The cam's law, where it is known."),
                    optional(
                            "duration",
                            Unit.DEGREES,
                            60,
                            500,
                            "duration",
                            "Crank degrees from the start of lift to its end."),
                    optional("greatest", Unit.MM, 0.5, 30, "greatest lift", "Greatest lift."),
                    optional(
                            "centre",
                            Unit.DEGREES,
                            40,
                            180,
                            "lobe centre",
                            "The lobe's centre: crank degrees after overlap top dead centre for an inlet, before it for an exhaust."),
                    new Form.Key(
                            "opens",
                            new Value.OfEvent(),
                            false,
                            "opening angle",
                            "Where it opens, such as '45 bbdc' or '10 btdc'."),
                    new Form.Key(
                            "closes",
                            new Value.OfEvent(),
                            false,
                            "closing angle",
                            "Where it closes, such as '15 atdc' or '50 abdc'."),
                    optional(
                            "at",
                            Unit.MM,
                            0,
                            5,
                            "lift of the angles",
                            "The lift at which opens and closes were taken."),
                    new Form.Key(
                            "measured-at",
                            new Value.OfWord(List.of("lobe", "valve")),
                            false,
                            "place of the lift",
                            "lobe: rocker ratio and valve clearance are still to come; valve (the usual): measured at the valve with its clearance set."),
                    optional(
                            "rocker-ratio",
                            Unit.NONE,
                            0.5,
                            3,
                            "rocker ratio",
                            "Valve lift over lobe lift, for lifts measured at the lobe."),
                    optional(
                            "zero",
                            Unit.MM,
                            -0.5,
                            0.5,
                            "gauge zero",
                            "What is to be added to every lift of the table, mostly '0 ± ' the gauge's doubt.")),
            List.of(
                    new Way("table", List.of(), List.of("centre", "measured-at", "rocker-ratio", "zero")),
                    new Way("law", List.of("duration", "greatest", "centre"), List.of("measured-at", "rocker-ratio")),
                    new Way("opens", List.of("closes", "at", "greatest"), List.of())));

    static final Form VALVE = new Form(
            "valve",
            "A valve.",
            List.of(
                    id("valve"),
                    new Form.Key(
                            "kind", new Value.OfWord(List.of("inlet", "exhaust")), true, "kind", "inlet or exhaust."),
                    size("head", Unit.MM, 5, 120, "head diameter", "Diameter of the valve's head."),
                    size("margin", Unit.MM, 0, 6, "margin", "Thickness of the head's cylindrical edge."),
                    size(
                            "offset",
                            Unit.MM,
                            0,
                            120,
                            "offset",
                            "Bore axis to the middle of the shut valve's face, along the azimuth."),
                    size(
                            "azimuth",
                            Unit.DEGREES,
                            -360,
                            360,
                            "azimuth",
                            "Direction of the offset and the lean, seen from above, from the major thrust side towards the gudgeon pin's axis."),
                    size(
                            "tilt",
                            Unit.DEGREES,
                            -60,
                            60,
                            "tilt",
                            "Lean of the stem, + when its upper end leans outward along the azimuth."),
                    size(
                            "recess",
                            Unit.MM,
                            -20,
                            80,
                            "recess",
                            "How far the middle of the shut valve's face sits above the head's joint face."),
                    size("clearance", Unit.MM, 0, 1.5, "clearance", "Valve clearance, cold."),
                    optional(
                            "spring-travel",
                            Unit.MM,
                            0.5,
                            40,
                            "spring travel",
                            "How far the valve can open before the spring's coils or the guide stop it."),
                    new Form.Key("lift", new Value.OfBlock(LIFT), true, "lift", LIFT.description()),
                    note()));

    static final Form CROWN = new Form(
            "crown",
            "The crown's form on its flat edge: flat, dome or dish.",
            List.of(
                    new Form.Key(
                            "flat",
                            new Value.OfWord(List.of("true")),
                            false,
                            "flat",
                            "true for a crown without dome or dish."),
                    optional("dome", Unit.MM, 0.01, 60, "dome height", "Height of the dome above the flat edge."),
                    optional("base", Unit.MM, 5, 200, "dome base", "Diameter of the circle the dome stands on."),
                    optional("dish", Unit.MM, 0.01, 60, "dish depth", "Depth of the dish below the flat edge."),
                    optional("rim", Unit.MM, 5, 200, "dish rim", "Diameter of the dish's rim.")),
            List.of(
                    new Way("flat", List.of(), List.of()),
                    new Way("dome", List.of("base"), List.of()),
                    new Way("dish", List.of("rim"), List.of())));

    static final Form GROOVE = new Form(
            "groove",
            "The top ring groove.",
            List.of(
                    size(
                            "below",
                            Unit.MM,
                            0.3,
                            40,
                            "ring groove height",
                            "Its upper side below the crown's flat edge."),
                    size("depth", Unit.MM, 0.3, 15, "ring groove depth", "Its depth from the land.")));

    static final Form POCKET = new Form(
            "pocket",
            "A valve pocket.",
            List.of(
                    size("diameter", Unit.MM, 5, 130, "diameter", "Across the pocket."),
                    size(
                            "depth",
                            Unit.MM,
                            -30,
                            40,
                            "depth",
                            "Along the pocket's own axis, from where it crosses the plane of the crown's flat edge to the floor; negative where the floor stays above that plane in a dome."),
                    size("offset", Unit.MM, 0, 120, "offset", "Bore axis to that crossing, along the azimuth."),
                    size(
                            "azimuth",
                            Unit.DEGREES,
                            -360,
                            360,
                            "azimuth",
                            "Direction of the offset and the lean, as for the valve."),
                    size("tilt", Unit.DEGREES, -60, 60, "tilt", "Lean of the pocket's axis, as for the valve.")));

    static final Form PISTON = new Form(
            "piston",
            "A piston to choose.",
            List.of(
                    id("piston"),
                    new Form.Key(
                            "from",
                            new Value.OfWord(List.of("original", "pattern", "used", "made")),
                            true,
                            "where it came from",
                            "original, pattern, used or made."),
                    new Form.Key("crown", new Value.OfBlock(CROWN), true, "crown", CROWN.description()),
                    size("land", Unit.MM, 10, 200, "top land diameter", "Diameter at the top land."),
                    optional(
                            "compression-height",
                            Unit.MM,
                            5,
                            150,
                            "compression height",
                            "Gudgeon pin's axis to the crown's flat edge."),
                    optional(
                            "protrusion",
                            Unit.MM,
                            -30,
                            15,
                            "crown height at TDC",
                            "As for the crank, measured with this piston."),
                    new Form.Key("groove", new Value.OfBlock(GROOVE), false, "ring groove", GROOVE.description()),
                    optional(
                            "crown-thickness",
                            Unit.MM,
                            1,
                            40,
                            "crown thickness",
                            "Metal between the plane of the crown's flat edge and its underside."),
                    new Form.Key(
                            "pockets",
                            new Value.OfNamed(POCKET),
                            false,
                            "pockets",
                            "The valve pockets, each under its valve's id."),
                    note()));

    static final Form WANTED_VALVE = new Form(
            "wanted gaps of a valve",
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
            "wanted gaps",
            "The least gaps wanted: the maker's figures, or common practice where left out. One block for each valve under its id, and the gaps that belong to no valve.",
            List.of(
                    wanted("valve-to-valve", "valve to valve", "Between the heads of two valves."),
                    wanted("wall-gap", "wall gap", "The valve's edge to the bore wall."),
                    wanted("deck-gap", "deck gap", "The crown's flat edge to the head's flat at top dead centre.")));

    static final Form BOOK = new Form(
            "engine book",
            "All that is true of one type of engine.",
            List.of(
                    new Form.Key("book", new Value.OfWhole(1, 1), true, "book", "The kind of book; always 1."),
                    new Form.Key("engine", new Value.OfBlock(ENGINE), true, "engine", ENGINE.description()),
                    new Form.Key(
                            "instruments",
                            new Value.OfNamed(INSTRUMENT),
                            false,
                            "instruments",
                            "What was measured with, each under a name of your own."),
                    new Form.Key("cylinder", new Value.OfBlock(CYLINDER), true, "cylinder", CYLINDER.description()),
                    new Form.Key("crank", new Value.OfBlock(CRANK), true, "crank", CRANK.description()),
                    new Form.Key("head", new Value.OfBlock(HEAD), false, "head", HEAD.description()),
                    new Form.Key(
                            "gaskets",
                            new Value.OfList(GASKET),
                            true,
                            "gaskets",
                            "Head gaskets to choose from, the usual one first."),
                    new Form.Key("cam", new Value.OfBlock(CAM), false, "cam", CAM.description()),
                    new Form.Key("valves", new Value.OfList(VALVE), true, "valves", "The valves."),
                    new Form.Key(
                            "pistons",
                            new Value.OfList(PISTON),
                            true,
                            "pistons",
                            "Pistons to choose from, the one now fitted first."),
                    new Form.Key("wanted", new Value.OfBlock(WANTED), false, "wanted gaps", WANTED.description())));

    private static Form.Key size(String name, Unit unit, double low, double high, String label, String description) {
        return new Form.Key(name, new Value.OfSize(unit, low, high), true, label, description);
    }

    private static Form.Key optional(
            String name, Unit unit, double low, double high, String label, String description) {
        return new Form.Key(name, new Value.OfSize(unit, low, high), false, label, description);
    }

    private static Form.Key wanted(String name, String label, String description) {
        return optional(name, Unit.MM, 0, 20, label, description);
    }

    private static Form.Key id(String of) {
        return new Form.Key(
                "id",
                new Value.OfText(),
                true,
                "id",
                "A name of your own for this " + of + ", of letters, digits and hyphens.");
    }

    private static Form.Key note() {
        return new Form.Key("note", new Value.OfText(), false, "note", NOTE);
    }
}
