package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import gudgeon.rebuild.book.Form.Way;
import java.util.List;

/** The blocks of a valve and its lift, and their keys. Spans as in {@link Forms}. */
final class ValveForms {
    private ValveForms() {}

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
                    Keys.optional(
                            "duration",
                            Unit.DEGREES,
                            60,
                            500,
                            "duration",
                            "Crank degrees from the start of lift to its end."),
                    Keys.optional("greatest", Unit.MM, 0.5, 30, "greatest lift", "Greatest lift."),
                    Keys.optional(
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
                    Keys.optional(
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
                    Keys.optional(
                            "rocker-ratio",
                            Unit.NONE,
                            0.5,
                            3,
                            "rocker ratio",
                            "Valve lift over lobe lift, for lifts measured at the lobe."),
                    Keys.optional(
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
                    Keys.id("valve"),
                    new Form.Key(
                            "kind", new Value.OfWord(List.of("inlet", "exhaust")), true, "kind", "inlet or exhaust."),
                    Keys.size("head", Unit.MM, 5, 120, "head diameter", "Diameter of the valve's head."),
                    Keys.size("margin", Unit.MM, 0, 6, "margin", "Thickness of the head's cylindrical edge."),
                    Keys.size(
                            "offset",
                            Unit.MM,
                            0,
                            120,
                            "offset",
                            "Bore axis to the middle of the shut valve's face, along the azimuth."),
                    Keys.size(
                            "azimuth",
                            Unit.DEGREES,
                            -360,
                            360,
                            "azimuth",
                            "Direction of the offset and the lean, seen from above, from the major thrust side towards the gudgeon pin's axis."),
                    Keys.size(
                            "tilt",
                            Unit.DEGREES,
                            -60,
                            60,
                            "tilt",
                            "Lean of the stem, + when its upper end leans outward along the azimuth."),
                    Keys.size(
                            "recess",
                            Unit.MM,
                            -20,
                            80,
                            "recess",
                            "How far the middle of the shut valve's face sits above the head's joint face."),
                    Keys.size("clearance", Unit.MM, 0, 1.5, "clearance", "Valve clearance, cold."),
                    Keys.optional(
                            "spring-travel",
                            Unit.MM,
                            0.5,
                            40,
                            "spring travel",
                            "How far the valve can open before the spring's coils or the guide stop it."),
                    new Form.Key("lift", new Value.OfBlock(LIFT), true, "lift", LIFT.description()),
                    Keys.note()));
}
