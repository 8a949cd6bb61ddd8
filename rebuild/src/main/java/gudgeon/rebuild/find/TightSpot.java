package gudgeon.rebuild.find;

import gudgeon.mechanics.diagnose.FeltAngle;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact.WentTight;
import gudgeon.rebuild.journal.Finding.TightFelt;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.journal.Recurs;
import gudgeon.rebuild.journal.Turning;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A tight spot of an engine: where each suspect would show on it as measured, and how well that explains what was felt.
 *
 * @param suspects the suspects
 * @param felt the angles felt, the doubts with the slack of chain and gears
 * @param entries numbers of the entries that tell them
 * @param made the tests made
 */
record TightSpot(List<TightSuspect> suspects, List<FeltAngle> felt, List<Long> entries, TestsMade made) {
    /** Standard uncertainty that slack and the give of the parts add to an angle felt by hand, in degrees. */
    static final double SLACK_DEG = 2.5;
    /** Standard uncertainty of an angle of which none was stated, in degrees. */
    static final double UNSTATED_DEG = 3;

    private static final List<String> ASSUMPTIONS = List.of(
            "Slack and the give of the parts add " + SLACK_DEG
                    + "° to the standard doubt of each angle felt; an angle of which no" + " doubt was stated has "
                    + UNSTATED_DEG + "°; 2 of 100 angles are slips (assumptions of this program).",
            ReckonedSuspects.ASSUMPTION,
            TightTests.ASSUMPTION);

    TightSpot {
        suspects = List.copyOf(suspects);
        felt = List.copyOf(felt);
        entries = List.copyOf(entries);
    }

    static TightSpot of(Build build, Hunt hunt) {
        Build then = hunt.seenOf(build);
        Reach reach = new Reach(then);
        List<TightSuspect> suspects = new ArrayList<>();
        Optional<AsMeasured> parts = AsMeasured.of(then);
        suspects.addAll(parts.map(one -> ReckonedSuspects.of(one, reach))
                .orElseGet(() -> new OtherSuspects(reach).withoutSizes()));
        suspects.addAll(new OtherSuspects(reach).all());
        List<FeltAngle> felt = new ArrayList<>();
        List<Long> entries = new ArrayList<>();
        List<Told<Tried>> tried = new ArrayList<>(hunt.tried());
        for (Told<TightFelt> told : hunt.felt()) {
            TightFelt fact = told.fact();
            felt.add(angle(fact.direction() == Turning.FORWARD, fact.angleDeg(), fact.doubtDeg(), fact.strokeKnown()));
            entries.add(told.number());
            counted(told).ifPresent(tried::add);
        }
        wentTight(then, felt, entries);
        return new TightSpot(suspects, felt, entries, new TestsMade(new TightTests(reach, suspects).all(), tried));
    }

    private static FeltAngle angle(boolean forward, double deg, double doubtDeg, boolean strokeKnown) {
        return FeltAngle.of(forward, deg, Math.hypot(doubtDeg, SLACK_DEG), strokeKnown);
    }

    /** What was told outside a search, since the top end last came apart, was felt as well. */
    private static void wentTight(Build build, List<FeltAngle> felt, List<Long> entries) {
        build.tight()
                .ifPresent(number -> build.fact(number)
                        .filter(WentTight.class::isInstance)
                        .map(WentTight.class::cast)
                        .ifPresent(tight -> {
                            entries.add(number);
                            tight.forwardDeg().ifPresent(deg -> felt.add(angle(true, deg, UNSTATED_DEG, true)));
                            tight.backwardDeg().ifPresent(deg -> felt.add(angle(false, deg, UNSTATED_DEG, true)));
                        }));
    }

    /** Whoever felt that it comes every turn has counted the turns. */
    private static Optional<Told<Tried>> counted(Told<TightFelt> told) {
        if (told.fact().recurs() == Recurs.NOT_SAID) {
            return Optional.empty();
        }
        String answer = told.fact().recurs() == Recurs.EVERY_TURN ? TightTests.EVERY : TightTests.SECOND;
        return Optional.of(
                new Told<>(told.number(), told.at(), new Tried(told.fact().hunt(), TightTests.COUNT, answer, "")));
    }

    Case asCase() {
        List<Suspect> all = suspects.stream().map(TightSuspect::suspect).toList();
        List<Evidence> evidence = new ArrayList<>();
        if (!felt.isEmpty()) {
            Map<String, Double> logs = new HashMap<>();
            suspects.forEach(one -> logs.put(one.suspect().id(), one.pattern().logDensity(felt)));
            evidence.add(new Evidence(entries, "Felt: " + Amount.of(felt.size(), "angle") + ".", logs));
        }
        evidence.addAll(made.evidence(all));
        Map<String, List<String>> explains = new HashMap<>();
        for (TightSuspect one : suspects) {
            List<String> sentences = new ArrayList<>(one.explains(felt));
            sentences.addAll(made.explains(one.suspect()));
            explains.put(one.suspect().id(), sentences);
        }
        List<String> assumptions = new ArrayList<>(ASSUMPTIONS);
        assumptions.addAll(made.unknown());
        return new Case(all, evidence, made.left(), explains, assumptions);
    }
}
