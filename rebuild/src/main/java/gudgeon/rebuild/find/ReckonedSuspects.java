package gudgeon.rebuild.find;

import gudgeon.mechanics.clearance.Meeting;
import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.diagnose.Approach;
import gudgeon.mechanics.diagnose.FeltAngle;
import gudgeon.mechanics.diagnose.GapDoubt;
import gudgeon.mechanics.diagnose.TightPattern;
import gudgeon.mechanics.diagnose.TightPattern.Pair;
import gudgeon.rebuild.book.CamDrive;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.find.TightSuspect.Place;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import gudgeon.rebuild.fit.Working;
import gudgeon.rebuild.timing.CamTiming;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The suspects whose angles follow from an engine's sizes: bodies of the top end that meet. */
final class ReckonedSuspects {
    /** Chance that a size is not what it is taken for, and by how much a gap is then off, in mm. */
    private static final double MISTAKEN = 0.1;

    private static final double MISTAKEN_MM = 1;

    static final String ASSUMPTION = String.format(
            Locale.ROOT,
            "Whether bodies meet, and where, follows from the least gaps with their doubts, which are taken to be the same with the"
                    + " cam in any place; besides, in %.0f of 100 cases"
                    + " a size is not what it is taken for, and a gap is off by %.0f mm or so (an assumption of this program).",
            100 * MISTAKEN,
            MISTAKEN_MM);

    private static final String FORMULA =
            "The crank angles at which the gap, less by as much as its doubt allows, is used up on"
                    + " the way from bottom dead centre, weighted by a normal distribution of that doubt";
    private static final String SOURCE =
            "Propagation of distributions: JCGM 101:2008, 5. Gaps: solid geometry on a slider-crank"
                    + " (R. L. Norton, Design of Machinery, ch. 4).";

    private static final int MOST_TEETH = 2;
    private static final double ONE = 1;
    private static final double TWO_TEETH = 0.3;
    /** Two mistakes at once. */
    private static final double BOTH = 0.05;
    /** Of what the journal tells the contrary. */
    private static final double AGAINST_JOURNAL = 0.05;

    private static final double STEP_DEG = 1;
    /** Gaps greater than that never come to nothing by any doubt. */
    private static final double REACH_MM = 4.5;

    private final AsMeasured parts;
    private final Reach reach;
    private final Sweep sweep = new Sweep();
    private final double[] angles = new double[(int) (FeltAngle.CYCLE_DEG / STEP_DEG)];
    private final List<TightSuspect> found = new ArrayList<>();

    private ReckonedSuspects(AsMeasured parts, Reach reach) {
        this.parts = parts;
        this.reach = reach;
        Arrays.setAll(angles, i -> i * STEP_DEG);
    }

    static List<TightSuspect> of(AsMeasured parts, Reach reach) {
        ReckonedSuspects suspects = new ReckonedSuspects(parts, reach);
        suspects.collect();
        return suspects.found;
    }

    private void collect() {
        Optional<TrialFit> straight = fit(false);
        straight.ifPresent(fit -> {
            List<String> valves = fit.valveIds();
            for (int v = 0; v < valves.size(); v++) {
                valveOnCrown(fit, v);
            }
            if (valves.size() > 1) {
                valveToValve(fit);
            }
            crownOnHead(fit);
            out(fit, false);
        });
        fit(true)
                .filter(turned -> straight.isEmpty()
                        || !turned.topEnd()
                                .crown()
                                .equals(straight.get().topEnd().crown()))
                .ifPresent(turned -> out(turned, true));
    }

    private Optional<TrialFit> fit(boolean turned) {
        try {
            return Optional.of(TrialFit.withoutCures(parts.geometry(), choice(0, turned), LengthUnit.MM));
        } catch (UnknownChoice impossible) {
            return Optional.empty();
        }
    }

    private Choice choice(int teeth, boolean turned) {
        Choice choice = parts.choice();
        return new Choice(
                choice.pistonId(), choice.gasketId(), teeth, OptionalDouble.empty(), turned, choice.changed());
    }

    /** Every place of the cam, but for all as it should be. */
    private void out(TrialFit fit, boolean turned) {
        int most = parts.geometry().cam().map(CamDrive::sprocketTeeth).isPresent() ? MOST_TEETH : 0;
        for (int teeth = -most; teeth <= most; teeth++) {
            if (teeth != 0 || turned) {
                out(fit, teeth, turned);
            }
        }
    }

    private void valveOnCrown(TrialFit fit, int valve) {
        String id = fit.valveIds().get(valve);
        List<String> at = new ArrayList<>(reach.piston());
        at.addAll(reach.valve(id));
        add(
                id + "-on-crown",
                "the " + id + " valve meets the piston as fitted",
                parts.choice().turned() ? AGAINST_JOURNAL : ONE,
                at,
                new Reckoned(Nature.VALVE, id, 0, false),
                fit,
                List.of(new Met(new Meeting.ValveAndCrown(valve), GapKind.BORE, List.of(id))));
    }

    private void valveToValve(TrialFit fit) {
        List<String> at = new ArrayList<>();
        fit.valveIds().forEach(id -> at.addAll(reach.valve(id)));
        add(
                "valve-to-valve",
                "the valves meet each other",
                ONE,
                at,
                new Reckoned(Nature.VALVE, "", 0, false),
                fit,
                pairs(fit.valveIds()));
    }

    private void crownOnHead(TrialFit fit) {
        List<String> at = new ArrayList<>(reach.headGasket());
        at.addAll(reach.barrel());
        at.addAll(reach.piston());
        add(
                "crown-on-head",
                "the piston meets the head, by too thin a gasket or too low a barrel",
                ONE,
                at,
                new Reckoned(Nature.HEAD, "", 0, false),
                fit,
                List.of(new Met(new Meeting.CrownAndHead(), GapKind.DECK, List.of())));
    }

    /** The cam out by teeth, the piston turned, or both: any of the valves may meet anything. */
    private void out(TrialFit fit, int teeth, boolean turned) {
        List<Met> met = new ArrayList<>(pairs(fit.valveIds()));
        for (int v = 0; v < fit.valveIds().size(); v++) {
            met.add(new Met(
                    new Meeting.ValveAndCrown(v),
                    GapKind.BORE,
                    List.of(fit.valveIds().get(v))));
        }
        String cam = "cam-" + Math.abs(teeth) + (teeth < 0 ? "-early" : "-late");
        String camWords = "the cam is " + CamTiming.teeth(teeth);
        double odds = (Math.abs(teeth) == MOST_TEETH ? TWO_TEETH : ONE)
                * (turned && teeth != 0 ? BOTH : 1)
                * (turned != parts.choice().turned() && parts.choice().turned() ? AGAINST_JOURNAL : 1);
        String turnedWords = "the piston is turned by half a turn";
        add(
                turned ? "piston-turned" + (teeth == 0 ? "" : "-" + cam) : cam,
                turned ? turnedWords + (teeth == 0 ? "" : ", and " + camWords) : camWords,
                odds,
                turned ? reach.piston() : reach.camDrive(),
                new Reckoned(Nature.VALVE, "", teeth, turned),
                fit,
                met);
    }

    private static List<Met> pairs(List<String> valves) {
        List<Met> pairs = new ArrayList<>();
        for (int i = 0; i < valves.size(); i++) {
            for (int j = i + 1; j < valves.size(); j++) {
                pairs.add(new Met(
                        new Meeting.TwoValves(i, j), GapKind.VALVE_TO_VALVE, List.of(valves.get(i), valves.get(j))));
            }
        }
        return pairs;
    }

    /** Two bodies, and which gap of a trial fit is theirs. */
    private record Met(Meeting meeting, GapKind kind, List<String> valves) {
        Finding in(TrialFit fit) {
            return fit.findings().stream()
                    .filter(one -> one.kind() == kind && one.valves().equals(valves))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("the fit has no " + kind + " of " + valves));
        }
    }

    private record Reckoned(Nature nature, String valve, int teeth, boolean turned) {}

    private void add(
            String id, String name, double odds, List<String> at, Reckoned of, TrialFit fit, List<Met> meetings) {
        TopEnd topEnd =
                of.teeth() == 0 ? fit.topEnd() : TrialFit.topEnd(parts.geometry(), choice(of.teeth(), of.turned()));
        double[] least = new double[angles.length];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        double nearestMm = Double.POSITIVE_INFINITY;
        Finding nearest = meetings.get(0).in(fit);
        for (Met met : meetings) {
            double[] gap = sweep.approach(topEnd, met.meeting(), angles, REACH_MM);
            for (int i = 0; i < least.length; i++) {
                least[i] = Math.min(least[i], gap[i]);
            }
            double own = Arrays.stream(gap).min().orElseThrow();
            if (own < nearestMm) {
                nearestMm = own;
                nearest = met.in(fit);
            }
        }
        double doubtMm = nearest.standardUncertaintyMm();
        List<Pair> pairs = new Approach(least).pairs(new GapDoubt(doubtMm, MISTAKEN, MISTAKEN_MM));
        double meets = pairs.stream().mapToDouble(Pair::weight).sum();
        TightPattern pattern =
                pairs.isEmpty() ? TightPattern.anywhere() : TightPattern.at(pairs, of.nature() == Nature.HEAD);
        Working working = new Working(FORMULA, nearest.working().inputs(), SOURCE);
        TightSuspect bare = new TightSuspect(
                new Suspect(id, name, odds * meets, basis(odds, meets), at, "", Optional.of(working)),
                of.nature(),
                of.valve(),
                of.teeth(),
                of.turned(),
                pattern,
                !pairs.isEmpty());
        found.add(bare.shown(shows(bare, nearestMm, doubtMm)));
    }

    private static String basis(double odds, double meets) {
        return String.format(
                Locale.ROOT,
                "Odds %s (%s; common practice, no source) times the chance that they meet, %.1f %%.",
                odds == ONE ? "1" : String.format(Locale.ROOT, "%.2g", odds),
                odds == ONE
                        ? "as likely as any other single cause"
                        : "rarer than a single cause that nothing speaks against",
                100 * meets);
    }

    private static String shows(TightSuspect suspect, double leastMm, double doubtMm) {
        String gap = String.format(Locale.ROOT, "least gap %.2f mm ± %.2f mm", leastMm, doubtMm);
        Optional<Place> forward = suspect.place(true);
        Optional<Place> backward = suspect.place(false);
        return forward.isEmpty() || backward.isEmpty()
                ? "It can't show: " + gap + "."
                : "Turning forward at " + forward.get().words() + ", backward at "
                        + backward.get().words() + ", "
                        + (suspect.pattern().everyTurn() ? "every turn" : "every second turn") + " (" + gap + ").";
    }
}
