package gudgeon.rebuild.find;

import gudgeon.mechanics.chamber.CrankingPressure;
import gudgeon.mechanics.chamber.StandardAtmosphere;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import gudgeon.rebuild.journal.Cranking;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding;
import gudgeon.rebuild.journal.Finding.LeakDownRead;
import gudgeon.rebuild.journal.Finding.PressureRead;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How an engine seals: what cranking pressure it should make, and what was read.
 *
 * @param build the build as far as it counts
 * @param expected the pressure to expect at sea level in kPa on the gauge; empty where the book has no figures for it
 * @param since number of the last entry by which the gas space was opened or closed; 0 for none. Readings after it count
 */
public record Sealing(Build build, Optional<CrankingPressure> expected, long since) {
    /** Below 60 on a gauge of 80, a loss of 25 %, a cylinder is taken off and looked at (FAA AC 43.13-1B, 8-14). */
    public static final double FAA_MOST_LOSS = 25;

    /** One pound-force on a square inch in kPa: exact, by the inch of 25.4 mm and the pound of 0.45359237 kg. */
    private static final double KPA_PER_PSI = 4.4482216152605 / (25.4 * 25.4) * 1000;

    private static final double KPA_PER_BAR = 100;
    /** The key that the trial fit has for the figure. */
    private static final String AT_SEA = "crankingKPaAt0m";

    /** That of a build. */
    public static Sealing of(Build build) {
        Set<String> gasSpace = gasSpace(build);
        long since = 0;
        for (long number = 1; number <= build.size(); number++) {
            if (build.fact(number)
                    .filter(fact -> disturbs(build, fact, gasSpace))
                    .isPresent()) {
                since = number;
            }
        }
        return new Sealing(build, expected(build), since);
    }

    /** Positions whose work makes an old reading worthless; the plug is out for every reading and does not. */
    private static Set<String> gasSpace(Build build) {
        Reach reach = new Reach(build);
        Set<String> positions = SealingCauses.catalogue().suspects(build).stream()
                .flatMap(suspect -> suspect.reach().stream())
                .collect(Collectors.toSet());
        positions.addAll(reach.piston());
        reach.plug().forEach(positions::remove);
        return positions;
    }

    private static boolean disturbs(Build build, Fact fact, Set<String> gasSpace) {
        if (fact instanceof Fact.Undone undone) {
            return build.structure().step(undone.step()).map(Step::fits).orElse(List.of()).stream()
                    .anyMatch(gasSpace::contains);
        }
        return (fact instanceof Fact.TakenOff || fact instanceof Fact.Fitted) && gasSpace.contains(fact.about());
    }

    private static Optional<CrankingPressure> expected(Build build) {
        return AsMeasured.of(build)
                .flatMap(Sealing::tried)
                .flatMap(fit -> fit.figures().stream()
                        .filter(figure -> figure.key().equals(AT_SEA))
                        .findFirst())
                .map(figure -> new CrankingPressure(figure.low(), figure.high()));
    }

    private static Optional<TrialFit> tried(AsMeasured parts) {
        try {
            return Optional.of(TrialFit.withoutCures(parts.geometry(), parts.choice(), LengthUnit.MM));
        } catch (UnknownChoice impossible) {
            return Optional.empty();
        }
    }

    /** The range to expect at a height above the sea in m, in kPa on the gauge: in proportion to the air's pressure. */
    public Optional<CrankingPressure> expectedAt(double altitudeM) {
        double share = StandardAtmosphere.pressureKPa(altitudeM) / StandardAtmosphere.SEA_LEVEL_KPA;
        return expected.map(range -> new CrankingPressure(share * range.lowKPa(), share * range.highKPa()));
    }

    /** The pressures that still count, in the order in which they were read. */
    List<Told<PressureRead>> pressures() {
        return counting(allPressures());
    }

    /** The leak-downs that still count, in the order in which they were read. */
    List<Told<LeakDownRead>> leaks() {
        return counting(allLeaks());
    }

    private List<Told<PressureRead>> allPressures() {
        return build.told(PressureRead.class, Finding.SEALING);
    }

    private List<Told<LeakDownRead>> allLeaks() {
        return build.told(LeakDownRead.class, Finding.SEALING);
    }

    private <F> List<Told<F>> counting(List<Told<F>> told) {
        return told.stream().filter(one -> one.number() > since).toList();
    }

    /** A pressure in kPa; empty where it can't be read. */
    static Optional<Double> kpa(PressureRead read) {
        return TypedSize.of(Unit.KPA, read.pressure(), 1) instanceof TypedSize.Read size && size.value() > 0
                ? Optional.of(size.value())
                : Optional.empty();
    }

    /** A loss in per cent; empty where it can't be read. */
    static Optional<Double> loss(LeakDownRead read) {
        return TypedSize.of(Unit.PERCENT, read.loss(), 1) instanceof TypedSize.Read size
                ? Optional.of(size.value())
                : Optional.empty();
    }

    /** What should be read, what was, and how it went over time; sentences. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        expected.ifPresent(range -> all.add(String.format(
                Locale.ROOT,
                "This engine as measured should make %.0f to %.0f kPa (%.1f to %.1f bar, %.0f to %.0f psi) on the gauge at the sea,"
                        + " dry, throttle wide open: the air's pressure times the ratio of what is trapped when the inlet shuts to"
                        + " the power of %.1f to %.1f, less one.",
                range.lowKPa(),
                range.highKPa(),
                range.lowKPa() / KPA_PER_BAR,
                range.highKPa() / KPA_PER_BAR,
                range.lowKPa() / KPA_PER_PSI,
                range.highKPa() / KPA_PER_PSI,
                CrankingPressure.LOW_EXPONENT,
                CrankingPressure.HIGH_EXPONENT)));
        last(pressures(), one -> one.how() == Cranking.DRY)
                .flatMap(told -> against(told.fact()))
                .ifPresent(all::add);
        last(leaks(), any -> true).flatMap(told -> loss(told.fact())).ifPresent(loss -> all.add(band(loss)));
        overTime(dry(), Sealing::kpa, "Dry pressure", "kPa").ifPresent(all::add);
        overTime(allLeaks(), Sealing::loss, "Loss at leak-down", "%").ifPresent(all::add);
        return all;
    }

    private List<Told<PressureRead>> dry() {
        return allPressures().stream()
                .filter(told -> told.fact().how() == Cranking.DRY)
                .toList();
    }

    private static <F> Optional<Told<F>> last(List<Told<F>> told, Function<F, Boolean> which) {
        return told.stream().filter(one -> which.apply(one.fact())).reduce((one, other) -> other);
    }

    /** How a dry pressure stands to what is expected; empty where one of the two is not known. */
    Optional<String> against(PressureRead read) {
        return kpa(read)
                .flatMap(value -> expectedAt(read.altitudeM().orElse(0))
                        .map(range -> String.format(
                                Locale.ROOT,
                                "Read dry: %.0f kPa, where %.0f to %.0f kPa is expected%s: %s.",
                                value,
                                range.lowKPa(),
                                range.highKPa(),
                                read.altitudeM().isPresent()
                                        ? " at that height"
                                        : " at the sea, since no height was said",
                                value < range.lowKPa()
                                        ? "too little"
                                        : value > range.highKPa() ? "more than expected" : "as expected")));
    }

    private static String band(double loss) {
        return String.format(
                Locale.ROOT,
                "Leak-down: %.0f %% lost, %s 25 %%, at which aircraft practice takes a cylinder off a hot engine (FAA AC 43.13-1B,"
                        + " 8-14, with an orifice of 0.040 in for bores below 5 in; another orifice, or a cold engine, reads otherwise).",
                loss,
                loss > FAA_MOST_LOSS ? "above" : "not above");
    }

    /** First and last of all that were read, those too that no longer count. */
    private <F> Optional<String> overTime(
            List<Told<F>> told, Function<F, Optional<Double>> value, String what, String unit) {
        List<Told<F>> read =
                told.stream().filter(one -> value.apply(one.fact()).isPresent()).toList();
        if (read.size() < 2) {
            return Optional.empty();
        }
        Told<F> first = read.get(0);
        Told<F> last = read.get(read.size() - 1);
        double from = value.apply(first.fact()).orElseThrow();
        double to = value.apply(last.fact()).orElseThrow();
        return Optional.of(String.format(
                Locale.ROOT,
                "%s over time: %.0f %s in entry %d%s, %.0f %s in entry %d.",
                what,
                from,
                unit,
                first.number(),
                first.number() <= since ? ", before the top end was last worked on" : "",
                to,
                unit,
                last.number()));
    }
}
