package gudgeon.rebuild.find;

import java.util.List;

/** Why a clutch slips, as the trade knows it, and how it finds out. */
final class ClutchCauses {
    private static final List<String> HANDS = List.of("Ignition off, fingers clear of gears and chain.");

    private static final List<Cause> CAUSES = List.of(
            Cause.of(
                    "cable",
                    "the clutch cable has no play",
                    1,
                    "clutch.release|clutch.lever|clutch.adjuster",
                    "It slips as soon as it pulls."),
            Cause.of(
                    "springs",
                    "the clutch springs are weak, short or too few",
                    1,
                    "clutch.springs?",
                    "It slips at high load, more so warm."),
            Cause.of(
                    "plates",
                    "the friction plates are worn, glazed, oily or out of order",
                    1,
                    "clutch.friction.plates?|clutch.plates",
                    "It slips more and more."),
            Cause.of(
                    "steel",
                    "a steel plate is warped or left out",
                    0.5,
                    "clutch.steel.plates?|clutch.plain.plates?",
                    "It judders and slips."),
            Cause.of("oil", "the oil is of the wrong sort", 1, Cause.NOWHERE, "It began with an oil change."),
            Cause.of("none-of-these", "none of the causes listed", 0.5, Cause.NOWHERE, "Anything."));

    private ClutchCauses() {}

    static Catalogue catalogue() {
        return new Catalogue(CAUSES, trials());
    }

    private static List<Trial> trials() {
        return List.of(
                new Trial(
                                "play",
                                "look for play at the clutch lever",
                                3,
                                List.of("A few millimetres at the lever before it lifts."),
                                HANDS)
                        .answer("none", "there is no play", "cable")
                        .otherwise("some", "there is play"),
                new Trial(
                                "which-oil",
                                "look which oil went in, and when it began",
                                3,
                                List.of("Oil with friction modifiers is for dry clutches only."),
                                HANDS)
                        .answer("wrong", "the oil is wrong, or it began with it", "oil")
                        .otherwise("right", "the oil is right"),
                new Trial(
                                "spring-length",
                                "measure the clutch springs",
                                20,
                                List.of("All of them, free length, against the book."),
                                List.of("Springs fly: slacken them crosswise, face out of line."))
                        .opens("clutch.springs?")
                        .answer("short", "short, or too few", "springs")
                        .otherwise("right", "right"),
                new Trial(
                                "plates-out",
                                "take the plates out and measure them",
                                20,
                                List.of(
                                        "Thickness of each friction plate, flatness of each steel one on glass, their order against the book."),
                                List.of("Old linings may hold asbestos: wet, no dust."))
                        .opens("clutch.friction.plates?|clutch.steel.plates?")
                        .answer("worn", "friction plates worn, glazed or in the wrong order", "plates")
                        .answer("warped", "a steel plate warped or missing", "steel")
                        .otherwise("right", "all right"));
    }
}
