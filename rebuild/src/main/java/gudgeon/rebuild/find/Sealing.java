package gudgeon.rebuild.find;

import gudgeon.mechanics.chamber.CrankingPressure;
import gudgeon.mechanics.chamber.StandardAtmosphere;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.LeakPath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * How an engine seals: what cranking pressure it should make, what was read, and what that says of its suspects. What a cause does to
 * a reading is common practice, no source; it is held wide.
 *
 * @param build the build as far as it counts
 * @param expected the pressure to expect at sea level in kPa on the gauge; empty where the book has no figures for it
 * @param pressures the pressures read since the engine last went together or came apart
 * @param leaks the leak-downs read since then
 */
public record Sealing(
        Build build,
        Optional<CrankingPressure> expected,
        List<Told<PressureRead>> pressures,
        List<Told<LeakDownRead>> leaks) {
    /** Below 60 on a gauge of 80, a loss of 25 %, a cylinder is taken off and looked at (FAA AC 43.13-1B, 8-14). */
    public static final double FAA_MOST_LOSS = 25;

    private static final Set<String> LEAKS =
            Set.of("rings", "inlet-valve", "exhaust-valve", "no-clearance", "head-joint", "plug-joint");
    private static final Map<LeakPath, Set<String>> HEARD = Map.of(
            LeakPath.INLET, Set.of("inlet-valve", "no-clearance"),
            LeakPath.EXHAUST, Set.of("exhaust-valve", "no-clearance"),
            LeakPath.BREATHER, Set.of("rings"),
            LeakPath.HEAD_JOINT, Set.of("head-joint"),
            LeakPath.PLUG, Set.of("plug-joint"));
    private static final List<String> AIR = List.of(
            "Air turns the crank: hold it, and keep hands off chain, gears and fan.",
            "Goggles on; low pressure on a single.");
    private static final List<String> KICK = List.of("Ignition off and no petrol about: the open plug hole blows.");

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
                    "rocker|adjuster|tappet",
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
                    "(?!)",
                    "Low pressure, good leak-down, and more when cranked as it should be."),
            Cause.of("gauge", "the gauge or its hose reads low", 0.5, "(?!)", "Another gauge reads more."));

    public Sealing {
        pressures = List.copyOf(pressures);
        leaks = List.copyOf(leaks);
    }

    /** That of a build. */
    public static Sealing of(Build build) {
        long since = 0;
        for (long number = 1; number <= build.size(); number++) {
            if (build.fact(number).filter(Sealing::disturbs).isPresent()) {
                since = number;
            }
        }
        return new Sealing(
                build,
                expected(build),
                after(build.told(PressureRead.class, Finding.SEALING), since),
                after(build.told(LeakDownRead.class, Finding.SEALING), since));
    }

    private static boolean disturbs(Fact fact) {
        return fact instanceof Fact.TakenOff || fact instanceof Fact.Fitted || fact instanceof Fact.Undone;
    }

    private static <F> List<Told<F>> after(List<Told<F>> told, long since) {
        return told.stream().filter(one -> one.number() > since).toList();
    }

    private static Optional<CrankingPressure> expected(Build build) {
        return AsMeasured.of(build)
                .flatMap(parts -> {
                    try {
                        return Optional.of(TrialFit.withoutCures(parts.geometry(), parts.choice(), LengthUnit.MM));
                    } catch (UnknownChoice impossible) {
                        return Optional.empty();
                    }
                })
                .flatMap(fit -> fit.figures().stream()
                        .filter(figure -> figure.key().equals("crankingKPaAt0m"))
                        .findFirst())
                .map(Sealing::range);
    }

    private static CrankingPressure range(Figure figure) {
        return new CrankingPressure(figure.low(), figure.high());
    }

    /** The range to expect at a height above the sea in m, in kPa on the gauge: in proportion to the air's pressure. */
    public Optional<CrankingPressure> expectedAt(double altitudeM) {
        double share = StandardAtmosphere.pressureKPa(altitudeM) / StandardAtmosphere.SEA_LEVEL_KPA;
        return expected.map(range -> new CrankingPressure(share * range.lowKPa(), share * range.highKPa()));
    }

    /** What should be read and what was, sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        expected.ifPresent(range -> all.add(String.format(
                Locale.ROOT,
                "This engine as measured should make %.0f to %.0f kPa (%.1f to %.1f bar, %.0f to %.0f psi) on the gauge at the sea,"
                        + " dry, throttle wide open.",
                range.lowKPa(),
                range.highKPa(),
                range.lowKPa() / 100,
                range.highKPa() / 100,
                range.lowKPa() / 6.894757,
                range.highKPa() / 6.894757)));
        last(Cranking.DRY)
                .ifPresent(told -> kpa(told)
                        .ifPresent(read -> expectedAt(told.fact().altitudeM().orElse(0))
                                .ifPresent(range -> all.add(String.format(
                                        Locale.ROOT,
                                        "Read dry: %.0f kPa, %s.",
                                        read,
                                        read < range.lowKPa()
                                                ? String.format(
                                                        Locale.ROOT,
                                                        "%.0f kPa below what is expected there",
                                                        range.lowKPa() - read)
                                                : read > range.highKPa() ? "more than expected" : "as expected")))));
        leaks.stream()
                .reduce((one, other) -> other)
                .flatMap(Sealing::loss)
                .ifPresent(loss -> all.add(String.format(
                        Locale.ROOT,
                        "Leak-down: %.0f %% lost, %s 25 %%, at which aircraft practice takes a cylinder off (FAA AC 43.13-1B, 8-14, with an"
                                + " orifice of 0.040 in for bores below 5 in; another orifice reads otherwise).",
                        loss,
                        loss > FAA_MOST_LOSS ? "above" : "not above")));
        return all;
    }

    Case asCase(Hunt hunt) {
        Reach reach = new Reach(build);
        List<Suspect> suspects = CAUSES.stream().map(cause -> cause.in(reach)).toList();
        List<Test> tests =
                trials().stream().map(trial -> trial.in(reach, CAUSES)).toList();
        List<Evidence> read = new ArrayList<>();
        dry(suspects).ifPresent(read::add);
        oil(suspects).ifPresent(read::add);
        leaks.forEach(told -> leak(told, suspects, read));
        List<String> grounds = new ArrayList<>(sentences());
        grounds.add(
                "The span expected is polytropic compression from where the inlet shuts; opening angles alone, and no lift"
                        + " measured, make it wide.");
        grounds.add(
                "A leak takes about a third of the pressure, oil brings worn rings up by about a third, each within wide doubt:"
                        + " common practice, no source.");
        return Paths.of(build, hunt, suspects, tests, read, grounds);
    }

    private Optional<Told<PressureRead>> last(Cranking how) {
        return pressures.stream().filter(told -> told.fact().how() == how).reduce((one, other) -> other);
    }

    private static Optional<Double> kpa(Told<PressureRead> told) {
        return TypedSize.of(Unit.KPA, told.fact().pressure(), 1) instanceof TypedSize.Read read && read.value() > 0
                ? Optional.of(read.value())
                : Optional.empty();
    }

    private static Optional<Double> loss(Told<LeakDownRead> told) {
        return TypedSize.of(Unit.PERCENT, told.fact().loss(), 1) instanceof TypedSize.Read read
                ? Optional.of(read.value())
                : Optional.empty();
    }

    private Optional<Evidence> dry(List<Suspect> suspects) {
        Optional<Told<PressureRead>> told = last(Cranking.DRY);
        Optional<CrankingPressure> range =
                told.flatMap(one -> expectedAt(one.fact().altitudeM().orElse(0)));
        Optional<Double> read = told.flatMap(Sealing::kpa);
        if (range.isEmpty() || read.isEmpty()) {
            return Optional.empty();
        }
        double middle = Math.log(range.get().lowKPa() * range.get().highKPa()) / 2;
        double half = Math.log(range.get().highKPa() / range.get().lowKPa()) / 2;
        double off = Math.log(read.get()) - middle;
        boolean shut = !told.get().fact().throttleOpen();
        return Optional.of(new Evidence(
                List.of(told.get().number()),
                "Cranked dry: " + told.get().fact().pressure() + (shut ? ", throttle not open." : "."),
                logs(suspects, suspect -> {
                    boolean cranked = suspect.id().equals("not-cranked");
                    double mean = Math.log(cranked ? 0.6 : suspect.id().equals("cam-late") ? 0.75 : 0.67);
                    double throttle = shut ? Math.log(cranked ? 0.9 : 0.2) : 0;
                    return normal(off, mean, Math.hypot(half, 0.3)) + throttle;
                })));
    }

    private Optional<Evidence> oil(List<Suspect> suspects) {
        Optional<Told<PressureRead>> dry = last(Cranking.DRY);
        Optional<Told<PressureRead>> wet = last(Cranking.WITH_OIL);
        Optional<Double> from = dry.flatMap(Sealing::kpa);
        Optional<Double> to = wet.flatMap(Sealing::kpa);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        double rise = Math.log(to.get() / from.get());
        return Optional.of(new Evidence(
                List.of(dry.orElseThrow().number(), wet.orElseThrow().number()),
                String.format(Locale.ROOT, "With oil it makes %.2f times as much as dry.", Math.exp(rise)),
                logs(
                        suspects,
                        suspect -> suspect.id().equals("rings")
                                ? normal(rise, Math.log(1.35), 0.15)
                                : normal(rise, Math.log(1.05), 0.08))));
    }

    private static void leak(Told<LeakDownRead> told, List<Suspect> suspects, List<Evidence> read) {
        loss(told)
                .ifPresent(loss -> read.add(new Evidence(
                        List.of(told.number()),
                        String.format(Locale.ROOT, "Leak-down: %.0f %% lost.", loss),
                        logs(
                                suspects,
                                suspect -> LEAKS.contains(suspect.id()) ? normal(loss, 40, 20) : normal(loss, 8, 8)))));
        List<LeakPath> out = told.fact().out();
        if (!out.isEmpty()) {
            read.add(new Evidence(
                    List.of(told.number()),
                    "Air was listened for at the openings.",
                    logs(
                            suspects,
                            suspect -> HEARD.entrySet().stream()
                                    .mapToDouble(path -> Math.log(heard(path.getKey(), path.getValue(), out, suspect)))
                                    .sum())));
        }
    }

    private static double heard(LeakPath path, Set<String> by, List<LeakPath> out, Suspect suspect) {
        double chance = !by.contains(suspect.id()) ? 0.08 : suspect.id().equals("no-clearance") ? 0.55 : 0.9;
        return out.contains(path) ? chance : 1 - chance;
    }

    /** Logarithm of a normal density; never so low that one slip of reading decides all. */
    private static double normal(double value, double mean, double deviation) {
        double off = (value - mean) / deviation;
        return Math.max(-0.5 * off * off, -6) - Math.log(deviation);
    }

    private static Map<String, Double> logs(List<Suspect> suspects, ToDoubleFunction<Suspect> log) {
        Map<String, Double> logs = new HashMap<>();
        suspects.forEach(suspect -> logs.put(suspect.id(), log.applyAsDouble(suspect)));
        return logs;
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
                                "oil-in",
                                "a spoonful of oil through the plug hole, and read again",
                                5,
                                List.of("Turn it round twice before reading."),
                                KICK)
                        .answer("rises", "it rises by a fifth or more", "rings")
                        .otherwise("same", "little change"),
                new Trial(
                                "listen",
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
