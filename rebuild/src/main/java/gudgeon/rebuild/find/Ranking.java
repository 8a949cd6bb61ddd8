package gudgeon.rebuild.find;

import gudgeon.mechanics.diagnose.Belief;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The suspects of one trouble in the order of their chances, and the test to make next.
 *
 * @param ranked the suspects, the likeliest first
 * @param evidence what was seen
 * @param bits how much is still to be told, in bits; 0 when one suspect is sure
 * @param next the tests not made yet, the one that is expected to tell most for its time first
 * @param alike which suspects what was seen can't tell apart; sentences
 * @param assumptions what was taken for granted; sentences
 * @param sentence the whole in one or two sentences
 */
public record Ranking(
        List<Ranked> ranked,
        List<Evidence> evidence,
        double bits,
        List<NextTest> next,
        List<String> alike,
        List<String> assumptions,
        String sentence) {
    /** From here on a suspect is called as good as sure. */
    private static final double SURE = 0.95;
    /** From here on it is called likely. */
    private static final double LIKELY = 0.66;

    /** Below this chance a suspect is not worth a word. */
    private static final double WORTH_A_THOUGHT = 0.05;
    /** A likelihood ratio below this is worth no more than a bare mention (H. Jeffreys, Theory of Probability, 3rd ed. 1961, app. B). */
    private static final double ALIKE = 3.16;

    /** Below this ratio they are called even. */
    private static final double EVEN = 1.2;

    private static final String FORMULA =
            "Chance after: chance before times the likelihood of all that was seen, brought to a sum of 1 (Bayes' rule)."
                    + " Worth of a test: mutual information of suspect and answer in bits (MacKay 2003, sections 2.3 and 8.1).";

    public Ranking {
        ranked = List.copyOf(ranked);
        evidence = List.copyOf(evidence);
        next = List.copyOf(next);
        alike = List.copyOf(alike);
        assumptions = List.copyOf(assumptions);
    }

    /** The suspects of a search of a build. */
    public static Ranking of(Build build, Hunt hunt) {
        Build seen = hunt.seenOf(build);
        return of(
                build,
                switch (hunt.trouble()) {
                    case TIGHT_SPOT -> TightSpot.of(build, hunt).asCase();
                    case POOR_SEALING -> new SealingEvidence(Sealing.of(seen)).asCase(hunt);
                    case NO_SHIFT -> GearCauses.catalogue().asCase(seen, hunt);
                    case SLIPS -> ClutchCauses.catalogue().asCase(seen, hunt);
                    case NO_SPARK -> SparkCauses.catalogue().asCase(seen, hunt);
                    case NO_OIL -> OilCauses.catalogue().asCase(seen, hunt);
                });
    }

    /** Weighs a case; what has to come off for a test is that of the build as it stands. */
    public static Ranking of(Build build, Case of) {
        List<Suspect> suspects = of.suspects();
        Belief before =
                Belief.ofOdds(suspects.stream().mapToDouble(Suspect::odds).toArray());
        Belief after = before;
        for (Evidence evidence : of.evidence()) {
            after = after.given(suspects.stream()
                    .mapToDouble(suspect -> log(evidence, suspect))
                    .toArray());
        }
        List<Ranked> ranked = new ArrayList<>();
        for (int i = 0; i < suspects.size(); i++) {
            Suspect suspect = suspects.get(i);
            ranked.add(new Ranked(
                    suspect, before.chance(i), after.chance(i), of.explains().getOrDefault(suspect.id(), List.of())));
        }
        ranked.sort(Comparator.comparingDouble(Ranked::chance).reversed());
        List<NextTest> next = new Worth(build, suspects, after).ofAll(of.tests());
        List<String> assumptions = new ArrayList<>(of.assumptions());
        assumptions.add(FORMULA);
        assumptions.add(Worth.ASSUMPTION);
        return new Ranking(
                ranked,
                of.evidence(),
                after.bits(),
                next,
                alike(ranked, of.evidence()),
                assumptions,
                sentence(of.evidence(), ranked.get(0), next));
    }

    /** Suspects worth a thought that what was seen speaks for about as much as for the first. */
    private static List<String> alike(List<Ranked> ranked, List<Evidence> evidence) {
        Suspect first = ranked.get(0).suspect();
        List<String> alike = new ArrayList<>();
        for (Ranked other : ranked.subList(1, ranked.size())) {
            double ratio = 0;
            for (Evidence seen : evidence) {
                ratio += log(seen, first) - log(seen, other.suspect());
            }
            if (!evidence.isEmpty() && other.chance() >= WORTH_A_THOUGHT && Math.abs(ratio) < Math.log(ALIKE)) {
                alike.add(String.format(
                        Locale.ROOT,
                        "What was seen does not tell '%s' from '%s': with the one it is about %s as with the other.",
                        first.name(),
                        other.suspect().name(),
                        Math.abs(ratio) < Math.log(EVEN)
                                ? "as likely"
                                : String.format(Locale.ROOT, "%.1f times as likely", Math.exp(Math.abs(ratio)))));
            }
        }
        return alike;
    }

    private static double log(Evidence evidence, Suspect suspect) {
        return Objects.requireNonNull(
                evidence.logLikelihood().get(suspect.id()),
                () -> "the evidence '" + evidence.said() + "' says nothing of " + suspect.id());
    }

    /** What a fitter calls the suspect of that id. */
    public String name(String suspect) {
        return ranked.stream()
                .map(Ranked::suspect)
                .filter(one -> one.id().equals(suspect))
                .map(Suspect::name)
                .findFirst()
                .orElse(suspect.isEmpty() ? "none of the suspects" : suspect);
    }

    /** The test to make next: the one expected to tell most for its time; empty if none tells anything. */
    public Optional<NextTest> best() {
        return next.stream().filter(NextTest::tells).findFirst();
    }

    private static String sentence(List<Evidence> seen, Ranked first, List<NextTest> next) {
        String name = first.suspect().name();
        String chance = String.format(Locale.ROOT, "%.0f %%", Math.min(99, 100 * first.chance()));
        String lead = seen.isEmpty()
                ? "Nothing was felt or tried yet that tells the suspects apart."
                : first.chance() >= SURE
                        ? Sentence.capital(name) + ": as good as sure (" + chance + ")."
                        : first.chance() >= LIKELY
                                ? Sentence.capital(name) + " is likely (" + chance + ")."
                                : "Not settled: first comes " + name + " (" + chance + ").";
        return lead
                + next.stream()
                        .filter(NextTest::tells)
                        .findFirst()
                        .map(test -> " Next: " + test.test().name() + ".")
                        .orElse("");
    }
}
