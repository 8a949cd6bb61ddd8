package gudgeon.rebuild.find;

import java.util.List;

/** Why an engine does not seal, as the trade knows it, and how it finds out. */
final class SealingCauses {
    private static final List<String> AIR = List.of(
            "Air turns the crank: hold it, and keep hands off chain, gears and fan.",
            "Goggles on; low pressure on a single.");
    private static final List<String> KICK = List.of("Ignition off and no petrol about: the open plug hole blows.");

    /** The test that reads the pressure once more with oil. */
    static final String OIL_IN = "oil-in";
    /** The test that lets air in and listens. */
    static final String LISTEN = "listen";

    /** Id of the suspect that is none. */
    static final String SOUND = "sound";

    static final String OTHER = "none-of-these";

    private static final List<Cause> CAUSES = List.of(
            Cause.of(
                    "rings",
                    "rings or bore are worn, or a ring is stuck or broken",
                    1,
                    "\\b(top|first|second|third|compression|piston|oil).ring|^(barrel|cylinder)$",
                    "Pressure rises with oil; air at the breather."),
            Cause.of("inlet-valve", "the inlet valve does not seal", 1, "^inlet.valve$", "Air at the inlet."),
            Cause.of("exhaust-valve", "the exhaust valve does not seal", 1, "^exhaust.valve$", "Air at the exhaust."),
            Cause.of(
                    "no-clearance",
                    "a valve has no clearance and never shuts",
                    1,
                    "rockers?$|rocker.(adjusters|shafts|spindles?|washers)|adjuster|(inlet|exhaust).tappet",
                    "Air at a valve; gone once clearances are set."),
            Cause.of(
                    "head-joint", "the head joint leaks", 1, "^head.gasket$|^head$", "Bubbles or a hiss at the joint."),
            Cause.of("plug-joint", "the plug or its washer leaks", 0.5, "^spark.plug$", "Bubbles at the plug."),
            Cause.of(
                    "cam-late",
                    "the cam is late, or its lobes are worn",
                    1,
                    "cam.*(sprocket|chain|gear)|^camshaft$",
                    "Low pressure, and a leak-down that is good."),
            Cause.of(
                    "not-cranked",
                    "throttle shut, decompressor working, or cranked too slowly",
                    1,
                    Cause.NOWHERE,
                    "Low pressure, good leak-down, and more when cranked as it should be."),
            Cause.of("gauge", "the gauge or its hose reads low", 0.5, Cause.NOWHERE, "Another gauge reads more."),
            Cause.of(
                    SOUND,
                    "nothing: it seals as it should",
                    1,
                    Cause.NOWHERE,
                    "The pressure is in the span expected, and little is lost."),
            Cause.of(OTHER, "none of the causes listed", 0.5, Cause.NOWHERE, "Anything."));

    private SealingCauses() {}

    static Catalogue catalogue() {
        return new Catalogue(CAUSES, trials());
    }

    private static List<Trial> trials() {
        return List.of(
                new Trial(
                                "set-clearances",
                                "set both valve clearances, cold, and read again",
                                15,
                                List.of("At firing top dead centre, both valves shut."),
                                KICK)
                        .answer("comes-up", "it comes up", "no-clearance")
                        .otherwise("same", "no change"),
                new Trial(
                                "crank-right",
                                "throttle wide open, decompressor off, kick briskly until the needle stands",
                                5,
                                List.of("Warm the engine by hand first if it is stiff with cold oil."),
                                KICK)
                        .answer("comes-up", "it comes up", "not-cranked")
                        .otherwise("same", "no change"),
                new Trial("other-gauge", "another gauge and hose", 5, List.of("Screwed in with its own washer."), KICK)
                        .answer("more", "it reads as it should", "gauge")
                        .otherwise("same", "the same"),
                new Trial(
                                OIL_IN,
                                "a spoonful of oil through the plug hole, and read again",
                                5,
                                List.of("Turn it round twice before reading."),
                                KICK)
                        .answer("rises", "it rises by a fifth or more", "rings")
                        .otherwise("same", "little change"),
                new Trial(
                                LISTEN,
                                "let air in at firing top dead centre and listen",
                                20,
                                List.of("At the inlet, the exhaust, the breather, the joint and the plug."),
                                AIR)
                        .answer("inlet", "at the inlet", "inlet-valve")
                        .answer("exhaust", "at the exhaust", "exhaust-valve")
                        .answer("breather", "at the breather", "rings")
                        .answer("joint", "at the head joint", "head-joint")
                        .answer("plug", "at the plug", "plug-joint")
                        .otherwise("nowhere", "nowhere much"),
                new Trial(
                                "soapy-water",
                                "soapy water around the head joint and the plug, with air let in",
                                15,
                                List.of("At firing top dead centre, engine cold. Look for bubbles."),
                                AIR)
                        .answer("joint", "bubbles at the head joint", "head-joint")
                        .answer("plug", "bubbles at the plug", "plug-joint")
                        .otherwise("none", "no bubbles"),
                new Trial(
                                "degree-cam",
                                "read the cam's timing by a degree disc",
                                40,
                                List.of("See the page of timing."),
                                List.of("Turn by hand, plug out; stop where it resists."))
                        .answer("late", "it is late", "cam-late")
                        .otherwise("right", "it is right"),
                new Trial(
                                "spirit-in-ports",
                                "pour spirit into the ports and look at the seats",
                                15,
                                List.of("Head upside down, valves shut, a minute for each port."),
                                List.of("Spirit burns: no flame, open windows, gloves."))
                        .opens("^head$")
                        .answer("inlet", "the inlet weeps", "inlet-valve")
                        .answer("exhaust", "the exhaust weeps", "exhaust-valve")
                        .otherwise("dry", "both stay dry"));
    }
}
