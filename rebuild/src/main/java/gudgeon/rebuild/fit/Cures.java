package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.mechanics.valvetrain.TimedLift;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.book.PocketEntry;
import gudgeon.rebuild.book.Size;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Looks for what would bring every gap to what is wanted, its doubt included, and what that costs. */
final class Cures {
    private static final double STEP_MM = 0.1;
    private static final int MOST_STEPS = 32;
    private static final int MOST_TEETH = 3;

    private final Model now;
    private final Sentences sentences;
    private final List<Finding> wanting;
    private final CureTrials trials;
    private final CureCosts costs;

    Cures(Model now, Sentences sentences, List<Finding> findings) {
        this.now = now;
        this.sentences = sentences;
        trials = new CureTrials(now, sentences, findings);
        costs = new CureCosts(now, sentences);
        wanting = findings.stream()
                .filter(finding -> finding.verdict() != Verdict.CLEARS)
                .toList();
    }

    /** The cures, those that work first; empty when nothing needs one. */
    List<CureLine> all() {
        if (wanting.isEmpty()) {
            return List.of();
        }
        Choice choice = now.tried().choice();
        List<Supplier<List<CureLine>>> looks = new ArrayList<>();
        if (choice.turned()) {
            looks.add(() -> List.of(turnBack()));
        }
        if (choice.teethMoved() != 0) {
            looks.add(() -> List.of(teeth(0)));
        }
        for (PistonEntry piston : now.tried().booked().pistons()) {
            if (!piston.id().equals(now.tried().piston().id())) {
                looks.add(() -> List.of(other(piston)));
            }
        }
        if (!choice.turned()) {
            // nobody should cut a piston that is only the wrong way round
            concerned().forEach(pocket -> looks.add(() -> pocket(pocket)));
            if (concerned().size() > 1) {
                looks.add(() -> List.of(deeper(concerned())));
            }
        }
        looks.add(() -> List.of(gasket()));
        if (now.tried().book().cam().isPresent()) {
            looks.add(() -> List.of(anyTeeth()));
        }
        return looks.parallelStream()
                .flatMap(look -> look.get().stream())
                .sorted(Comparator.comparing(cure -> !cure.works()))
                .toList();
    }

    // ---- set right

    private CureLine turnBack() {
        Choice choice = now.tried().choice();
        return set(
                "Turn the piston the right way round by its direction mark.",
                new Choice(
                        choice.pistonId(),
                        choice.gasketId(),
                        choice.teethMoved(),
                        choice.valveClearanceMm(),
                        false,
                        choice.changed()),
                List.of(),
                OptionalDouble.empty());
    }

    private CureLine other(PistonEntry piston) {
        Choice choice = now.tried().choice();
        Choice other = new Choice(
                Optional.of(piston.id()),
                choice.gasketId(),
                choice.teethMoved(),
                choice.valveClearanceMm(),
                choice.turned(),
                choice.changed());
        return set(
                "Fit piston '" + piston.id() + "' instead.",
                other,
                trials.model(other).map(costs::of).orElse(List.of()),
                OptionalDouble.empty());
    }

    private Choice moved(int teeth) {
        Choice choice = now.tried().choice();
        return new Choice(
                choice.pistonId(),
                choice.gasketId(),
                teeth,
                choice.valveClearanceMm(),
                choice.turned(),
                choice.changed());
    }

    private CureLine teeth(int teeth) {
        if (teeth == 0) {
            return set("Put the cam back on its marks.", moved(0), List.of(), OptionalDouble.of(0));
        }
        double degrees =
                TimedLift.shiftDeg(teeth, now.tried().book().cam().orElseThrow().sprocketTeeth());
        return set(
                "The cam moved " + Sentences.teeth(teeth) + ".",
                moved(teeth),
                List.of("Every valve event is then " + LengthUnit.degrees(Math.abs(degrees))
                        + (teeth > 0 ? " later" : " earlier")
                        + " than the maker's timing, which is no cure for a part that is wrong."),
                OptionalDouble.of(teeth));
    }

    private CureLine anyTeeth() {
        int set = now.tried().choice().teethMoved();
        for (int n = 1; n <= MOST_TEETH; n++) {
            for (int teeth : new int[] {-n, n}) {
                if (teeth != set && trials.clears(moved(teeth))) {
                    return teeth(teeth);
                }
            }
        }
        return cannot(
                "Another cam setting.",
                "No setting within " + MOST_TEETH + " teeth either way of the marks gives every gap what is wanted."
                        + " One tooth early: " + trials.why(moved(-1)) + " One tooth late: " + trials.why(moved(1)));
    }

    private CureLine set(String what, Choice choice, List<String> cost, OptionalDouble to) {
        return trials.clears(choice)
                ? new CureLine(true, what, cost, "", to)
                : new CureLine(false, what, cost, trials.why(choice), OptionalDouble.empty());
    }

    private static CureLine cannot(String what, String why) {
        return new CureLine(false, what, List.of(), why, OptionalDouble.empty());
    }

    // ---- made to size

    private CureLine gasket() {
        Size pressed = now.tried().gasket().pressed();
        Function<Double, Choice> thicker = by -> trials.changed(Map.of(pressed.path(), pressed.value() + by));
        OptionalInt found = trials.smallest(MOST_STEPS, steps -> thicker.apply(steps * STEP_MM));
        if (found.isEmpty()) {
            return cannot(
                    "A thicker head gasket.",
                    "Even with " + sentences.length(MOST_STEPS * STEP_MM) + " more: "
                            + trials.why(thicker.apply(MOST_STEPS * STEP_MM)));
        }
        double by = found.getAsInt() * STEP_MM;
        return new CureLine(
                true,
                "A head gasket " + sentences.length(pressed.value() + by) + " thick when pressed (now "
                        + sentences.length(pressed.value()) + ").",
                trials.model(thicker.apply(by)).map(costs::of).orElse(List.of()),
                "",
                OptionalDouble.of(pressed.value() + by));
    }

    /** The pockets of those valves that are short of room to the crown. */
    private List<PocketEntry> concerned() {
        return now.tried().piston().pockets().stream()
                .filter(pocket -> wanting.stream()
                        .anyMatch(
                                finding -> finding.valves().equals(List.of(pocket.valve())) && ofCrown(finding.kind())))
                .toList();
    }

    private static boolean ofCrown(GapKind kind) {
        return kind == GapKind.BORE || kind == GapKind.VALVE || kind == GapKind.NEAREST || kind == GapKind.SIDE;
    }

    private List<CureLine> pocket(PocketEntry pocket) {
        String name = "The " + pocket.valve() + " pocket cut ";
        CureLine deeper = cut(name + "deeper", List.of(pocket), pocket.depth(), PocketEntry::depth, Map.of());
        CureLine wider = cut(name + "wider", List.of(pocket), pocket.diameter(), PocketEntry::diameter, Map.of());
        if (deeper.works() || wider.works()) {
            return List.of(deeper, wider);
        }
        Size across = pocket.diameter();
        double generous = across.value() + widening(pocket.valve());
        CureLine both = cut(
                name + "to " + sentences.length(generous) + " across and deeper",
                List.of(pocket),
                pocket.depth(),
                PocketEntry::depth,
                Map.of(across.path(), generous));
        return List.of(deeper, wider, both);
    }

    private CureLine deeper(List<PocketEntry> pockets) {
        String names = pockets.stream().map(PocketEntry::valve).collect(Collectors.joining(" and "));
        return cut(
                "The " + names + " pockets all cut deeper by as much",
                pockets,
                pockets.get(0).depth(),
                PocketEntry::depth,
                Map.of());
    }

    /** How much wider a pocket must be for the greatest shortage of its side gap. */
    private double widening(String valve) {
        double most = wanting.stream()
                .filter(finding ->
                        finding.kind() == GapKind.SIDE && finding.valves().equals(List.of(valve)))
                .mapToDouble(finding -> finding.wantedMm()
                        + Finding.COVERAGE * finding.standardUncertaintyMm()
                        - finding.gap().leastMm())
                .max()
                .orElse(1);
        return Math.ceil(2 * Math.min(Math.max(most, STEP_MM), MOST_STEPS * STEP_MM) / STEP_MM) * STEP_MM;
    }

    /** One size of one or more pockets made greater by as much; {@code shown} is the one named in the sentence. */
    private CureLine cut(
            String what,
            List<PocketEntry> pockets,
            Size shown,
            Function<PocketEntry, Size> size,
            Map<String, Double> also) {
        Function<Double, Choice> greater = by -> {
            Map<String, Double> sizes = new HashMap<>(also);
            pockets.forEach(pocket ->
                    sizes.put(size.apply(pocket).path(), size.apply(pocket).value() + by));
            return trials.changed(sizes);
        };
        OptionalInt found = trials.smallest(MOST_STEPS, steps -> greater.apply(steps * STEP_MM));
        if (found.isEmpty()) {
            return cannot(
                    what + ".",
                    "Even with " + sentences.length(MOST_STEPS * STEP_MM) + " more: "
                            + trials.why(greater.apply(MOST_STEPS * STEP_MM)));
        }
        double by = found.getAsInt() * STEP_MM;
        double to = shown.value() + by;
        Model cured = trials.model(greater.apply(by)).orElseThrow();
        List<String> cost = new ArrayList<>(costs.of(cured));
        pockets.forEach(pocket -> cost.addAll(costs.metal(cured, pocket)));
        Optional<String> tooThin = pockets.stream()
                .flatMap(pocket -> costs.tooThin(cured, pocket).stream())
                .findFirst();
        String text = what
                + pockets.stream()
                        .map(pocket -> sentences.length(size.apply(pocket).value() + by) + " (now "
                                + sentences.length(size.apply(pocket).value()) + ")")
                        .collect(Collectors.joining(" and ", ", to ", "."));
        return new CureLine(tooThin.isEmpty(), text, cost, tooThin.orElse(""), OptionalDouble.of(to));
    }
}
