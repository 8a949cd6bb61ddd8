package gudgeon.rebuild.find;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Trouble;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Not shifting, slipping, no spark, no oil: the trade's causes and tests, with what the build knows already. */
final class Paths {
    private static final List<String> SPARKS =
            List.of("Ignition gives a shock: hold leads with insulated pliers only.", "No petrol and no vapour about.");
    private static final List<String> HANDS = List.of("Ignition off, fingers clear of gears and chain.");
    private static final List<String> HOT = List.of("Let it cool; hot oil scalds.");

    private static final List<Cause> SHIFT = List.of(
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
            Cause.of("none-of-these", "none of the causes listed", 0.5, "(?!)", "Anything."));

    private static final List<Cause> SLIP = List.of(
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
            Cause.of("oil", "the oil is of the wrong sort", 1, "(?!)", "It began with an oil change."),
            Cause.of("none-of-these", "none of the causes listed", 0.5, "(?!)", "Anything."));

    private static final List<Cause> SPARK = List.of(
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
            Cause.of("none-of-these", "none of the causes listed", 0.5, "(?!)", "Anything."));

    private static final List<Cause> OIL = List.of(
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
            Cause.of("level", "there is too little oil, or the wrong sort", 1, "(?!)", "The stick is dry."),
            Cause.of("none-of-these", "none of the causes listed", 0.5, "(?!)", "Anything."));

    private Paths() {}

    static Case of(Build build, Hunt hunt) {
        Build then = hunt.closed()
                .map(told -> Build.of(build.book()).after(build.entries().subList(0, Math.toIntExact(told.number()))))
                .orElse(build);
        List<Cause> causes = causes(hunt.trouble());
        Reach reach = new Reach(then);
        List<Suspect> suspects = causes.stream().map(cause -> cause.in(reach)).toList();
        List<Test> tests = trials(hunt.trouble()).stream()
                .map(trial -> trial.in(reach, causes))
                .toList();
        return of(then, hunt, suspects, tests, List.of(), List.of());
    }

    /** The case of some suspects: what the build knows, what was read, and what was tried. */
    static Case of(
            Build build,
            Hunt hunt,
            List<Suspect> suspects,
            List<Test> tests,
            List<Evidence> read,
            List<String> grounds) {
        TestsMade made = new TestsMade(tests, hunt.tried());
        List<Evidence> evidence = new ArrayList<>(new Known(build, suspects).evidence());
        evidence.addAll(read);
        evidence.addAll(made.evidence(suspects));
        Map<String, List<String>> explains = new HashMap<>();
        suspects.forEach(suspect -> explains.put(suspect.id(), made.explains(suspect)));
        List<String> assumptions = new ArrayList<>(grounds);
        assumptions.add(Known.ASSUMPTION);
        assumptions.add("A cause brings its answer of a test about in 90 of 100 cases: common practice, no source.");
        assumptions.addAll(made.unknown());
        return new Case(suspects, evidence, made.left(), explains, assumptions);
    }

    private static List<Cause> causes(Trouble trouble) {
        return switch (trouble) {
            case NO_SHIFT -> SHIFT;
            case SLIPS -> SLIP;
            case NO_SPARK -> SPARK;
            case NO_OIL -> OIL;
            case TIGHT_SPOT, POOR_SEALING -> throw new IllegalArgumentException("no path for " + trouble);
        };
    }

    private static List<Trial> trials(Trouble trouble) {
        return switch (trouble) {
            case NO_SHIFT -> shift();
            case SLIPS -> slip();
            case NO_SPARK -> spark();
            case NO_OIL -> oil();
            case TIGHT_SPOT, POOR_SEALING -> throw new IllegalArgumentException("no path for " + trouble);
        };
    }

    private static List<Trial> shift() {
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

    private static List<Trial> slip() {
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

    private static List<Trial> spark() {
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

    private static List<Trial> oil() {
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
