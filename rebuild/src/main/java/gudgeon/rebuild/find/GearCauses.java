package gudgeon.rebuild.find;

import java.util.List;

/** Why gears are not selected, as the trade knows it, and how it finds out. */
final class GearCauses {
    private static final List<String> HANDS = List.of("Ignition off, fingers clear of gears and chain.");

    private static final List<Cause> CAUSES = List.of(
            Cause.of(
                    "fork-pin",
                    "a pin or clip of a selector fork is left out",
                    1,
                    "selector.fork.(pins?|clips?)|fork.pin",
                    "One gear or two can't be got at all, since the case was closed."),
            Cause.of(
                    "detent",
                    "the detent or its spring is left out or slack",
                    1,
                    "detent",
                    "Gears are got and not held; it jumps out."),
            Cause.of(
                    "return-spring",
                    "the spring that brings the lever back is off, broken or wrong",
                    1,
                    "selector.return.spring|return.spring",
                    "It shifts once and the lever stays down."),
            Cause.of(
                    "drum",
                    "the selector drum or its pin plate is worn or wrong",
                    0.5,
                    "selector.drum|drum.pin",
                    "It sticks between two gears."),
            Cause.of(
                    "shim",
                    "a thrust washer or shim of the gearbox is left out",
                    1,
                    "(thrust|shim|shaft).*washer|shims?$",
                    "It shifts free on the bench and binds with the case tight."),
            Cause.of(
                    "clutch-drags",
                    "the clutch drags",
                    1,
                    "clutch.(steel|friction|plain).plates?|clutch.release|clutch.lever",
                    "It shifts with the engine still, and not running."),
            Cause.of("none-of-these", "none of the causes listed", 0.5, Cause.NOWHERE, "Anything."));

    private GearCauses() {}

    static Catalogue catalogue() {
        return new Catalogue(CAUSES, trials());
    }

    private static List<Trial> trials() {
        return List.of(
                new Trial(
                                "each-gear",
                                "try every gear by hand with the output shaft turning",
                                10,
                                List.of(
                                        "Clutch in or plates out.",
                                        "Turn the output shaft while you move the lever through all gears, up and down."),
                                HANDS)
                        .answer("one-missing", "a gear can't be got", "fork-pin", "drum")
                        .answer("jumps", "it is got and does not stay", "detent")
                        .answer("lever-stays", "the lever does not come back", "return-spring")
                        .answer("binds", "the shafts bind", "shim")
                        .otherwise("all-there", "all gears are there"),
                new Trial(
                                "slack-case",
                                "slacken the case screws by a turn and try again",
                                15,
                                List.of("Slacken evenly, turn the shafts, and try the gears."),
                                HANDS)
                        .answer("frees", "it frees", "shim")
                        .otherwise("same", "no change"),
                new Trial(
                                "clutch-out",
                                "pull the clutch and turn the basket against the hub",
                                5,
                                List.of("Lever in: the hub must turn free of the basket."),
                                HANDS)
                        .answer("drags", "it drags", "clutch-drags")
                        .otherwise("free", "it is free"),
                new Trial(
                                "look-selector",
                                "take the right cover off and look at detent and return spring",
                                10,
                                List.of("Look for each spring at its pin, and move the lever by hand."),
                                HANDS)
                        .opens("^detent.(arm|spring)$|detent")
                        .answer("detent-wrong", "the detent is wrong", "detent")
                        .answer("spring-off", "the return spring is off", "return-spring")
                        .otherwise("in-order", "both are in order"));
    }
}
