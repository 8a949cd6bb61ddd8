package gudgeon.rebuild.find;

import java.util.List;

/** Why no oil comes, as the trade knows it, and how it finds out. */
final class OilCauses {
    private static final List<String> HANDS = List.of("Ignition off, fingers clear of gears and chain.");
    private static final List<String> HOT = List.of("Let it cool; hot oil scalds.");

    private static final List<Cause> CAUSES = List.of(
            Cause.of(
                    "not-primed",
                    "the pump is dry and does not draw",
                    1,
                    "^oil.pump$|oil.pump.rotors?",
                    "No oil anywhere from the first turn."),
            Cause.of(
                    "pump-gasket",
                    "the pump's gasket is left out, turned or blocks its hole",
                    1,
                    "oil.pump.gasket",
                    "The pump turns and draws air."),
            Cause.of(
                    "pump-drive",
                    "the pump is not driven",
                    0.5,
                    "oil.pump.(gear|drive|pin|key)",
                    "The pump stands still as the crank turns."),
            Cause.of(
                    "strainer",
                    "the strainer or suction is blocked, or draws air",
                    1,
                    "strainer|pick.?up|suction",
                    "A little oil, then none."),
            Cause.of(
                    "oilway",
                    "an oilway is blocked, or a gasket covers its hole",
                    1,
                    "oilway|(case|base|head|oil.pump|cover.*).gasket",
                    "Oil at the pump and none at the top."),
            Cause.of(
                    "gallery-plug",
                    "a gallery plug or O-ring of the oil path is left out",
                    1,
                    "oilway.plugs?|gallery|(barrel|cylinder|head).o-?ring",
                    "The oil goes back to the sump on the way."),
            Cause.of("level", "there is too little oil, or the wrong sort", 1, Cause.NOWHERE, "The stick is dry."),
            Cause.of("none-of-these", "none of the causes listed", 0.5, Cause.NOWHERE, "Anything."));

    private OilCauses() {}

    static Catalogue catalogue() {
        return new Catalogue(CAUSES, trials());
    }

    private static List<Trial> trials() {
        return List.of(
                new Trial(
                                "stick",
                                "look at the stick, and what is in it",
                                2,
                                List.of("On level ground, the stick as the maker says."),
                                HOT)
                        .answer("low", "too little, or the wrong sort", "level")
                        .otherwise("right", "right"),
                new Trial(
                                "prime",
                                "prime the pump by hand and turn it",
                                10,
                                List.of(
                                        "Oil into the pump's outlet or suction by a can, plug out, turn until it shows."),
                                HOT)
                        .answer("comes", "oil comes now", "not-primed")
                        .otherwise("none", "none"),
                new Trial(
                                "at-pump",
                                "open the union or plug next to the pump and turn",
                                15,
                                List.of("A rag below; turn by hand or kick."),
                                HOT)
                        .answer("there", "oil is there", "oilway", "gallery-plug")
                        .otherwise("none", "none there"),
                new Trial(
                                "pump-turns",
                                "see whether the pump turns with the crank",
                                20,
                                List.of("Cover off, turn the crank slowly."),
                                HANDS)
                        .opens("^oil.pump$")
                        .answer("stands", "it stands still", "pump-drive")
                        .otherwise("turns", "it turns"),
                new Trial(
                                "strainer-out",
                                "take the strainer out and look",
                                15,
                                List.of("Sealant worms, swarf, a split O-ring."),
                                HOT)
                        .opens("strainer")
                        .answer("blocked", "blocked, or drawing air", "strainer")
                        .otherwise("clear", "clear"),
                new Trial(
                                "gasket-holes",
                                "hold the gaskets of the oil path to both faces",
                                30,
                                List.of("Every hole against both castings, light through."),
                                HANDS)
                        .opens("oil.pump.gasket")
                        .answer("blocks", "one blocks a hole, or is missing", "pump-gasket", "oilway")
                        .otherwise("right", "all holes are open"));
    }
}
