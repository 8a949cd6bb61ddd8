package gudgeon.rebuild.find;

import java.util.List;

/** Why there is no spark, as the trade knows it, and how it finds out. */
final class SparkCauses {
    private static final List<String> SPARKS =
            List.of("Ignition gives a shock: hold leads with insulated pliers only.", "No petrol and no vapour about.");

    private static final List<Cause> CAUSES = List.of(
            Cause.of(
                    "plug",
                    "the spark plug is dead, wet or its gap is wrong",
                    1,
                    "^spark.plug$",
                    "Another plug sparks."),
            Cause.of(
                    "points-dirty",
                    "the points are dirty, oily or do not close",
                    1,
                    "points.seal|points?$|contact.breaker|breaker",
                    "No spark at the points by hand."),
            Cause.of(
                    "points-gap",
                    "the points do not open",
                    1,
                    "points.plate|points?$|breaker",
                    "They stay shut all round."),
            Cause.of(
                    "condenser",
                    "the condenser has failed",
                    1,
                    "condenser|capacitor",
                    "A weak yellow spark, and much sparking at the points."),
            Cause.of("coil", "the coil or its air gap is wrong", 1, "coil|stator", "No spark with good points."),
            Cause.of(
                    "switch",
                    "the switch or a lead goes to earth",
                    1,
                    "kill|switch|loom|lead",
                    "It sparks with the switch's lead off."),
            Cause.of(
                    "key",
                    "the rotor or its key has moved",
                    0.5,
                    "^(rotor|flywheel)$|(rotor|flywheel).key",
                    "It sparks at the wrong time."),
            Cause.of("none-of-these", "none of the causes listed", 0.5, Cause.NOWHERE, "Anything."));

    private SparkCauses() {}

    static Catalogue catalogue() {
        return new Catalogue(CAUSES, trials());
    }

    private static List<Trial> trials() {
        return List.of(
                new Trial(
                                "other-plug",
                                "another plug, held to the head, and kick",
                                5,
                                List.of("A plug known to be good, its body on bare metal away from the plug hole."),
                                SPARKS)
                        .answer("sparks", "it sparks", "plug")
                        .answer("weak", "weak and yellow", "condenser")
                        .otherwise("none", "no spark"),
                new Trial(
                                "switch-off",
                                "take the switch's lead off and kick",
                                5,
                                List.of("The lead from the coil to the switch, off at the engine."),
                                SPARKS)
                        .answer("sparks", "it sparks now", "switch")
                        .otherwise("none", "no change"),
                new Trial(
                                "points-look",
                                "look at the points, gap and faces",
                                10,
                                List.of(
                                        "Turn until they are widest: gap by feeler.",
                                        "Draw clean card through them shut."),
                                SPARKS)
                        .answer("dirty", "dirty or oily", "points-dirty")
                        .answer("shut", "they do not open", "points-gap")
                        .otherwise("right", "clean, and open to the gap"),
                new Trial(
                                "condenser-new",
                                "another condenser",
                                10,
                                List.of("One known to be good, clipped across the points."),
                                SPARKS)
                        .answer("better", "a good spark", "condenser")
                        .otherwise("same", "no change"),
                new Trial(
                                "coil-gap",
                                "coil: air gap by card, and its resistance",
                                15,
                                List.of("Against the book's figures."),
                                SPARKS)
                        .answer("wrong", "out of the book's figures", "coil")
                        .otherwise("right", "right"),
                new Trial(
                                "rotor-key",
                                "look at the rotor's key and marks",
                                15,
                                List.of("Nut off, marks and key looked at."),
                                List.of("Use a puller, never levers; never strike a shaft's end."))
                        .opens("^rotor$|flywheel")
                        .answer("moved", "the key is sheared or the rotor moved", "key")
                        .otherwise("right", "right"));
    }
}
