package gudgeon.rebuild.find;

import gudgeon.mechanics.chamber.CrankingPressure;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import gudgeon.rebuild.journal.LeakPath;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** What readings of how an engine seals say of its suspects. What a cause does to a reading is common practice, no source. */
record SealingEvidence(Sealing sealing) {
    private static final List<String> GROUNDS = List.of(
            "The span expected is wide where only opening angles are known and no lift was measured.",
            "A leak leaves about two thirds of the pressure, oil brings worn rings up by about a third and anything else by a"
                    + " twentieth, each within wide doubt; air is heard at its own way out in 9 of 10 cases and elsewhere in 1 of 12:"
                    + " common practice, no source.");

    /**
     * What a cause does.
     *
     * @param pressure share of the expected pressure that it leaves, and its standard doubt as a share
     * @param rise how many times the pressure becomes with oil, and its doubt as a share
     * @param loss per cent lost at leak-down, and its doubt
     * @param out where air comes out of it
     */
    private record Does(About pressure, About rise, About loss, Map<LeakPath, Double> out) {}

    /** About so much, with its standard doubt. */
    private record About(double value, double doubt) {}

    private static final About LEAKING = new About(0.67, 0.3);
    private static final About SOUND = new About(1.0, 0.1);
    private static final About UP = new About(1.35, 0.15);
    private static final About HARDLY = new About(1.05, 0.08);
    private static final About MUCH = new About(40, 20);
    private static final About LITTLE = new About(8, 8);
    private static final double HEARD = 0.9;
    private static final double HEARD_ELSEWHERE = 0.08;
    /** Of two valves either may be the one that never shuts. */
    private static final double EITHER = 0.55;
    /** Of a cause that nobody listed any way out is as good as another. */
    private static final double ANYWHERE = 0.3;

    private static final Map<String, Does> CAUSES = Map.ofEntries(
            Map.entry("rings", new Does(LEAKING, UP, MUCH, Map.of(LeakPath.BREATHER, HEARD))),
            Map.entry("inlet-valve", new Does(LEAKING, HARDLY, MUCH, Map.of(LeakPath.INLET, HEARD))),
            Map.entry("exhaust-valve", new Does(LEAKING, HARDLY, MUCH, Map.of(LeakPath.EXHAUST, HEARD))),
            Map.entry(
                    "no-clearance",
                    new Does(LEAKING, HARDLY, MUCH, Map.of(LeakPath.INLET, EITHER, LeakPath.EXHAUST, EITHER))),
            Map.entry("head-joint", new Does(LEAKING, HARDLY, MUCH, Map.of(LeakPath.HEAD_JOINT, HEARD))),
            Map.entry("plug-joint", new Does(LEAKING, HARDLY, MUCH, Map.of(LeakPath.PLUG, HEARD))),
            Map.entry("cam-late", new Does(new About(0.75, 0.3), HARDLY, LITTLE, Map.of())),
            Map.entry("not-cranked", new Does(new About(0.6, 0.3), HARDLY, LITTLE, Map.of())),
            Map.entry("gauge", new Does(LEAKING, HARDLY, LITTLE, Map.of())),
            Map.entry(SealingCauses.SOUND, new Does(SOUND, HARDLY, LITTLE, Map.of())),
            Map.entry(
                    SealingCauses.OTHER,
                    new Does(
                            new About(0.75, 0.5),
                            new About(1.15, 0.25),
                            new About(25, 25),
                            Map.of(
                                    LeakPath.INLET, ANYWHERE,
                                    LeakPath.EXHAUST, ANYWHERE,
                                    LeakPath.BREATHER, ANYWHERE,
                                    LeakPath.HEAD_JOINT, ANYWHERE,
                                    LeakPath.PLUG, ANYWHERE))));

    private static final List<LeakPath> WAYS_OUT =
            List.of(LeakPath.INLET, LeakPath.EXHAUST, LeakPath.BREATHER, LeakPath.HEAD_JOINT, LeakPath.PLUG);
    /** A throttle that was not open is told of a cranking that was not right in most cases, and of others seldom. */
    private static final double SHUT_IF_NOT_CRANKED = 0.9;

    private static final double SHUT = 0.2;
    /** Farther off than this, one slip of reading would decide all. */
    private static final double LEAST_LOG = -6;

    Case asCase(Hunt hunt) {
        List<Suspect> suspects = SealingCauses.catalogue().suspects(sealing.build());
        List<Evidence> read = new ArrayList<>();
        Set<String> told = new HashSet<>();
        dry(suspects).ifPresent(read::add);
        oil(suspects).ifPresent(one -> {
            read.add(one);
            told.add(SealingCauses.OIL_IN);
        });
        last(sealing.leaks()).flatMap(leak -> lost(leak, suspects)).ifPresent(read::add);
        last(sealing.leaks().stream()
                        .filter(leak -> !leak.fact().out().isEmpty())
                        .toList())
                .ifPresent(leak -> {
                    read.add(heard(leak, suspects));
                    told.add(SealingCauses.LISTEN);
                });
        List<String> grounds = new ArrayList<>(sealing.sentences());
        grounds.addAll(GROUNDS);
        return SealingCauses.catalogue().asCase(sealing.build(), hunt, read, told, grounds);
    }

    private static <F> Optional<Told<F>> last(List<Told<F>> told) {
        return told.isEmpty() ? Optional.empty() : Optional.of(told.get(told.size() - 1));
    }

    private Optional<Evidence> dry(List<Suspect> suspects) {
        Optional<Told<PressureRead>> told = last(sealing.pressures().stream()
                .filter(one -> one.fact().how() == Cranking.DRY)
                .toList());
        Optional<CrankingPressure> range =
                told.flatMap(one -> sealing.expectedAt(one.fact().altitudeM().orElse(0)));
        Optional<Double> read = told.map(Told::fact).flatMap(Sealing::kpa);
        if (range.isEmpty() || read.isEmpty()) {
            return Optional.empty();
        }
        PressureRead fact = told.orElseThrow().fact();
        double middle = Math.sqrt(range.get().lowKPa() * range.get().highKPa());
        double half = Math.log(range.get().highKPa() / range.get().lowKPa()) / 2;
        double share = read.get() / middle;
        return Optional.of(new Evidence(
                List.of(told.get().number()),
                sealing.against(fact).orElse("") + (fact.throttleOpen() ? "" : " The throttle was not open."),
                logs(suspects, id -> {
                    About pressure = does(id).pressure();
                    double doubt = Math.hypot(half, pressure.doubt());
                    double log = normal(Math.log(share), Math.log(pressure.value()), doubt);
                    return fact.throttleOpen()
                            ? log
                            : log + Math.log(id.equals("not-cranked") ? SHUT_IF_NOT_CRANKED : SHUT);
                })));
    }

    /** Each reading with oil goes with the dry one before it: oil stays, and makes a later dry one anything but dry. */
    private Optional<Evidence> oil(List<Suspect> suspects) {
        Optional<Told<PressureRead>> dry = Optional.empty();
        Optional<Evidence> pair = Optional.empty();
        for (Told<PressureRead> told : sealing.pressures()) {
            if (told.fact().how() == Cranking.DRY) {
                dry = Optional.of(told);
            } else if (dry.isPresent()) {
                Optional<Evidence> now = rise(dry.get(), told, suspects);
                pair = now.isPresent() ? now : pair;
            }
        }
        return pair;
    }

    private static Optional<Evidence> rise(Told<PressureRead> dry, Told<PressureRead> oiled, List<Suspect> suspects) {
        Optional<Double> from = Sealing.kpa(dry.fact());
        Optional<Double> to = Sealing.kpa(oiled.fact());
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        double times = to.get() / from.get();
        return Optional.of(new Evidence(
                List.of(dry.number(), oiled.number()),
                String.format(Locale.ROOT, "With oil it makes %.2f times as much as dry.", times),
                logs(suspects, id -> {
                    About rise = does(id).rise();
                    return normal(Math.log(times), Math.log(rise.value()), rise.doubt());
                })));
    }

    private static Optional<Evidence> lost(Told<LeakDownRead> told, List<Suspect> suspects) {
        return Sealing.loss(told.fact())
                .map(loss -> new Evidence(
                        List.of(told.number()),
                        String.format(Locale.ROOT, "Leak-down: %.0f %% lost.", loss),
                        logs(
                                suspects,
                                id -> normal(
                                        loss,
                                        does(id).loss().value(),
                                        does(id).loss().doubt()))));
    }

    private static Evidence heard(Told<LeakDownRead> told, List<Suspect> suspects) {
        List<LeakPath> out = told.fact().out();
        return new Evidence(
                List.of(told.number()),
                out.contains(LeakPath.NOWHERE)
                        ? "Air let in was heard nowhere much."
                        : "Air let in comes out at "
                                + Sentence.list(
                                        out.stream().map(LeakPath::words).toList()) + ".",
                logs(
                        suspects,
                        id -> WAYS_OUT.stream()
                                .mapToDouble(way -> {
                                    double chance = does(id).out().getOrDefault(way, HEARD_ELSEWHERE);
                                    return Math.log(out.contains(way) ? chance : 1 - chance);
                                })
                                .sum()));
    }

    private static Does does(String suspect) {
        return Objects.requireNonNull(CAUSES.get(suspect));
    }

    private static double normal(double value, double mean, double deviation) {
        double off = (value - mean) / deviation;
        return Math.max(-0.5 * off * off, LEAST_LOG) - Math.log(deviation);
    }

    private static Map<String, Double> logs(List<Suspect> suspects, ToDoubleFunction<String> log) {
        Map<String, Double> logs = new HashMap<>();
        suspects.forEach(suspect -> logs.put(suspect.id(), log.applyAsDouble(suspect.id())));
        return logs;
    }
}
