package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import gudgeon.rebuild.book.Form.Way;
import java.util.List;

/** The blocks of a piston and their keys. Spans as in {@link Forms}. */
final class PistonForms {
    private PistonForms() {}

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
                    Keys.optional("dome", Unit.MM, 0.01, 60, "dome height", "Height of the dome above the flat edge."),
                    Keys.optional("base", Unit.MM, 5, 200, "dome base", "Diameter of the circle the dome stands on."),
                    Keys.optional("dish", Unit.MM, 0.01, 60, "dish depth", "Depth of the dish below the flat edge."),
                    Keys.optional("rim", Unit.MM, 5, 200, "dish rim", "Diameter of the dish's rim.")),
            List.of(
                    new Way("flat", List.of(), List.of()),
                    new Way("dome", List.of("base"), List.of()),
                    new Way("dish", List.of("rim"), List.of())));

    static final Form GROOVE = new Form(
            "groove",
            "The top ring groove.",
            List.of(
                    Keys.size(
                            "below",
                            Unit.MM,
                            0.3,
                            40,
                            "ring groove height",
                            "Its upper side below the crown's flat edge."),
                    Keys.size("depth", Unit.MM, 0.3, 15, "ring groove depth", "Its depth from the land.")));

    static final Form POCKET = new Form(
            "pocket",
            "A valve pocket.",
            List.of(
                    Keys.size("diameter", Unit.MM, 5, 130, "diameter", "Across the pocket."),
                    Keys.size(
                            "depth",
                            Unit.MM,
                            -30,
                            40,
                            "depth",
                            "Along the pocket's own axis, from where it crosses the plane of the crown's flat edge to the floor; negative where the floor stays above that plane in a dome."),
                    Keys.size("offset", Unit.MM, 0, 120, "offset", "Bore axis to that crossing, along the azimuth."),
                    Keys.size(
                            "azimuth",
                            Unit.DEGREES,
                            -360,
                            360,
                            "azimuth",
                            "Direction of the offset and the lean, as for the valve."),
                    Keys.size("tilt", Unit.DEGREES, -60, 60, "tilt", "Lean of the pocket's axis, as for the valve.")));

    static final Form PISTON = new Form(
            "piston",
            "A piston to choose.",
            List.of(
                    Keys.id("piston"),
                    new Form.Key(
                            "from",
                            new Value.OfWord(List.of("original", "pattern", "used", "made")),
                            true,
                            "where it came from",
                            "original, pattern, used or made."),
                    new Form.Key("crown", new Value.OfBlock(CROWN), true, "crown", CROWN.description()),
                    Keys.size("land", Unit.MM, 10, 200, "top land diameter", "Diameter at the top land."),
                    Keys.optional(
                            "compression-height",
                            Unit.MM,
                            5,
                            150,
                            "compression height",
                            "Gudgeon pin's axis to the crown's flat edge."),
                    Keys.optional(
                            "protrusion",
                            Unit.MM,
                            -30,
                            15,
                            "crown height at TDC",
                            "As for the crank, measured with this piston."),
                    new Form.Key("groove", new Value.OfBlock(GROOVE), false, "ring groove", GROOVE.description()),
                    Keys.optional(
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
                    Keys.note()));
}
