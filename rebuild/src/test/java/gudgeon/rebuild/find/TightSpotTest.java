package gudgeon.rebuild.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Finding.HuntClosed;
import gudgeon.rebuild.journal.Recurs;
import gudgeon.rebuild.journal.Turning;
import gudgeon.rebuild.plan.Undo;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;

class TightSpotTest {
    private static final Fact SHALLOW = new Fact.Measured("piston", "", Map.of("pockets.exhaust.depth", "0.2"));
    private static final Offset<Double> CLOSE = within(1e-9);

    private static Map<String, Double> chances(Fact... facts) {
        Map<String, Double> chances = new HashMap<>();
        Tarn.ranking(Tarn.build(facts))
                .ranked()
                .forEach(one -> chances.put(one.suspect().id(), one.chance()));
        return chances;
    }

    private static double chance(String suspect, Fact... facts) {
        return Objects.requireNonNull(chances(facts).get(suspect));
    }

    private static Fact forward(double deg) {
        return Tarn.felt(Turning.FORWARD, deg, Recurs.NOT_SAID);
    }

    private static Fact backward(double deg) {
        return Tarn.felt(Turning.BACKWARD, deg, Recurs.NOT_SAID);
    }

    /** Where a suspect shows is where a trial fit of the same engine goes tight. */
    @org.junit.jupiter.api.Test
    void showsWhereATrialFitGoesTight() {
        Build build = Tarn.build();
        AsMeasured parts = AsMeasured.of(build).orElseThrow();
        for (TightSuspect suspect :
                TightSpot.of(build, Hunt.of(build, Tarn.HUNT).orElseThrow()).suspects()) {
            if (suspect.teeth() == 0 || suspect.turned()) {
                continue;
            }
            TrialFit fit = TrialFit.withoutCures(
                    parts.geometry(),
                    new Choice(
                            parts.choice().pistonId(),
                            parts.choice().gasketId(),
                            suspect.teeth(),
                            OptionalDouble.empty(),
                            false,
                            Map.of()),
                    LengthUnit.MM);
            assertThat(suspect.place(true).orElseThrow().deg())
                    .isCloseTo(fit.tightForwardDeg().orElseThrow(), within(1.0));
            assertThat(suspect.place(false).orElseThrow().deg())
                    .isCloseTo(fit.tightBackwardDeg().orElseThrow(), within(1.0));
        }
    }

    /** A copy with too shallow a pocket: two angles and one test name it, and its undo is known. */
    @org.junit.jupiter.api.Test
    void namesTheShallowPocket() {
        Build build = Tarn.build(SHALLOW, forward(342), backward(360), Tarn.tried("timing-measured", "in-line"));
        Ranked first = Tarn.ranking(build).ranked().get(0);
        assertThat(first.suspect().id()).isEqualTo("exhaust-on-crown");
        assertThat(first.chance()).isGreaterThan(0.95);
        assertThat(first.suspect().reach()).contains("piston");
        assertThat(Undo.of(build, first.suspect().reach().get(0)).off()).isNotEmpty();
        assertThat(first.explains()).hasSize(3);
    }

    @org.junit.jupiter.api.Test
    void theOrderOfAnswersDoesNotMatter() {
        List<Fact> facts = List.of(
                forward(338), backward(365), Tarn.tried("plug-out", "same"), Tarn.tried("marks-checked", "1-late"));
        Map<String, Double> one = chances(facts.get(0), facts.get(1), facts.get(2), facts.get(3));
        Map<String, Double> other = chances(facts.get(3), facts.get(1), facts.get(2), facts.get(0));
        one.forEach((suspect, chance) -> assertThat(other.get(suspect)).isCloseTo(chance, CLOSE));
    }

    @org.junit.jupiter.api.Test
    void moreOfTheSameNeverLowersIt() {
        double once = chance("cam-1-late", forward(338));
        double twice = chance("cam-1-late", forward(338), forward(338));
        double both = chance("cam-1-late", forward(338), forward(338), backward(364));
        assertThat(twice).isGreaterThanOrEqualTo(once);
        assertThat(both).isGreaterThanOrEqualTo(twice);
        assertThat(chances(Tarn.tried("plug-out", "same"), Tarn.tried("plug-out", "same")))
                .isEqualTo(chances(Tarn.tried("plug-out", "same")));
    }

    /** Without the stroke an angle and the same a turn later are one. */
    @org.junit.jupiter.api.Test
    void withoutTheStrokeATurnIsNothing() {
        Map<String, Double> one = chances(Tarn.strokeUnknown(Turning.FORWARD, 338));
        Map<String, Double> other = chances(Tarn.strokeUnknown(Turning.FORWARD, 698));
        one.forEach((suspect, chance) -> assertThat(other.get(suspect)).isCloseTo(chance, CLOSE));
    }

    @org.junit.jupiter.api.Test
    void whatWentTightOutsideASearchCountsToo() {
        Fact tight = new Fact.WentTight(OptionalDouble.of(338), OptionalDouble.of(364), "");
        Ranked first = Tarn.ranking(Tarn.build(tight)).ranked().get(0);
        assertThat(first.suspect().id()).isEqualTo("cam-1-late");
    }

    /** Put right afterwards, the engine no longer touches; the search that is over still names what it was. */
    @org.junit.jupiter.api.Test
    void aSearchThatIsOverStays() {
        Fact closed = new HuntClosed(Tarn.HUNT, "exhaust-on-crown", "");
        Fact deep = new Fact.Measured("piston", "", Map.of("pockets.exhaust.depth", "2.0"));
        Map<String, Double> chances = chances(SHALLOW, forward(342), backward(360), closed, deep);
        assertThat(chances.get("exhaust-on-crown")).isGreaterThan(0.9);
    }

    @org.junit.jupiter.api.Test
    void theChancesOfEveryTestSumToOne() {
        Build build = Tarn.build();
        TightSpot spot = TightSpot.of(build, Hunt.of(build, Tarn.HUNT).orElseThrow());
        for (Test test : new TightTests(new Reach(build), spot.suspects()).all()) {
            for (TightSuspect suspect : spot.suspects()) {
                assertThat(test.answers().stream()
                                .mapToDouble(answer -> test.chance(answer, suspect.suspect()))
                                .sum())
                        .isCloseTo(1, CLOSE);
            }
        }
    }

    @org.junit.jupiter.api.Test
    void saysWhatItDoesNotKnow() {
        Ranking ranking = Tarn.ranking(Tarn.build(Tarn.tried("shaken", "rattles")));
        assertThat(ranking.assumptions()).anyMatch(sentence -> sentence.contains("'shaken'"));
        assertThat(ranking.sentence()).startsWith("Nothing was felt or tried yet");
    }
}
